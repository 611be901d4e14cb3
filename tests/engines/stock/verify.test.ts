import { expect, test } from 'vitest';
import { feet, inches, ticks, zero } from '../../../language/src/core/length.js';
import { planStockGreedy } from '../../../language/src/engines/stock/plan-stock.js';
import type { StockBoard, StockPlan } from '../../../language/src/engines/stock/request.js';
import { verifyStockPlan } from '../../../language/src/engines/stock/verify.js';
import { board, piece, request, usd } from './requests.js';

const asked = request([piece('A', feet(5), 2), piece('B', feet(2), 2), piece('LONG', feet(20))], [board(feet(8), usd(800)), board(feet(10), usd(1100), 1)], { kerf: inches(0, 1, 8), endTrim: inches(0, 1, 4) });
const plan = planStockGreedy(asked);
const first = plan.boards[0] as StockBoard;
const withFirst = (change: Partial<StockBoard>): StockPlan => ({ ...plan, boards: [{ ...first, ...change }, ...plan.boards.slice(1)] });

test('a sound plan has nothing wrong with it', () => { expect(verifyStockPlan(plan, asked)).toEqual([]); });

test.each<[string, StockPlan, string]>([
    ['a board that does not add up', withFirst({ offcut: ticks(first.offcut + 1) }), 'adds up to'],
    ['a board of a length not in stock', withFirst({ stockLength: feet(9) }), 'which stock'],
    ['a board without pieces', withFirst({ cuts: [] }), 'holds no piece'],
    ['a trim that was forgotten', withFirst({ trimTotal: zero, offcut: ticks(first.offcut + first.trimTotal) }), 'is trimmed by'],
    ['an offcut below nothing', withFirst({ offcut: ticks(first.offcut - feet(9)), trimTotal: ticks(first.trimTotal + feet(9)) }), 'has an offcut of'],
    ['a kerf too few', withFirst({ kerfTotal: ticks(first.kerfTotal - asked.kerf), offcut: ticks(first.offcut + asked.kerf) }), 'has kerfs of'],
    ['a kerf too many', withFirst({ kerfTotal: ticks(first.kerfTotal + asked.kerf), offcut: ticks(first.offcut - asked.kerf) }), 'has kerfs of'],
    ['a piece under another mark', withFirst({ cuts: first.cuts.map(cut => ({ ...cut, mark: 'B' })) }), 'too few'],
    ['a board left out', { ...plan, boards: plan.boards.slice(1) }, 'too few'],
    ['a board cut twice', { ...plan, boards: [...plan.boards, first] }, 'too many'],
    ['a piece left out though it fits', { ...plan, unplaceable: [...plan.unplaceable, piece('A', feet(5))] }, 'is left out though it fits'],
    ['a long piece not mentioned', { ...plan, unplaceable: [] }, 'too few'],
    ['more boards than there are', { ...plan, boards: plan.boards.map(one => ({ ...one, stockIndex: 1, stockLength: feet(10), offcut: ticks(one.offcut + feet(10) - one.stockLength) })) }, 'boards too few'],
    ['a pattern with another offcut', { ...plan, patterns: plan.patterns.map(pattern => ({ ...pattern, offcut: ticks(pattern.offcut + 1) })) }, 'is not how its boards are cut'],
    ['a pattern counted once too often', { ...plan, patterns: plan.patterns.map(pattern => ({ ...pattern, count: pattern.count + 1 })) }, 'is not how its boards are cut'],
    ['a wrong number of boards', { ...plan, totalBoards: 99 }, 'counts 99 boards'],
    ['a wrong length', { ...plan, totalLength: feet(1) }, "The plan's length"],
    ['a wrong cost', { ...plan, totalCost: usd(1) }, "The plan's cost"],
    ['a bound above the total', { ...plan, lowerBound: 1_000_000 }, 'is above the total'],
    ['a proof without its bound', { ...plan, proof: 'proven', lowerBound: 1 }, 'is called proven'],
])('finds %s', (_name, wrong, words) => {
    expect(verifyStockPlan(wrong, asked).join(' ')).toContain(words);
});
