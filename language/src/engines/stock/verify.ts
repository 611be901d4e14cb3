import { minus, sum, ticks, times, type Length } from '../../core/length.js';
import type { StockBoard, StockPlan, StockRequest } from './request.js';

/**
 * Checks a plan against its request in whole numbers, knowing nothing of how it was found: every board adds up, every piece is cut
 * exactly once, no more boards are used than there are or are called missing, totals are sums, and the bound is not above the total.
 * @returns one sentence for each thing that is wrong; empty for a sound plan
 */
export function verifyStockPlan(plan: StockPlan, request: StockRequest): readonly string[] {
    return [
        ...plan.boards.flatMap((board, at) => boardProblems(board, `Board ${at + 1}`, request)),
        ...pieceProblems(plan, request),
        ...stockProblems(plan, request),
        ...patternProblems(plan),
        ...totalProblems(plan, request),
    ];
}

function boardProblems(board: StockBoard, name: string, request: StockRequest): string[] {
    const problems: string[] = [];
    if (request.stock[board.stockIndex]?.length !== board.stockLength) problems.push(`${name} is ${board.stockLength} ticks long, which stock ${board.stockIndex} is not.`);
    if (board.cuts.length === 0) problems.push(`${name} holds no piece.`);
    const whole = sum(...board.cuts.map(cut => cut.length), board.kerfTotal, board.trimTotal, board.offcut);
    if (whole !== board.stockLength) problems.push(`${name} adds up to ${whole} ticks instead of ${board.stockLength}.`);
    if (board.trimTotal !== times(request.endTrim, 2)) problems.push(`${name} is trimmed by ${board.trimTotal} ticks.`);
    if (board.offcut < 0) problems.push(`${name} has an offcut of ${board.offcut} ticks.`);
    const between = times(request.kerf, Math.max(0, board.cuts.length - 1));
    const last = minus(board.kerfTotal, between);
    // the last cut is whole when an offcut remains, and never wider than the kerf
    if (last < 0 || last > request.kerf || (board.offcut > 0 && last !== request.kerf)) problems.push(`${name} has kerfs of ${board.kerfTotal} ticks for ${board.cuts.length} pieces.`);
    return problems;
}

function pieceProblems(plan: StockPlan, request: StockRequest): string[] {
    const key = (mark: string, length: Length): string => `${length} ${mark}`;
    const open = new Map<string, number>();
    const count = (mark: string, length: Length, by: number): void => { open.set(key(mark, length), (open.get(key(mark, length)) ?? 0) + by); };
    for (const piece of request.pieces) count(piece.mark, piece.length, piece.count);
    for (const piece of plan.unplaceable) count(piece.mark, piece.length, -piece.count);
    for (const board of plan.boards) for (const cut of board.cuts) count(cut.mark, cut.length, -1);
    const longest = Math.max(-1, ...request.stock.filter(stock => stock.onHand !== 0).map(stock => minus(stock.length, times(request.endTrim, 2))));
    return [
        ...[...open].filter(([, left]) => left !== 0).map(([piece, left]) => `Piece ${piece} is ${left > 0 ? `cut ${left} times too few` : `cut ${-left} times too many`}.`),
        ...plan.unplaceable.filter(piece => piece.length <= longest).map(piece => `Piece ${piece.mark} is left out though it fits.`),
    ];
}

function stockProblems(plan: StockPlan, request: StockRequest): string[] {
    return request.stock.flatMap((stock, at) => {
        const used = plan.boards.filter(board => board.stockIndex === at).length;
        const missing = plan.missing.filter(one => one.stockIndex === at).reduce((total, one) => total + one.count, 0);
        const excess = stock.onHand === undefined ? 0 : Math.max(0, used - stock.onHand);
        return missing === excess ? [] : [`Stock ${at} has ${excess} boards too few, the plan says ${missing}.`];
    });
}

function patternProblems(plan: StockPlan): string[] {
    return plan.patterns.flatMap((pattern, at) => {
        const boards = plan.boards.filter(board => board.patternIndex === at);
        const lengths = pattern.cuts.flatMap(cut => Array.from({ length: cut.count }, () => cut.length)).join();
        const isSame = boards.every(board => board.stockIndex === pattern.stockIndex && board.offcut === pattern.offcut && board.cuts.map(cut => cut.length).join() === lengths);
        return boards.length === pattern.count && isSame ? [] : [`Pattern ${at + 1} is not how its boards are cut.`];
    });
}

function totalProblems(plan: StockPlan, request: StockRequest): string[] {
    const problems: string[] = [];
    const length = sum(...plan.boards.map(board => board.stockLength));
    const cost = ticks(plan.boards.reduce((total, board) => total + (request.stock[board.stockIndex]?.price?.minor ?? 0), 0));
    if (plan.totalBoards !== plan.boards.length) problems.push(`The plan counts ${plan.totalBoards} boards and lists ${plan.boards.length}.`);
    if (plan.totalLength !== length) problems.push(`The plan's length is ${plan.totalLength} ticks, its boards' ${length}.`);
    if (plan.totalCost && plan.totalCost.minor !== cost) problems.push(`The plan's cost is ${plan.totalCost.minor}, its boards' ${cost}.`);
    const total = plan.objective === 'price' ? cost : length;
    if (plan.lowerBound > total) problems.push(`The bound ${plan.lowerBound} is above the total ${total}.`);
    if (plan.proof === 'proven' && plan.lowerBound !== total && plan.missing.length === 0) problems.push(`The plan is called proven with a bound of ${plan.lowerBound} for ${total}.`);
    return problems;
}
