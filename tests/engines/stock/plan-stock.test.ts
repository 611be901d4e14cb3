import { describe, expect, test } from 'vitest';
import { feet, inches, mm, ticks, zero, type Length } from '../../../language/src/core/length.js';
import { planStock, planStockGreedy } from '../../../language/src/engines/stock/plan-stock.js';
import type { StockPlan, StockRequest } from '../../../language/src/engines/stock/request.js';
import { verifyStockPlan } from '../../../language/src/engines/stock/verify.js';
import { PatientSolver } from '../../support/patient-solver.js';
import { board, leastCostByTrying, piece, request, usd } from './requests.js';

const solver = new PatientSolver();

/** The plan, after an exact check of it. */
async function sound(asked: StockRequest): Promise<StockPlan> {
    const plan = await planStock(asked, solver);
    expect(verifyStockPlan(plan, asked)).toEqual([]);
    return plan;
}
const lengthsOf = (plan: StockPlan): Length[][] => plan.boards.map(one => one.cuts.map(cut => cut.length));

test('an empty request needs no board', async () => {
    const plan = await sound(request([], [board(feet(8), usd(800))]));
    expect(plan).toMatchObject({ boards: [], patterns: [], totalBoards: 0, totalCost: usd(0), lowerBound: 0, proof: 'proven', unplaceable: [] });
});
test('pieces counted zero times are no pieces', async () => {
    expect((await sound(request([piece('A', feet(2), 0)], [board(feet(8), usd(800))]))).boards).toEqual([]);
});
test('without stock every piece is unplaceable', async () => {
    const plan = await sound(request([piece('A', feet(2), 3)], []));
    expect(plan.unplaceable).toEqual([piece('A', feet(2), 3)]);
});

describe('one board', () => {
    const kerf = inches(0, 1, 8);
    const trim = inches(0, 1, 2);
    test('a piece of exactly the usable length leaves nothing and needs no kerf', async () => {
        const plan = await sound(request([piece('A', inches(95))], [board(feet(8), usd(800))], { kerf, endTrim: trim }));
        expect(plan.boards).toEqual([{ stockLength: feet(8), stockIndex: 0, patternIndex: 0, cuts: [{ mark: 'A', length: inches(95) }], kerfTotal: zero, trimTotal: inches(1), offcut: zero }]);
        expect(plan.proof).toBe('proven');
    });
    test('two pieces and the kerf between them may end flush with the usable length', async () => {
        const plan = await sound(request([piece('A', inches(50)), piece('B', inches(45, 7, 8))], [board(feet(8), usd(800))], { kerf }));
        expect(plan.boards[0]).toMatchObject({ kerfTotal: kerf, offcut: zero });
    });
    test('one tick more takes a second board', async () => {
        const plan = await sound(request([piece('A', inches(50)), piece('B', ticks(inches(45, 7, 8) + 1))], [board(feet(8), usd(800))], { kerf }));
        expect(plan.totalBoards).toBe(2);
    });
    test('a remainder narrower than the kerf goes into the sawdust', async () => {
        const plan = await sound(request([piece('A', inches(95, 15, 16))], [board(feet(8), usd(800))], { kerf }));
        expect(plan.boards[0]).toMatchObject({ kerfTotal: inches(0, 1, 16), offcut: zero });
    });
    test('an offcut is what lies behind the last kerf', async () => {
        const plan = await sound(request([piece('A', inches(60))], [board(feet(8), usd(800))], { kerf, endTrim: trim }));
        expect(plan.boards[0]).toMatchObject({ kerfTotal: kerf, trimTotal: inches(1), offcut: inches(34, 7, 8) });
    });
    test('is of the cheapest length that holds the pieces, which need not be the shortest', async () => {
        const plan = await sound(request([piece('A', feet(5))], [board(feet(6), usd(900)), board(feet(8), usd(700)), board(feet(12), usd(1500))]));
        expect(plan).toMatchObject({ totalCost: usd(700), boards: [{ stockIndex: 1 }] });
    });
});

test('a piece longer than any stock is named and the rest is planned', async () => {
    const plan = await sound(request([piece('LONG', feet(17)), piece('A', feet(5), 2)], [board(feet(8), usd(800)), board(feet(16), usd(1700))]));
    expect(plan.unplaceable).toEqual([piece('LONG', feet(17))]);
    expect(plan).toMatchObject({ totalCost: usd(1600), proof: 'proven' });
});
test('an end trim may make a piece unplaceable that is no longer than the board', async () => {
    const plan = await sound(request([piece('A', feet(8))], [board(feet(8), usd(800))], { endTrim: ticks(1) }));
    expect(plan.unplaceable).toHaveLength(1);
});

test('long and short boards are mixed where that is cheapest', async () => {
    const asked = request([piece('A', inches(70), 3), piece('B', inches(50), 2), piece('C', inches(30), 2)], [board(feet(8), usd(800)), board(feet(10), usd(1010)), board(feet(12), usd(1190))], { kerf: inches(0, 1, 8) });
    const plan = await sound(asked);
    expect(plan).toMatchObject({ proof: 'proven', totalCost: usd(leastCostByTrying(asked)) });
});
test('greedy falls for an instance whose best plan the solver finds', async () => {
    // found by search: the long pieces look as if they belonged together
    const asked = request([piece('A', inches(42), 4), piece('B', inches(33), 6), piece('C', inches(21), 6)], [board(feet(8), usd(100))]);
    const greedy = planStockGreedy(asked);
    const plan = await sound(asked);
    expect(plan.proof).toBe('proven');
    expect(plan.totalCost?.minor).toBe(leastCostByTrying(asked));
    expect(plan.totalCost?.minor).toBeLessThanOrEqual(greedy.totalCost?.minor ?? 0);
});

describe('without prices', () => {
    const asked = request([piece('A', inches(70), 2), piece('B', inches(25), 2)], [board(feet(8)), board(feet(12), usd(1000))]);
    test('the least length of stock is planned, and the plan says so', async () => {
        const plan = await sound(asked);
        expect(plan).toMatchObject({ objective: 'length', totalCost: undefined, totalLength: feet(16), lowerBound: feet(16), proof: 'proven' });
        expect(plan.method).toContain('Least length of stock');
    });
    test('two currencies are no price either', async () => {
        const plan = await sound({ ...asked, stock: [board(feet(8), usd(1)), board(feet(12), { minor: 1, currency: 'CAD' })] });
        expect(plan).toMatchObject({ objective: 'length', totalCost: undefined });
    });
});

describe('boards on hand', () => {
    test('are used up to their number when they are cheaper', async () => {
        const plan = await sound(request([piece('A', feet(7), 3)], [board(feet(8), usd(0), 2), board(feet(8), usd(800))]));
        expect(plan).toMatchObject({ totalCost: usd(800), missing: [], proof: 'proven' });
    });
    test('that do not suffice are called missing, as few as can be', async () => {
        const plan = await sound(request([piece('A', feet(7), 5), piece('B', feet(3), 2)], [board(feet(8), usd(800), 2), board(feet(16), usd(1700), 1)]));
        expect(plan.missing).toEqual([{ stockIndex: 1, stockLength: feet(16), count: 1 }]);
    });
    test('of which there are none are as if not offered', async () => {
        const plan = await sound(request([piece('A', feet(9))], [board(feet(8), usd(800)), board(feet(16), usd(1700), 0)]));
        expect(plan.unplaceable).toHaveLength(1);
    });
});

describe('the list', () => {
    const asked = request([piece('POST', feet(5)), piece('RAIL', feet(3), 3), piece('STUD', feet(3), 1), piece('CAP', feet(4))], [board(feet(8), usd(800)), board(feet(6), usd(650))]);
    test('cuts the longest piece of a board first, and the longest boards first', async () => {
        const plan = await sound(asked);
        for (const cuts of lengthsOf(plan)) expect(cuts).toEqual([...cuts].sort((a, b) => b - a));
        const stock = plan.boards.map(one => one.stockLength);
        expect(stock).toEqual([...stock].sort((a, b) => b - a));
    });
    test('counts the boards that are cut alike as one pattern', async () => {
        const plan = await sound(request([piece('A', feet(5), 4), piece('B', feet(3), 4)], [board(feet(8), usd(800))]));
        expect(plan.patterns).toEqual([{ stockLength: feet(8), stockIndex: 0, count: 4, cuts: [{ length: feet(5), count: 1 }, { length: feet(3), count: 1 }], offcut: zero }]);
    });
    test('gives pieces of one length their own marks', async () => {
        const plan = await sound(asked);
        const marks = plan.boards.flatMap(one => one.cuts.map(cut => cut.mark)).sort();
        expect(marks).toEqual(['CAP', 'POST', 'RAIL', 'RAIL', 'RAIL', 'STUD']);
    });
    test('is the same each time', async () => {
        expect(JSON.stringify(await planStock(asked, solver))).toBe(JSON.stringify(await planStock(asked, solver)));
    });
});

test('inch and millimetre pieces from metric stock stay exact', async () => {
    const plan = await sound(request([piece('A', inches(0, 95, 2), 2), piece('B', mm(1199.9), 1)], [board(mm(3600), usd(900)), board(mm(2400), usd(640))], { kerf: mm(3.2) }));
    expect(plan.proof).toBe('proven');
});

test.each<[string, StockRequest]>([
    ['a piece without length', request([piece('A', zero)], [board(feet(8))])],
    ['a negative count', request([piece('A', feet(1), -1)], [board(feet(8))])],
    ['half a tick of kerf', request([], [board(feet(8))], { kerf: 0.5 as Length })],
    ['a negative trim', request([], [board(feet(8))], { endTrim: -1 as Length })],
    ['stock without length', request([], [board(zero)])],
    ['half a board on hand', request([], [board(feet(8), usd(1), 0.5)])],
    ['half a cent', request([], [board(feet(8), usd(0.5))])],
])('%s is refused', (_name, asked) => {
    expect(() => planStockGreedy(asked)).toThrow();
});

describe('stopping', () => {
    // greedy cannot prove this one, so the search has to begin
    const hard = request([piece('A', inches(37, 3, 8), 7), piece('B', inches(29, 1, 8), 9), piece('C', inches(23, 5, 8), 11), piece('D', inches(17, 1, 4), 13)], [board(feet(8), usd(811)), board(feet(12), usd(1237))], { kerf: inches(0, 1, 8) });
    test('a signal already given rejects at once with its reason', async () => {
        const reason = new Error('the file was closed');
        await expect(planStock(hard, solver, AbortSignal.abort(reason))).rejects.toBe(reason);
    });
    test('a signal given on the way rejects with its reason', async () => {
        const stop = new AbortController();
        const reason = new Error('the file changed');
        let pauses = 0;
        const stopping = { solve: solver.solve.bind(solver), pause: async () => { if (++pauses === 2) stop.abort(reason); await Promise.resolve(); } };
        await expect(planStock(hard, stopping, stop.signal)).rejects.toBe(reason);
    });
    test('when it is late the best plan so far comes with its gap', async () => {
        const plan = await planStock(hard, solver, undefined, () => true);
        expect(verifyStockPlan(plan, hard)).toEqual([]);
        expect(plan.proof).toMatchObject({ gap: expect.any(Number) as number });
        expect((await sound(hard)).proof).toBe('proven');
    });
    test('a solver that never answers leaves a sound plan with a gap', async () => {
        const failing = { solve: () => Promise.resolve({ status: 'failed' as const, objective: undefined, bound: -Infinity, values: undefined }) };
        const plan = await planStock(hard, failing);
        expect(verifyStockPlan(plan, hard)).toEqual([]);
    });
});
