import { expect, test } from 'vitest';
import { feet } from '../../../language/src/core/length.js';
import { countsOfTotal, dearerCounts, unevenClass, wholeCounts } from '../../../language/src/engines/stock/board-counts.js';
import type { LinearBound } from '../../../language/src/engines/stock/column-generation.js';
import { cuttingProblem } from '../../../language/src/engines/stock/problem.js';
import { board, piece, request, usd } from './requests.js';

/** Boards of 8, 10 and 12 ft at a dollar a foot: 4, 5 and 6 cost units. */
const problem = cuttingProblem(request([piece('A', feet(5), 9), piece('B', feet(1))], [board(feet(8), usd(800)), board(feet(10), usd(1000)), board(feet(12), usd(1200), 7)]));
const solution = (boards: number[], least = [0, 0, 0], most = [9, 9, 7]): LinearBound => ({ boards, counts: { least, most } }) as unknown as LinearBound;

test('the class split next is the one nearest to a half', () => {
    expect(unevenClass(solution([1.1, 2.4, 3]))).toBe(1);
    expect(unevenClass(solution([1.5, 2.4, 3]))).toBe(0);
    expect(unevenClass(solution([1, 2.0000001, 3]))).toBeUndefined();
});
test('a class is not split where its limits were broken', () => {
    expect(unevenClass(solution([2.5, 1, 1], [0, 0, 0], [2, 9, 7]))).toBeUndefined();
    expect(unevenClass(solution([2.5, 1, 1], [3, 0, 0]))).toBeUndefined();
    expect(wholeCounts(solution([2.5, 1, 1], [0, 0, 0], [2, 9, 7]))).toEqual([2, 1, 1]);
    expect(wholeCounts(solution([0.2, 1, 1], [3, 0, 0]))).toEqual([3, 1, 1]);
});
test('counts of one total come fewest boards first', () => {
    expect(countsOfTotal(problem, solution([1.2, 0.5, 0.4]), 12)).toEqual([[0, 0, 2], [3, 0, 0]]);
    expect(countsOfTotal(problem, solution([1.2, 0.5, 0.4]), 3)).toEqual([]);
    expect(countsOfTotal(problem, solution([1.2, 0.5, 0.4], [0, 0, 0], [9, 9, 1]), 12)).toEqual([[3, 0, 0]]);
});
test('boards that add least are a longer one in place of a shorter, then one more', () => {
    expect(dearerCounts(problem, [2, 1, 0]).map(({ boards, extra }) => [...boards, extra])).toEqual([[1, 2, 0, 1], [2, 0, 1, 1], [1, 1, 1, 2], [3, 1, 0, 4], [2, 2, 0, 5], [2, 1, 1, 6]]);
});
test('no board is added beyond those on hand', () => {
    expect(dearerCounts(problem, [0, 1, 7]).map(({ boards }) => boards)).toEqual([[1, 1, 7], [0, 2, 7]]);
});
