/**
 * Prints every figure published outside the project beside what the product computes for the same case: source, clause, what, both figures, the
 * difference and the tolerance with its reason. A mark tells figures written down from memory of a document. Ends with 1 when a figure is off.
 */
import * as esbuild from 'esbuild';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const here = fileURLToPath(new URL('./', import.meta.url));
const topics = readdirSync(here).filter(name => name.endsWith('.ts') && !name.endsWith('.test.ts') && !['all-rows.ts', 'table.ts'].includes(name)).map(name => name.replace(/\.ts$/, '')).sort();
/** The solver finds its binary beside its own loader, so it stays where it is. */
const solver = { name: 'solver', setup: build => { build.onResolve({ filter: /^highs$/ }, () => ({ path: import.meta.resolve('highs'), external: true })); } };
const folder = mkdtempSync(path.join(tmpdir(), 'hotroom-truth-'));
const rows = [];
try {
    const contents = `export const tables = { ${topics.map(topic => `${JSON.stringify(topic)}: await import(${JSON.stringify(`./${topic}.ts`)})`).join(', ')} };`;
    const outfile = path.join(folder, 'tables.mjs');
    await esbuild.build({
        stdin: { contents, resolveDir: here, loader: 'ts' }, outfile, bundle: true, platform: 'node', format: 'esm', target: 'node22', mainFields: ['module', 'main'], logLevel: 'error',
        alias: { vitest: path.join(here, 'no-vitest.mjs') }, plugins: [solver],
        banner: { js: 'import{createRequire}from"node:module";const require=createRequire(import.meta.url);' },
    });
    const { tables } = await import(pathToFileURL(outfile).href);
    for (const [topic, table] of Object.entries(tables)) {
        for (const row of Object.values(table).flat()) if (typeof row?.ours === 'function') rows.push({ topic, ...row, computed: await row.ours() });
    }
} finally {
    rmSync(folder, { recursive: true, force: true });
}

const figure = value => typeof value === 'number' ? String(Number(value.toPrecision(10))) : `“${value}”`;
const isOff = ({ published, computed, tolerance }) => typeof published === 'string' || typeof computed === 'string' ? published !== computed : !(Math.abs(published - computed) <= tolerance);
const difference = ({ published, computed }) => typeof published === 'number' && typeof computed === 'number' ? figure(Math.abs(published - computed)) : published === computed ? 'same' : 'other';

let last = '';
for (const row of rows) {
    const head = `${row.topic} — ${row.source}`;
    if (head !== last) console.log(`\n${last = head}`);
    console.log(`  ${isOff(row) ? 'OFF ' : ''}${row.clause}: ${row.what}${row.fromMemory ? ' [from memory]' : ''}`);
    console.log(`      published ${figure(row.published)}, ours ${figure(row.computed)}, difference ${difference(row)}, tolerance ${figure(row.tolerance)} (${row.toleranceReason}); ${row.checks}`);
}
const count = (key, list = rows) => [...list.reduce((counts, row) => counts.set(row[key], (counts.get(row[key]) ?? 0) + 1), new Map())].sort((a, b) => b[1] - a[1]);
console.log('\nRows by topic');
for (const [topic, n] of count('topic')) console.log(`  ${String(n).padStart(4)}  ${topic}`);
console.log('\nRows by source');
for (const [source, n] of count('source')) console.log(`  ${String(n).padStart(4)}  ${source}`);
const off = rows.filter(isOff);
console.log(`\n${rows.length} figures of ${count('source').length} sources against ${count('checks').length} functions; ${rows.filter(({ fromMemory }) => fromMemory).length} from memory, still to be compared with a copy; ${off.length} off.`);
process.exitCode = off.length > 0 ? 1 : 0;
