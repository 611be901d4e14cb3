import type { Box, Interval, Wall } from '../../core/geometry.js';
import type { Length } from '../../core/length.js';
import type { Rational } from '../../core/rational.js';
import type { Notch, Part, Section } from '../parts/part.js';
import type { LoadPath } from './bench-input.js';
import type { BenchProblem } from './bench-problem.js';

/**
 * What a run ends at: the lining of a wall, the run of its own bench that runs through, the front of the tier behind it, or nothing.
 * Only a wall end is carried by a ledger; every other end stands on legs.
 */
export type RunEnd = 'wall' | 'own_run' | 'tier' | 'free';

/** One straight leg of a bench. */
export interface BenchRun {
    readonly wall: Wall;
    /** Along the wall, in the wall's frame seen from inside. */
    readonly u: Interval;
    /** Back edge to front edge of the slats, from the lining into the room. */
    readonly w: Interval;
    /** Slats, bearers and rails in the room frame: from the underside of the rails to the finished top. */
    readonly box: Box;
    readonly isThrough: boolean;
    /** As seen from inside, facing the wall. */
    readonly ends: { readonly left: RunEnd; readonly right: RunEnd };
    /** The run of the higher tier it stands in front of. */
    readonly inFrontOf: { readonly bench: string; readonly run: number } | undefined;
}

export type PieceKind =
    | 'slat' | 'bearer' | 'front rail' | 'rear rail' | 'ledger' | 'box leg head' | 'front leg' | 'rear leg' | 'box leg post' | 'fascia' | 'back rest';

/** One piece of wood where it ends up, in the room frame; pieces under one mark are equal. */
export interface BenchPiece {
    readonly mark: string;
    readonly kind: PieceKind;
    /** Number of the run it belongs to, from 0. */
    readonly run: number;
    readonly box: Box;
}

/** `count` slats of one width with `count - 1` equal gaps filling the depth exactly. */
export interface SlatLayout {
    readonly count: number;
    /** One gap, exactly, in ticks; it need not be a whole number of them. Zero when there is one slat. */
    readonly gap: Rational;
    /**
     * The back edge of each slat from the bench's back edge. The last is flush by construction; each lies within one tick (12.5 nm) of its exact place.
     */
    readonly starts: readonly Length[];
}

export interface BenchLedger {
    readonly mark: string;
    readonly run: number;
    readonly holds: 'left end' | 'right end' | 'back';
    /** The wall it is screwed to, and where on it, seen from inside: `v.to` is its top. */
    readonly wall: Wall;
    readonly u: Interval;
    readonly v: Interval;
    readonly box: Box;
}

export interface BenchLeg {
    readonly mark: string;
    readonly run: number;
    readonly line: 'front' | 'rear' | 'box';
    /** From the floor under it to its head, in the room frame. */
    readonly box: Box;
    /** Along the wall of its run. */
    readonly u: Interval;
    /** Floor to head, after it is cut on site. */
    readonly finishedLength: Length;
    readonly shippedLength: Length;
    /** Mark of the rail or box leg head it stands under. */
    readonly under: string;
    /** Rails of the tier in front that rest in its notch. */
    readonly alsoCarries: readonly string[];
    /** Lower tier that passes through its notch. */
    readonly passes: string | undefined;
    /** From its head, which is the left end of the part. */
    readonly notches: readonly Notch[];
    /** What is left of its section at the deepest notch; the whole section when there is none. */
    readonly column: Section;
}

/** Places on a wall that need blocking behind the lining, and that panel joints should keep off. */
export interface WallFastening {
    readonly mark: string;
    readonly what: 'ledger' | 'rear leg' | 'back rest';
    readonly wall: Wall;
    readonly u: Interval;
    readonly v: Interval;
}

export interface BenchFastening {
    readonly joint: 'ledger to wall' | 'slat to bearer';
    readonly marks: readonly string[];
    readonly screw?: string;
    readonly screwLength?: Length;
    readonly count: number;
    /** Thickness of the member the screw goes through first. */
    readonly sideMember: Length;
}

/** Longest clear spans of a run, for a check of strength; absent where the member is not there. */
export interface RunSpans {
    /** Between faces of neighbouring cross-bearers. */
    readonly slat: Length;
    /** Between the faces of what carries a bearer at its front and its back. */
    readonly bearer: Length;
    readonly frontRail: Length;
    readonly rearRail: Length | undefined;
}

export interface BenchComfort {
    /** Bench top to ceiling lining. */
    readonly headClearance: Length;
    /** Climb to this bench from `climbFrom`, or from the floor when that is absent. */
    readonly rise: Length;
    readonly climbFrom: string | undefined;
    /** Persons sitting, 24" each; persons lying, 72" each: whole places per run. */
    readonly seats: number;
    readonly lyingPlaces: number;
    /** Least depth of the tier in front that feet can stand on; absent when feet are on the floor. */
    readonly footDepth: Length | undefined;
    /** From the surface feet stand on up to the underside of the rails. */
    readonly heelClearance: Length;
}

export interface BenchLayout {
    readonly name: string;
    readonly top: Length;
    readonly depth: Length;
    readonly isHighest: boolean;
    readonly isAccessible: boolean;
    readonly inFrontOf: string | undefined;
    readonly loadPath: LoadPath;
    /** Top of the ledgers and rails over the finished floor: bench top less slat and cross-bearer. */
    readonly ledgerTop: Length;
    readonly railUnderside: Length;
    /** Slat and cross-bearer. */
    readonly buildUp: Length;
    readonly runs: readonly BenchRun[];
    /** Absent when no number of slats fits. */
    readonly slats: SlatLayout | undefined;
    readonly ledgers: readonly BenchLedger[];
    readonly legs: readonly BenchLeg[];
    readonly pieces: readonly BenchPiece[];
    readonly spans: readonly RunSpans[];
    readonly fastenings: readonly BenchFastening[];
    readonly wallFastenings: readonly WallFastening[];
    readonly comfort: BenchComfort;
    readonly parts: readonly Part[];
}

export interface BenchesResult {
    /** In the order written; a bench that cannot be placed is left out and its problems say why. */
    readonly benches: readonly BenchLayout[];
    /** Of all benches, in the order written. */
    readonly parts: readonly Part[];
    readonly problems: readonly BenchProblem[];
}

/** All marks of the benches, in the order of their parts. */
export const benchMarks = (result: BenchesResult): readonly string[] => result.parts.map(part => part.mark);
