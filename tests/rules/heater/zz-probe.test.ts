import { readFileSync, existsSync } from 'node:fs';
import { test } from 'vitest';
import { heaterRules } from '../../../language/src/rules/heater/index.js';
import { withStandardJob } from '../../support/standard-job.js';
import { analyzeText } from '../../support/workspace.js';
import { applyFix } from '../../support/check.js';

test('probe', async () => {
    const snippets = existsSync('/tmp/snips.txt') ? readFileSync('/tmp/snips.txt', 'utf8').split(/^====.*\n/m) : [];
    const only = process.env['ONLY'] ?? '';
    const all = [...snippets.map(s => ['snip', s] as const), ...(process.env['BAD'] ? heaterRules.flatMap(r => [[`${r.id} BAD`, r.bad] as const, [`${r.id} GOOD`, r.good] as const]) : [])].filter(([n]) => n.includes(only) || n === 'snip');
    for (const [name, snip] of all) {
        const source = withStandardJob(snip);
        const a = await analyzeText(source, { rules: heaterRules });
        console.log(`##### ${name}\n${snip}`);
        for (const f of a.findings) {
            console.log(`  [${f.severity} ${f.rule}] @"${source.slice(f.at.start, f.at.end)}" ${f.message}`);
            for (const r of f.related ?? []) console.log(`      rel ${r.message}`);
            for (const x of f.fixes ?? []) console.log(`      fix ${x.title}: ${x.edits.map(e => JSON.stringify(e.newText)).join(' ')}\n` + (process.env['FIX'] ? applyFix(source, x) : ''));
        }
    }
}, 600000);
