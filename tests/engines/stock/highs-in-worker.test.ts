import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { feet, inches } from '../../../language/src/core/length.js';
import type { IntegerProgram } from '../../../language/src/engines/stock/integer-solver.js';
import { planStock } from '../../../language/src/engines/stock/plan-stock.js';
import { HighsInProcess } from '../../../server/src/solver/highs.js';
import { HighsInWorker } from '../../../server/src/solver/highs-in-worker.js';
import { board, piece, request, usd } from './requests.js';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const wasm = `${root}node_modules/highs/build/highs.wasm`;
const folder = mkdtempSync(`${tmpdir()}/highs-`);
const worker = `${folder}/highs-worker.cjs`;
let solver: HighsInWorker;

beforeAll(async () => {
    await build({
        absWorkingDir: root, entryPoints: ['server/src/solver/highs-worker.ts'], outfile: worker, bundle: true, platform: 'node', format: 'cjs', mainFields: ['module', 'main'],
        define: { 'import.meta.url': 'ownUrl' }, banner: { js: `const ownUrl=require('node:url').pathToFileURL(__filename).href;` }, logLevel: 'silent',
    });
});
afterEach(async () => { await solver.close(); });
afterAll(() => { rmSync(folder, { recursive: true }); });

const start = (options?: { graceSeconds: number }): HighsInWorker => solver = new HighsInWorker({ worker, wasm }, options);

/** min x + y, 3x + 2y >= 7, x <= 1: the best whole answer is 1 + 2. */
const small: IntegerProgram = { cost: [1, 1], upper: [1, 9], starts: [0, 1, 2], rows: [0, 0], values: [3, 2], rowLower: [7], rowUpper: [Infinity], absoluteGap: 0.5, maxNodes: 100, maxSeconds: 5 };
const impossible: IntegerProgram = { ...small, rowLower: [100] };
/** A market split: even small ones keep a branch-and-bound solver busy for minutes. */
const endless: IntegerProgram = (() => {
    const columns = 50;
    const rows = 6;
    let state = 12345;
    const weights = Array.from({ length: columns * rows }, () => (state = state * 48271 % 2147483647) % 100);
    const weight = (row: number, column: number): number => weights[column * rows + row] ?? 0;
    const sums = Array.from({ length: rows }, (_, row) => Math.floor(Array.from({ length: columns }, (__, column) => weight(row, column)).reduce((a, b) => a + b, 0) / 2));
    return {
        cost: Array.from({ length: columns }, () => 0), upper: Array.from({ length: columns }, () => 1), starts: Array.from({ length: columns + 1 }, (_, column) => column * rows),
        rows: Array.from({ length: columns * rows }, (_, at) => at % rows), values: Array.from({ length: columns * rows }, (_, at) => weight(at % rows, Math.floor(at / rows))),
        rowLower: sums, rowUpper: sums, absoluteGap: 0.5, maxNodes: 1e9, maxSeconds: 1e4,
    };
})();

test('solves, and says when there is no answer', async () => {
    start();
    expect(await solver.solve(small)).toMatchObject({ status: 'optimal', objective: 3, values: [1, 2] });
    expect(await solver.solve(impossible)).toMatchObject({ status: 'infeasible', values: undefined });
});
test('answers as the solver in this process does', async () => {
    start();
    expect(await solver.solve(small)).toEqual(await new HighsInProcess(wasm).solve(small));
});
test('a limit on time gives no proof', async () => {
    start();
    expect((await solver.solve({ ...endless, maxSeconds: 0.2 })).status).toBe('limit');
});
test('a cancelled solve rejects with the reason at once, and the next one works', async () => {
    start();
    const stop = new AbortController();
    const reason = new Error('the file was closed');
    const answer = solver.solve(endless, stop.signal);
    setTimeout(() => { stop.abort(reason); }, 300);
    await expect(answer).rejects.toBe(reason);
    expect((await solver.solve(small)).status).toBe('optimal');
});
test('a cancelled solve takes none of the waiting ones with it', async () => {
    start();
    const stop = new AbortController();
    const given = solver.solve(endless, stop.signal);
    const waiting = solver.solve(small);
    setTimeout(() => { stop.abort(); }, 200);
    await expect(given).rejects.toThrow();
    expect((await waiting).status).toBe('optimal');
});
test('a signal given before rejects without a thread', async () => {
    start();
    await expect(solver.solve(small, AbortSignal.abort(new Error('no more')))).rejects.toThrow('no more');
});
test('a thread that does not answer in time counts as failed', async () => {
    start({ graceSeconds: -9999.7 });
    expect((await solver.solve(endless)).status).toBe('failed');
    expect((await solver.solve({ ...small, maxSeconds: 1e5 })).status).toBe('optimal');
});
test('closing rejects what waits and refuses what comes', async () => {
    start();
    const answer = solver.solve(endless);
    const refused = expect(answer).rejects.toThrow('closed');
    await solver.close();
    await refused;
    await expect(solver.solve(small)).rejects.toThrow('closed');
});
test('a worker that cannot be started is an error, not a wait', async () => {
    solver = new HighsInWorker({ worker: `${folder}/nowhere.cjs` });
    await expect(solver.solve(small)).rejects.toThrow();
});
test('a stock plan is proven through the worker', async () => {
    start();
    solver.warm();
    const asked = request([piece('A', inches(37, 3, 8), 7), piece('B', inches(29, 1, 8), 9), piece('C', inches(23, 5, 8), 11)], [board(feet(8), usd(811)), board(feet(12), usd(1237))], { kerf: inches(0, 1, 8) });
    expect((await planStock(asked, solver)).proof).toBe('proven');
});
