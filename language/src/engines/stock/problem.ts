import { times, type Length } from '../../core/length.js';
import type { StockPiece, StockRequest } from './request.js';

/** Pieces of one length, whatever their marks: they are the same to the saw. */
export interface PieceType {
    readonly length: Length;
    /** Length and one kerf, in the problem's grid. */
    readonly weight: number;
    readonly demand: number;
    /** Most of them one pattern may hold. */
    readonly perPattern: number;
}

/** One kind of board a pattern can be cut from. */
export interface BoardClass {
    readonly stockIndex: number;
    /** Usable length and one kerf, in the problem's grid. */
    readonly capacity: number;
    /** Price or length in cost units; a missing board costs a penalty on top. */
    readonly cost: number;
    readonly penalty: number;
    /** Boards there are; Infinity when as many as needed. */
    readonly limit: number;
    readonly isMissing: boolean;
}

/**
 * A cutting-stock problem in small whole numbers. Adding one kerf to every piece and one to the usable length is exact, not an
 * approximation: n pieces need n - 1 cuts between them, so sum(w) + (n - 1)k <= U is sum(w + k) <= U + k.
 */
export interface CuttingProblem {
    /** Longest first. */
    readonly types: readonly PieceType[];
    /** Shortest capacity first; lengths that another makes pointless are left out. */
    readonly classes: readonly BoardClass[];
    readonly objective: 'price' | 'length';
    /** Minor units or ticks in one cost unit. */
    readonly costUnit: number;
    readonly unplaceable: readonly StockPiece[];
}

/** A way to cut one board: how many of each type, in the order of `problem.types`. */
export interface Pattern {
    readonly classIndex: number;
    readonly counts: readonly number[];
}

/** Patterns and how often each is cut. Together they may hold more pieces than asked for; the surplus is taken out when boards are listed. */
export type Solution = readonly { readonly pattern: Pattern; readonly count: number }[];

export interface ProblemOptions {
    /** False counts a pattern that holds more of a type than the job needs, as the textbook linear bound does. */
    readonly patternsWithinDemand: boolean;
}

/** Turns a request into whole numbers as small as they get. Throws when a figure is not one a request can have. */
export function cuttingProblem(request: StockRequest, options: ProblemOptions = { patternsWithinDemand: true }): CuttingProblem {
    checkRequest(request);
    const usable = request.stock.map(stock => stock.length - times(request.endTrim, 2));
    const longestUsable = Math.max(-1, ...usable.filter((_, at) => (request.stock[at]?.onHand ?? 1) > 0));
    const wanted = request.pieces.filter(piece => piece.count > 0);
    const unplaceable = wanted.filter(piece => piece.length > longestUsable);
    const demandOf = new Map<Length, number>();
    for (const piece of wanted) if (piece.length <= longestUsable) demandOf.set(piece.length, (demandOf.get(piece.length) ?? 0) + piece.count);
    const lengths = [...demandOf.keys()].sort((a, b) => b - a);

    const grid = lengths.reduce((divisor, length) => greatestCommonDivisor(divisor, length + request.kerf), 0) || 1;
    const objective = hasOneCurrency(request) ? 'price' : 'length';
    const rawCosts = request.stock.map(stock => objective === 'price' ? stock.price?.minor ?? 0 : stock.length);
    const costUnit = rawCosts.reduce(greatestCommonDivisor, 0) || 1;
    const all = request.stock.map((stock, stockIndex): BoardClass => ({
        stockIndex,
        capacity: Math.floor(((usable[stockIndex] ?? 0) + request.kerf) / grid),
        cost: (rawCosts[stockIndex] ?? 0) / costUnit,
        penalty: 0,
        limit: stock.onHand ?? Infinity,
        isMissing: false,
    })).filter(one => one.limit > 0 && one.capacity > 0);

    const weights = lengths.map(length => (length + request.kerf) / grid);
    const classes = withMissingBoards(withoutPointless(all), weights);
    const largest = Math.max(0, ...classes.map(one => one.capacity));
    return {
        types: lengths.map((length, at): PieceType => {
            const weight = weights[at] ?? 0;
            const demand = demandOf.get(length) ?? 0;
            const fit = Math.floor(largest / weight);
            return { length, weight, demand, perPattern: options.patternsWithinDemand ? Math.min(demand, fit) : fit };
        }),
        classes, objective, costUnit, unplaceable,
    };
}

export const loadOf = (problem: CuttingProblem, counts: readonly number[]): number =>
    counts.reduce((load, count, type) => load + count * (problem.types[type]?.weight ?? 0), 0);

/** Cost of a board with its penalty, in cost units. */
export const fullCost = (board: BoardClass): number => board.cost + board.penalty;

export const solutionCost = (problem: CuttingProblem, solution: Solution): number =>
    solution.reduce((cost, { pattern, count }) => cost + count * fullCost(boardClass(problem, pattern.classIndex)), 0);

export function boardClass(problem: CuttingProblem, classIndex: number): BoardClass {
    const found = problem.classes[classIndex];
    if (!found) throw new Error(`No board class ${classIndex} of ${problem.classes.length}`);
    return found;
}

/** An unlimited board that is no shorter and no dearer is always at least as good. */
function withoutPointless(classes: readonly BoardClass[]): BoardClass[] {
    return classes.filter((one, at) => !classes.some((other, otherAt) => other.limit === Infinity && otherAt !== at
        && other.capacity >= one.capacity && other.cost <= one.cost
        && (other.capacity > one.capacity || other.cost < one.cost || one.limit !== Infinity || otherAt < at)))
        .sort((a, b) => a.capacity - b.capacity || a.cost - b.cost || a.stockIndex - b.stockIndex);
}

/**
 * When some piece fits only into boards of which there are so many, the longest of them may also be counted as missing. The penalty
 * is more than all boards on hand cost together, so a board is called missing only when the pieces cannot do without it.
 */
function withMissingBoards(classes: BoardClass[], weights: readonly number[]): BoardClass[] {
    const longest = classes.at(-1);
    if (!longest) return classes;
    const unlimited = Math.max(0, ...classes.filter(one => one.limit === Infinity).map(one => one.capacity));
    if (weights.every(weight => weight <= unlimited)) return classes;
    const onHand = classes.filter(one => one.limit !== Infinity).reduce((cost, one) => cost + one.cost * one.limit, 0);
    const dearest = Math.max(...classes.map(one => one.cost));
    return [...classes, { ...longest, penalty: onHand + dearest + 1, limit: Infinity, isMissing: true }];
}

function hasOneCurrency(request: StockRequest): boolean {
    const currency = request.stock[0]?.price?.currency;
    return currency !== undefined && request.stock.every(stock => stock.price?.currency === currency);
}

function checkRequest(request: StockRequest): void {
    const isWhole = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;
    if (!isWhole(request.kerf)) throw new Error(`Kerf is ${request.kerf} ticks; a whole number from 0 is needed`);
    if (!isWhole(request.endTrim)) throw new Error(`End trim is ${request.endTrim} ticks; a whole number from 0 is needed`);
    for (const piece of request.pieces) {
        if (!isWhole(piece.length) || piece.length === 0) throw new Error(`Piece ${piece.mark} is ${piece.length} ticks long`);
        if (!isWhole(piece.count)) throw new Error(`Piece ${piece.mark} is counted ${piece.count} times`);
    }
    for (const stock of request.stock) {
        if (!isWhole(stock.length) || stock.length === 0) throw new Error(`A stock length is ${stock.length} ticks`);
        if (stock.onHand !== undefined && !isWhole(stock.onHand)) throw new Error(`Stock on hand is ${stock.onHand}`);
        if (stock.price && !isWhole(stock.price.minor)) throw new Error(`A board is priced ${stock.price.minor} minor units`);
    }
}

export function greatestCommonDivisor(a: number, b: number): number {
    while (b !== 0) [a, b] = [b, a % b];
    return a;
}
