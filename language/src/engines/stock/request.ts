import type { Length } from '../../core/length.js';

/** An amount of money in whole minor units (cents), so that sums and comparisons of prices are exact. */
export interface Money {
    readonly minor: number;
    /** ISO 4217 code, for instance `USD`. */
    readonly currency: string;
}

/** So many equal pieces of one mark. Only pieces the shop cuts belong here; what is cut on site is bought by the length it ships in. */
export interface StockPiece {
    readonly mark: string;
    /** Finished length along the board, in ticks, > 0. */
    readonly length: Length;
    readonly count: number;
}

/** One length the section can be had in. The same length may stand twice, for instance once from the rack and once to buy. */
export interface StockLength {
    /** Length of the board as delivered, in ticks, > 0. */
    readonly length: Length;
    /** Price of one board. When any length lacks one, or currencies differ, the plan uses the least length of stock instead. */
    readonly price?: Money | undefined;
    /** Boards of this length there are; absent means as many as needed. */
    readonly onHand?: number | undefined;
}

/**
 * What one section and grade has to be cut from.
 *
 * `endTrim` is what every board loses at EACH of its two ends, saw cut included, before pieces are counted: a board of length S has
 * `S - 2 * endTrim` of usable length. `kerf` is lost between two pieces, and between the last piece and the offcut; a last piece that
 * ends flush with the usable length needs no cut of its own, and a remainder narrower than the kerf goes into the sawdust.
 */
export interface StockRequest {
    readonly pieces: readonly StockPiece[];
    readonly stock: readonly StockLength[];
    readonly kerf: Length;
    readonly endTrim: Length;
}

export interface StockCut {
    readonly mark: string;
    readonly length: Length;
}

/** One board with its cuts in sawing order. Always: sum of cuts + kerfTotal + trimTotal + offcut = stockLength. */
export interface StockBoard {
    readonly stockLength: Length;
    /** Position of this length in `request.stock`, counted from 0. */
    readonly stockIndex: number;
    /** Position of this board's pattern in `plan.patterns`, counted from 0. */
    readonly patternIndex: number;
    readonly cuts: readonly StockCut[];
    readonly kerfTotal: Length;
    readonly trimTotal: Length;
    readonly offcut: Length;
}

/** One setting of the saw stops: the boards that are cut to the same lengths in the same order. */
export interface CuttingPattern {
    readonly stockLength: Length;
    readonly stockIndex: number;
    /** Boards cut this way. */
    readonly count: number;
    readonly cuts: readonly { readonly length: Length; readonly count: number }[];
    readonly offcut: Length;
}

/** Proven: no plan is cheaper. Otherwise no plan is cheaper by more than `gap`, a share of this plan's own total (0.002 = 0.2 %). */
export type StockProof = 'proven' | { readonly gap: number };

export interface StockPlan {
    /** Longest stock first, boards of one pattern together. */
    readonly boards: readonly StockBoard[];
    readonly patterns: readonly CuttingPattern[];
    /** What was made least: the price of the boards, or their length when prices are missing. */
    readonly objective: 'price' | 'length';
    readonly totalBoards: number;
    readonly totalLength: Length;
    /** Absent when a price is missing: no price, no guess. */
    readonly totalCost: Money | undefined;
    /** No plan can be below this; whole minor units, or ticks when the objective is length. */
    readonly lowerBound: number;
    /** The linear bound before it is rounded up to a total that boards can have; same unit. */
    readonly linearBound: number;
    readonly proof: StockProof;
    /** Pieces longer than the usable length of every stock length; they are in no board. */
    readonly unplaceable: readonly StockPiece[];
    /** Boards the plan uses beyond those on hand. */
    readonly missing: readonly { readonly stockIndex: number; readonly stockLength: Length; readonly count: number }[];
    /** How the plan was found and what its proof rests on, in plain words. */
    readonly method: string;
}
