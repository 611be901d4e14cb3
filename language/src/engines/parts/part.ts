import type { Length } from '../../core/length.js';

/** Finished cross-section of a board or stick: the smaller dimension is the thickness unless the part stands otherwise by name. */
export interface Section {
    readonly thickness: Length;
    readonly width: Length;
}

/**
 * Nominal lumber size, a NAME such as `2x4`. The dressed sizes belonging to it stand in `lumber.ts`; sizes that are not in that table
 * (metric stock, plywood, a board of the maker's own) have no nominal name.
 */
export type NominalSize = `${number}x${number}`;

/** Side of a part that a notch is cut into, the part lying on its wide face with its left end to the left: `top` and `bottom` are the wide faces, `front` and `back` the narrow ones. */
export type PartSide = 'top' | 'bottom' | 'front' | 'back';

/** A rectangular piece sawn out of one side of a part. */
export interface Notch {
    readonly side: PartSide;
    /** From the part's left end to the notch's near edge, along the length. */
    readonly from: Length;
    /** Along the length; `from + length` is at most the part's length. */
    readonly length: Length;
    /** Into the section, at right angles to `side`. */
    readonly depth: Length;
    /** What goes through it, in trade words: `lower rear rail`. */
    readonly clears: string;
}

/** Angles of the two ends in whole or decimal degrees away from a square cut: 0 is square. Left is the end that lies left when the mark is read. */
export interface EndCuts {
    readonly left: number;
    readonly right: number;
}

export const squareEnds: EndCuts = { left: 0, right: 0 };

/** Where the saw stands: shop parts arrive finished; site parts ship long and `measure` says what to measure. */
export type CutPlace = 'shop' | 'site';

/**
 * One row of a cut list before grouping: equal parts under one mark. Everything a saw operator reads is in it; nothing is derived from
 * the text fields.
 */
export interface Part {
    /** `UPPER-RAIL-1`, `BASE-LEFT`. The same mark stands on part, sheet, drawing, label and build step. */
    readonly mark: string;
    /** What it is, in trade words: `base plate`, `bench slat`. */
    readonly what: string;
    /** Whole number of equal pieces, at least 1. */
    readonly count: number;
    /** Catalogue name of the stock it is cut from; absent when the catalogue names none. */
    readonly material: { readonly stock?: string };
    readonly nominal?: NominalSize;
    /** Finished section. */
    readonly section: Section;
    /** Finished length of a shop part, shipped length of a site part (it includes the trim allowance). Long point to long point when an end is not square. */
    readonly length: Length;
    readonly ends: EndCuts;
    readonly notches: readonly Notch[];
    readonly cut: CutPlace;
    /** Where it goes: a mark or a place in trade words. */
    readonly goesTo: string;
    /** For a site part: what to measure before it is cut. */
    readonly measure?: string;
}
