import { expect, test } from 'vitest';
import { feet, ticks } from '../../../language/src/core/length.js';
import { withMergedPatterns } from '../../../language/src/engines/stock/merge-patterns.js';
import { cuttingProblem } from '../../../language/src/engines/stock/problem.js';
import { reachableTotals } from '../../../language/src/engines/stock/reachable-totals.js';
import { withoutSurplus } from '../../../language/src/engines/stock/tidy-solution.js';
import { board, piece, request, usd } from './requests.js';

const problem = cuttingProblem(request([piece('A', ticks(30), 4), piece('B', ticks(20), 4)], [board(ticks(50), usd(5)), board(ticks(100), usd(9))]));
const cut = (classIndex: number, a: number, b: number, count: number) => ({ pattern: { classIndex, counts: [a, b] }, count });

test('two patterns that share out evenly become one', () => {
    expect(withMergedPatterns(problem, [cut(1, 2, 0, 1), cut(1, 0, 3, 1), cut(1, 2, 0, 1)])).toEqual([cut(1, 2, 0, 2), cut(1, 0, 3, 1)]);
    expect(withMergedPatterns(problem, [cut(1, 2, 1, 1), cut(1, 0, 3, 1)])).toEqual([cut(1, 1, 2, 2)]);
});
test('patterns of two board lengths stay apart', () => {
    expect(withMergedPatterns(problem, [cut(0, 1, 1, 2), cut(1, 1, 1, 2)])).toHaveLength(2);
});
test('surplus pieces are taken out and the board becomes the cheapest that holds the rest', () => {
    expect(withoutSurplus(problem, [cut(1, 2, 2, 2), cut(1, 2, 0, 1)])).toEqual([cut(1, 2, 2, 2)]);
    expect(withoutSurplus(problem, [cut(1, 2, 2, 1), cut(1, 1, 3, 1), cut(1, 1, 1, 1)])).toEqual([cut(1, 2, 2, 1), cut(0, 1, 0, 1), cut(1, 1, 2, 1)]);
});
test('a plan that lacks a piece is refused', () => {
    expect(() => withoutSurplus(problem, [cut(1, 2, 2, 1)])).toThrow('lacks 2 pieces');
});

test('totals are those that whole boards add up to', () => {
    const totals = reachableTotals(problem, 40);
    expect([0, 1, 5, 6, 11, 15, 16, 19].map(totals.atLeast)).toEqual([0, 5, 5, 9, 14, 15, 18, 19]);
    expect([1, 5, 9, 10, 14].map(totals.below)).toEqual([0, 0, 5, 9, 10]);
});
test('prices with a common divisor are counted in it', () => {
    const even = cuttingProblem(request([piece('A', feet(1))], [board(feet(8), usd(800)), board(feet(12), usd(1200))]));
    expect(even).toMatchObject({ costUnit: 400, classes: [{ cost: 2 }, { cost: 3 }] });
});
test('a board another makes pointless is not considered', () => {
    const problemOf = (...stock: Parameters<typeof board>[]) => cuttingProblem(request([piece('A', feet(1))], stock.map(one => board(...one)))).classes.map(one => one.stockIndex);
    expect(problemOf([feet(8), usd(800)], [feet(10), usd(700)])).toEqual([1]);
    expect(problemOf([feet(8), usd(700)], [feet(10), usd(700)])).toEqual([1]);
    expect(problemOf([feet(8), usd(700)], [feet(8), usd(700)])).toEqual([0]);
    expect(problemOf([feet(8), usd(800)], [feet(10), usd(700), 3])).toEqual([0, 1]);
});
