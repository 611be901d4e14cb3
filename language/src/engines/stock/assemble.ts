import { minus, sum, ticks, times, zero, type Length } from '../../core/length.js';
import { boardClass, solutionCost, type CuttingProblem, type Solution } from './problem.js';
import type { CuttingPattern, StockBoard, StockCut, StockPlan, StockRequest } from './request.js';
import type { SearchResult } from './search.js';

/** The plan of a request in which nothing can be cut. */
export function emptyPlan(request: StockRequest, problem: CuttingProblem): StockPlan {
    const currency = problem.objective === 'price' ? request.stock[0]?.price?.currency : undefined;
    return {
        boards: [], patterns: [], objective: problem.objective, totalBoards: 0, totalLength: zero,
        totalCost: currency === undefined ? undefined : { minor: 0, currency },
        lowerBound: 0, linearBound: 0, proof: 'proven', unplaceable: problem.unplaceable, missing: [],
        method: 'There is nothing to cut.',
    };
}

/** Lists the boards of a solution in the order the saw operator cuts them, and gives every piece its mark. */
export function assemblePlan(request: StockRequest, problem: CuttingProblem, found: SearchResult): StockPlan {
    const solution = inSawOrder(problem, found.solution);
    const patterns = solution.map(({ pattern, count }): CuttingPattern => {
        const { stockIndex } = boardClass(problem, pattern.classIndex);
        const cuts = problem.types.flatMap((type, at) => {
            const held = pattern.counts[at] ?? 0;
            return held > 0 ? [{ length: type.length, count: held }] : [];
        });
        const stockLength = request.stock[stockIndex]?.length ?? zero;
        return { stockLength, stockIndex, count, cuts, offcut: splitBoard(request, stockLength, lengthsOf(cuts)).offcut };
    });
    const nextMark = markQueues(request);
    const boards = patterns.flatMap((pattern, patternIndex) => Array.from({ length: pattern.count }, (): StockBoard => {
        const cuts = lengthsOf(pattern.cuts).map((length): StockCut => ({ mark: nextMark(length), length }));
        return { stockLength: pattern.stockLength, stockIndex: pattern.stockIndex, patternIndex, cuts, ...splitBoard(request, pattern.stockLength, lengthsOf(pattern.cuts)) };
    }));

    const cost = boards.reduce((total, board) => total + (request.stock[board.stockIndex]?.price?.minor ?? 0), 0);
    const currency = problem.objective === 'price' ? request.stock[0]?.price?.currency : undefined;
    const full = solutionCost(problem, found.solution);
    const penalties = found.solution.reduce((total, { pattern, count }) => total + count * boardClass(problem, pattern.classIndex).penalty, 0);
    const own = full - penalties;
    const isProven = full <= found.lowerBound;
    return {
        boards, patterns, objective: problem.objective,
        totalBoards: boards.length,
        totalLength: sum(...boards.map(board => board.stockLength)),
        totalCost: currency === undefined ? undefined : { minor: cost, currency },
        lowerBound: Math.max(0, found.lowerBound - penalties) * problem.costUnit,
        linearBound: Math.max(0, found.linearBound - penalties) * problem.costUnit,
        proof: isProven ? 'proven' : { gap: Math.min(1, (full - found.lowerBound) / Math.max(1, own)) },
        unplaceable: problem.unplaceable,
        missing: missingBoards(request, boards),
        method: methodText(problem, found, isProven),
    };
}

/** Kerf, trim and offcut of one board: a last piece flush with the usable length needs no cut, a remainder within the kerf is sawdust. */
export function splitBoard(request: StockRequest, stockLength: Length, cuts: readonly Length[]): { kerfTotal: Length; trimTotal: Length; offcut: Length } {
    const trimTotal = times(request.endTrim, 2);
    const between = times(request.kerf, Math.max(0, cuts.length - 1));
    const rest = minus(stockLength, sum(trimTotal, between, ...cuts));
    if (rest < 0) throw new Error(`A board of ${stockLength} ticks has ${rest} ticks left after its cuts`);
    const last = ticks(cuts.length === 0 ? 0 : Math.min(request.kerf, rest));
    return { kerfTotal: sum(between, last), trimTotal, offcut: minus(rest, last) };
}

const lengthsOf = (cuts: CuttingPattern['cuts']): Length[] =>
    cuts.flatMap(({ length, count }) => Array.from({ length: count }, () => length));

/** Longest stock first, then longest pieces first, then the pattern cut most often: the stops move one way. */
function inSawOrder(problem: CuttingProblem, solution: Solution): Solution {
    return [...solution].sort((a, b) => {
        const boardA = boardClass(problem, a.pattern.classIndex);
        const boardB = boardClass(problem, b.pattern.classIndex);
        const byStock = boardB.capacity - boardA.capacity || boardA.stockIndex - boardB.stockIndex || Number(boardA.isMissing) - Number(boardB.isMissing);
        if (byStock !== 0) return byStock;
        const type = a.pattern.counts.findIndex((count, at) => count !== b.pattern.counts[at]);
        return type < 0 ? b.count - a.count : (b.pattern.counts[type] ?? 0) - (a.pattern.counts[type] ?? 0);
    });
}

/** Marks of equal pieces are used up in the order of the request, so that one mark's pieces lie together. */
function markQueues(request: StockRequest): (length: Length) => string {
    const queues = new Map<Length, { mark: string; left: number }[]>();
    for (const { mark, length, count } of request.pieces) queues.set(length, [...queues.get(length) ?? [], { mark, left: count }]);
    return length => {
        const next = queues.get(length)?.find(({ left }) => left > 0);
        if (!next) throw new Error(`No piece of ${length} ticks is left to mark`);
        next.left--;
        return next.mark;
    };
}

function missingBoards(request: StockRequest, boards: readonly StockBoard[]): StockPlan['missing'] {
    return request.stock.flatMap(({ length, onHand }, stockIndex) => {
        const count = boards.filter(board => board.stockIndex === stockIndex).length - (onHand ?? Infinity);
        return count > 0 ? [{ stockIndex, stockLength: length, count }] : [];
    });
}

function methodText(problem: CuttingProblem, found: SearchResult, isProven: boolean): string {
    const aim = problem.objective === 'price'
        ? 'Least price of the boards'
        : 'Least length of stock, because not every stock length has a price in one currency';
    const within = isProven ? 'No plan is better' : 'A better plan is not ruled out within the stated gap';
    const basis = found.usesSolver
        ? ' The linear bounds are exact; the integer programs are solved in floating point, and the plan itself is exact.'
        : ' Bound and plan are exact.';
    return `${aim}, found by ${found.steps.join(', ')}. ${within}.${basis}`;
}

