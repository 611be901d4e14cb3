import fc from 'fast-check';
import { expect } from 'vitest';
import { minus, sum } from '../../language/src/core/length.js';
import { planStock } from '../../language/src/engines/stock/plan-stock.js';
import { stockOffers } from '../../language/src/renderings/stock-offers.js';
import { stockTasks } from '../../language/src/renderings/stock-tasks.js';
import { PatientSolver } from '../support/patient-solver.js';
import { JobReader } from './analysed.js';
import { fileOf, randomJob } from './random-job.js';

/** Every board of a job's stock plan adds up to the tick, and every part of its cut list is cut once and from its own stock. */
export async function checkStock(numRuns: number, seed: number): Promise<{ readonly boards: number }> {
    const reader = new JobReader();
    const solver = new PatientSolver();
    let boards = 0;
    await fc.assert(fc.asyncProperty(randomJob, async ({ job: text }) => {
        const { job, results } = await reader.job(fileOf(text));
        const tasks = stockTasks(results.parts, stockOffers(job));
        // No part is lost on the way from the results to what is planned.
        expect(tasks.flatMap(({ parts }) => parts.map(({ mark }) => mark)).sort()).toEqual(results.parts.map(({ mark }) => mark).sort());
        for (const { request, parts, stock } of tasks) {
            if (!request) continue;
            const plan = await planStock(request, solver);
            boards += plan.boards.length;
            for (const board of plan.boards) {
                expect(sum(...board.cuts.map(({ length }) => length), board.kerfTotal, board.trimTotal, board.offcut)).toBe(board.stockLength);
                expect(Math.min(board.kerfTotal, board.trimTotal, board.offcut)).toBeGreaterThanOrEqual(0);
                expect(board.stockLength).toBe(request.stock[board.stockIndex]?.length);
                expect(minus(board.kerfTotal, request.kerf * Math.max(0, board.cuts.length - 1) as typeof board.kerfTotal), 'a cut between every two pieces').toBeGreaterThanOrEqual(0);
                expect(board.trimTotal).toBe(2 * request.endTrim);
            }
            const cut = new Map<string, number>();
            for (const { mark, length } of plan.boards.flatMap(({ cuts }) => cuts)) cut.set(`${mark} ${length}`, (cut.get(`${mark} ${length}`) ?? 0) + 1);
            for (const { mark, length, count } of plan.unplaceable) cut.set(`${mark} ${length}`, (cut.get(`${mark} ${length}`) ?? 0) + count);
            const wanted = new Map<string, number>();
            for (const { mark, length, count, material } of parts) {
                expect(material.stock).toBe(stock);
                wanted.set(`${mark} ${length}`, (wanted.get(`${mark} ${length}`) ?? 0) + count);
            }
            expect([...cut].sort()).toEqual([...wanted].sort());
            expect(plan.totalBoards).toBe(plan.boards.length);
            expect(plan.unplaceable.every(({ length }) => request.stock.every(board => board.length - 2 * request.endTrim < length)), 'only what is too long is left out').toBe(true);
        }
    }), { numRuns, seed });
    return { boards };
}
