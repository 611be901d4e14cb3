import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { planStock, planStockGreedy } from '../../../language/src/engines/stock/plan-stock.js';
import type { StockPlan } from '../../../language/src/engines/stock/request.js';
import { verifyStockPlan } from '../../../language/src/engines/stock/verify.js';
import { PatientSolver } from '../../support/patient-solver.js';
import { jobs, leastCostByTrying } from './requests.js';

const solver = new PatientSolver();
const total = (plan: StockPlan): number => plan.totalCost?.minor ?? plan.totalLength;

test('pieces, kerf, trim and offcut make up each board, every piece is cut once, and the bound holds', async () => {
    await fc.assert(fc.asyncProperty(jobs(9, 6), async asked => {
        const greedy = planStockGreedy(asked);
        const plan = await planStock(asked, solver);
        expect(verifyStockPlan(greedy, asked)).toEqual([]);
        expect(verifyStockPlan(plan, asked)).toEqual([]);
        expect(total(plan)).toBeLessThanOrEqual(total(greedy));
        expect(plan.lowerBound).toBeLessThanOrEqual(total(plan));
        expect(plan.linearBound).toBeLessThanOrEqual(total(plan));
        expect(greedy.lowerBound).toBeLessThanOrEqual(plan.lowerBound);
    }), { numRuns: 60, seed: 12 });
}, 60_000);

test('the plan of a few pieces costs what trying everything finds', async () => {
    await fc.assert(fc.asyncProperty(jobs(5, 2).filter(({ pieces }) => pieces.reduce((count, one) => count + one.count, 0) <= 8), async asked => {
        const plan = await planStock(asked, solver);
        const placed = { ...asked, pieces: asked.pieces.filter(one => !plan.unplaceable.includes(one)) };
        expect(plan.proof).toBe('proven');
        expect(total(plan)).toBe(leastCostByTrying(placed));
    }), { numRuns: 80, seed: 34 });
}, 60_000);

test('the order of the pieces does not change what the boards cost', async () => {
    await fc.assert(fc.asyncProperty(jobs(6, 4), async asked => {
        const turned = { ...asked, pieces: [...asked.pieces].reverse() };
        expect(total(await planStock(turned, solver))).toBe(total(await planStock(asked, solver)));
    }), { numRuns: 25, seed: 56 });
}, 60_000);
