import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { feet, inches } from '../../../language/src/core/length.js';
import { planStock } from '../../../language/src/engines/stock/plan-stock.js';
import type { StockRequest } from '../../../language/src/engines/stock/request.js';
import { PatientSolver } from '../../support/patient-solver.js';
import { board, piece, request, usd } from './requests.js';

const solver = new PatientSolver();

/** The least cost by one integer program over every pattern of every board, written here from the request alone. */
async function leastCostOfAllPatterns({ pieces, stock, kerf, endTrim }: StockRequest): Promise<number | undefined> {
    const cost: number[] = [], starts = [0], rows: number[] = [], values: number[] = [];
    for (const { length, price } of stock) {
        const fill = (at: number, rest: number, counts: number[]): void => {
            const one = pieces[at];
            if (!one) {
                cost.push(price?.minor ?? 0);
                counts.forEach((count, row) => { if (count > 0) { rows.push(row); values.push(count); } });
                starts.push(rows.length);
                return;
            }
            for (let count = 0, left = rest; count <= one.count && left >= 0; count++, left = rest - count * (one.length + kerf)) fill(at + 1, left, [...counts, count]);
        };
        fill(0, length - 2 * endTrim + kerf, []);
    }
    const answer = await solver.solve({
        cost, upper: cost.map(() => 50), starts, rows, values, rowLower: pieces.map(one => one.count), rowUpper: pieces.map(() => Infinity), absoluteGap: 0.99, maxNodes: 1e6, maxSeconds: 30,
    });
    return answer.status === 'optimal' && answer.objective !== undefined ? Math.round(answer.objective) : undefined;
}

const jobs = fc.record({
    lengths: fc.uniqueArray(fc.integer({ min: 22 * 8, max: 95 * 8 }), { minLength: 4, maxLength: 7 }),
    counts: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 7, maxLength: 7 }),
    stock: fc.uniqueArray(fc.record({ feet: fc.constantFrom(8, 10, 12, 14), cents: fc.integer({ min: 90, max: 120 }) }), { minLength: 1, maxLength: 3, selector: one => one.feet }),
    isPricedByLength: fc.boolean(),
}).map(({ lengths, counts, stock, isPricedByLength }) => request(
    lengths.map((eighths, at) => piece(`P${at}`, inches(0, eighths, 8), counts[at] ?? 1)),
    stock.map(one => board(feet(one.feet), usd(one.feet * (isPricedByLength ? 100 : one.cents)))), { kerf: inches(0, 1, 8) },
));

test('the search over board counts ends at the optimum of the program over all patterns', async () => {
    await fc.assert(fc.asyncProperty(jobs, async asked => {
        const plan = await planStock(asked, solver);
        expect(plan.proof).toBe('proven');
        expect(plan.totalCost?.minor).toBe(await leastCostOfAllPatterns(asked));
    }), { numRuns: 30, seed: 78 });
}, 120_000);
