import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { allRules } from '../../language/src/rules/index.js';

interface Report { readonly testResults: readonly { readonly name: string; readonly status: string }[] }

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Runs the tests of every rule with the rules made blind, or chattering. */
function run(kind: 'blind' | 'chattering'): Report {
    const folder = mkdtempSync(join(tmpdir(), 'hotroom-sabotage-'));
    const output = join(folder, 'report.json');
    try {
        spawnSync(process.execPath, ['node_modules/vitest/vitest.mjs', 'run', 'tests/rules', '--exclude', '**/registry.test.ts', '--reporter=json', `--outputFile=${output}`], {
            cwd: root, stdio: 'ignore', env: { ...process.env, HOTROOM_SABOTAGE: kind },
        });
        return JSON.parse(readFileSync(output, 'utf8')) as Report;
    } finally {
        rmSync(folder, { recursive: true, force: true });
    }
}

test.each(['blind', 'chattering'] as const)('every rule\'s own tests notice when it is %s', kind => {
    const failed = new Set(run(kind).testResults.filter(file => file.status === 'failed').map(file => file.name.replaceAll('\\', '/').split('/').slice(-2).join('/')));
    expect(allRules.map(rule => `${rule.family}/${rule.id}.test.ts`).filter(file => !failed.has(file))).toEqual([]);
});
