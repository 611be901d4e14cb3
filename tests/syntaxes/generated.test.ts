import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));

test('what is generated is up to date: npm run generate changes nothing', { timeout: 60_000 }, () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'hotroom-generated-'));
    try {
        execFileSync(process.execPath, [path.join(root, 'language/generate.mjs'), folder]);
        const made = readdirSync(folder, { recursive: true, encoding: 'utf8', withFileTypes: true }).filter(entry => entry.isFile()).map(entry => path.relative(folder, path.join(entry.parentPath, entry.name))).sort();
        const pages = readdirSync(path.join(root, 'language/handbook')).map(name => path.join('language/handbook', name)).sort();
        expect(made).toEqual([...pages, ...['comparison', 'cut-list', 'findings', 'hotroom', 'model', 'review'].map(name => path.join('language/schemas', `${name}.schema.json`)), ...['ast.ts', 'grammar.ts', 'module.ts'].map(name => path.join('language/src/syntax/generated', name)), path.join('syntaxes', 'hotroom.tmLanguage.json')]);
        for (const file of made) expect(readFileSync(path.join(folder, file), 'utf8'), file).toBe(readFileSync(path.join(root, file), 'utf8'));
    } finally {
        rmSync(folder, { recursive: true, force: true });
    }
});
