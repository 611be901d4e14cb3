/**
 * Measures how fast the product is beside other tools in one run, and says which target is met. It reads nothing of the network and leaves
 * nothing behind. Times are medians of interleaved runs; on a busy machine the ratios are the thing to read.
 */
import { readdirSync, rmSync, statSync } from 'node:fs';
import path from 'node:path';
import { kilobytes, milliseconds, percent } from './figures.mjs';
import { measureMemory } from './measure-memory.mjs';
import { measureParse } from './measure-parse.mjs';
import { measureEdits, measureStart } from './measure-server.mjs';
import { measureStock, summary } from './measure-stock.mjs';
import { measureWorkspace } from './measure-workspace.mjs';
import { prepare, root } from './prepare.mjs';
import { printTable } from './table.mjs';

const began = performance.now();
const rows = [];
const ratioRow = (what, peer, ours, theirs, most) =>
    rows.push({ what, ours: milliseconds(ours), peer: `${peer} ${milliseconds(theirs)}`, measured: `${(ours / theirs).toFixed(2)}×`, target: `≤ ${most}×`, isMet: ours / theirs <= most });

/** Words on the command line choose measures by their titles: `npm run bench -- memory stock`. */
const chosen = process.argv.slice(2);

/** Measures that fail are a row that says so: the others still count. */
async function row(title, measure) {
    if (chosen.length > 0 && !chosen.some(word => title.includes(word))) return;
    console.error(`… ${title}`);
    try {
        await measure();
    } catch (error) {
        rows.push({ what: title, ours: 'failed', peer: '', measured: error instanceof Error ? error.message.split('\n')[0] : String(error), target: '', isMet: false });
    }
}

const prepared = await prepare();
try {
    await row('reading a text', async () => {
        for (const { lines, ours, chevrotain, yaml } of await measureParse(prepared)) {
            ratioRow(`read ${lines} lines`, 'Chevrotain alone', ours, chevrotain, 2);
            ratioRow(`read ${lines} lines`, 'yaml', ours, yaml, 0.5);
        }
    });
    await row('start to first diagnostics', async () => {
        const { ours, yaml } = await measureStart(prepared);
        ratioRow('start to first diagnostics', 'YAML server', ours, yaml, 0.8);
    });
    await row('edit to diagnostics', async () => {
        const [short, long] = await measureEdits(prepared);
        ratioRow(`edit to diagnostics, ${short.lines} lines`, 'YAML server', short.ours, short.yaml, 0.5);
        ratioRow(`edit to diagnostics, ${long.lines} lines`, 'YAML server', long.ours, long.yaml, 0.3);
    });
    await row('shared catalogue of 1000 jobs', async () => {
        const { build, edit, density, price } = await measureWorkspace(prepared);
        ratioRow('shared catalogue, 1000 jobs, an entry all use: open files', 'one job edited', density.openFiles, edit, 5);
        ratioRow('shared catalogue, 1000 jobs, an entry all use: everything', 'full build', density.everything, build, 0.4);
        ratioRow('shared catalogue, 1000 jobs, its price: open files', 'one job edited', price.openFiles, edit, 5);
        ratioRow('shared catalogue, 1000 jobs, its price: everything', 'full build', price.everything, build, 0.4);
    });
    await row('memory', async () => {
        const { bytesPerJob } = measureMemory(prepared);
        rows.push({ what: 'memory of one 60-line job in the workspace', ours: kilobytes(bytesPerJob), peer: '', measured: '', target: '≤ 80 KB', isMet: bytesPerJob <= 80 * 1024 });
    });
    await row('stock plans', async () => {
        const results = await measureStock(prepared);
        const small = summary(results.small, 200);
        const large = summary(results.large, 2000);
        rows.push({
            what: `stock plan, ${small.count} orders to 150 pieces`, ours: `median ${milliseconds(small.median)}, slowest ${milliseconds(small.slowest)}`, peer: '',
            measured: `${percent(small.provenWithin / small.count)} proven in 200 ms`, target: '100 %', isMet: small.provenWithin === small.count,
        }, {
            what: `stock plan, ${large.count} orders of about ${large.pieces} pieces`, ours: `median ${milliseconds(large.median)}, slowest ${milliseconds(large.slowest)}`, peer: '',
            measured: `worst gap ${percent(large.worstGap, 2)}, ${large.within} of ${large.count} in 2 s`, target: 'gap ≤ 0.2 % in 2 s', isMet: large.worstGap <= 0.002 && large.within === large.count,
        });
    });
    rows.push({ what: 'activation until the server answers', ours: 'measured by npm run test:editor', peer: '', measured: '', target: '≤ 300 ms', isMet: undefined });
    const [vsix] = readdirSync(root).filter(name => name.endsWith('.vsix'));
    // A package that was not finished is none.
    const size = vsix && statSync(path.join(root, vsix)).size || undefined;
    rows.push({ what: 'size of the packaged extension', ours: size === undefined ? 'not packaged yet; npm run package makes it' : kilobytes(size), peer: '', measured: '', target: '≤ 3 MB', isMet: size === undefined ? undefined : size <= 3 * 1024 * 1024 });
} finally {
    rmSync(prepared.folder, { recursive: true, force: true });
}
printTable(rows);
const missed = rows.filter(({ isMet }) => isMet === false);
console.log(`\n${rows.filter(({ isMet }) => isMet).length} targets met, ${missed.length} not met, ${rows.filter(({ isMet }) => isMet === undefined).length} not measured here; ${((performance.now() - began) / 1000).toFixed(0)} s.`);
for (const { what, peer, measured, target } of missed) console.log(`Not met: ${what}${peer ? ` beside ${peer.replace(/ [\d.]+ ms$/, '')}` : ''}: ${measured || 'see above'}, target ${target}.`);
