import type { Interval, Wall } from '../../core/geometry.js';
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
    /** The end `from` is measured from. A leg has a head, its top end, which is the left end when it lies down. */
    readonly end: 'head' | 'left end';
    /** The wall the notched side looks toward once the part stands in its place; absent where the part has no wall. */
    readonly toward?: Wall;
    /** From that end to the notch's near edge, along the length. */
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
    /** A mitre: the cut runs slanting over the wide face and square through the thickness, as at the corner of a picture frame. Absent when both ends are square. */
    readonly across?: 'face';
}

export const squareEnds: EndCuts = { left: 0, right: 0 };

/**
 * Where along its wall a part ends up, so that two pieces under running numbers are told apart on site. Every stretch is one piece, or one set of pieces
 * one over or behind the other.
 */
export interface PartPlace {
    readonly wall: Wall;
    /** From the wall's left end to its right, seen from inside; left to right. */
    readonly stretches: readonly Interval[];
    /** Length of the wall in the same frame. */
    readonly run: Length;
    /** What the stretches are measured between: the linings of the neighbouring walls, or the outside of the room. */
    readonly between: 'linings' | 'outside';
    /** Heights over the finished floor, where the place on the wall is marked before the part goes on. */
    readonly heights?: Interval;
}

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
    /** Of a site part: what `length` holds for the cut on site. Finished length and allowance make the length. */
    readonly allowance?: Length;
    readonly ends: EndCuts;
    readonly notches: readonly Notch[];
    readonly cut: CutPlace;
    /** Where it goes: a mark or a place in trade words. */
    readonly goesTo: string;
    /** Absent for what has no place of its own on a wall. */
    readonly place?: PartPlace;
    /** For a site part: what to measure before it is cut. */
    readonly measure?: string;
}
