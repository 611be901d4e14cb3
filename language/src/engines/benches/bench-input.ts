import { feet, inches, type Length } from '../../core/length.js';
import type { Box, InsideSize, Interval, Wall } from '../../core/geometry.js';
import type { NominalSize, Section } from '../parts/part.js';

/** Greatest clear length of a bench between supports when the build states none: 6 ft. Common practice, no source. */
export const commonLegSpacing: Length = feet(6);
/** Greatest rise a bather is asked to climb from the floor or from one tier to the next: 20". Common practice, no source. */
export const commonClimb: Length = inches(20);
/** How much longer than the drawing a site-cut leg ships: 2". Common practice, no source. */
export const legAllowance: Length = inches(2);

/**
 * What carries a bench. `end_ledgers`: ledgers on the two walls at its ends, rails spanning between them, centre legs under the rails.
 * `back_ledger_and_legs`: a ledger on the wall behind it and a front rail on legs.
 */
export type LoadPath = 'end_ledgers' | 'back_ledger_and_legs';

/** A stock as the bench build names it: its catalogue name, the nominal size it is ordered by, its dressed section. */
export interface BenchStock {
    readonly stock?: string;
    readonly nominal?: NominalSize;
    readonly section: Section;
}

export interface BenchScrew {
    readonly name: string;
    readonly length: Length;
}

/** How a maker builds benches. Slats and bearers lie flat, rails and ledgers stand on edge, a leg's width runs front to back. */
export interface BenchBuild {
    readonly name: string;
    readonly slat: BenchStock;
    /** Least and greatest gap between slats; both are allowed. */
    readonly slatGap: { readonly from: Length; readonly to: Length };
    readonly bearer: BenchStock;
    /** Greatest distance between centres of cross-bearers. */
    readonly bearerSpacing: Length;
    readonly rail: BenchStock;
    readonly ledger: BenchStock;
    readonly leg: BenchStock;
    /** Greatest clear length between supports; `commonLegSpacing` when absent. */
    readonly legSpacing?: Length;
    readonly fascia?: BenchStock;
    readonly backRest?: BenchStock;
    /** Clearance of bench ends and backs to the lining. */
    readonly wallGap: Length;
    readonly ledgerScrew?: BenchScrew;
    /** Greatest distance between screws of a ledger, 16" when absent, and how many stand over one another at each place, 1 when absent. */
    readonly ledgerScrewSpacing?: Length;
    readonly ledgerScrewRows?: number;
    readonly slatScrew?: BenchScrew;
}

/** One bench as the job states it. */
export interface BenchInput {
    readonly name: string;
    /** In the order written: the first runs through. One wall is straight, two an L, three a U. */
    readonly walls: readonly [Wall, ...Wall[]];
    /** Finished top over the finished floor. */
    readonly top: Length;
    /** Back edge to front edge of the slats. */
    readonly depth: Length;
    /** Along the first wall; absent: wall to wall. */
    readonly length?: Length;
    /** Distance from a neighbouring wall's lining to the near end of the first run. */
    readonly from?: { readonly wall: Wall; readonly distance: Length };
    /** Name of the higher tier it stands in front of; absent: the next higher bench on the same wall. */
    readonly inFrontOf?: string;
    /** How far it reaches under the tier behind it. */
    readonly overlap: Length;
    readonly loadPath: LoadPath;
    readonly hasFascia: boolean;
    /** Height of a back rest's upper edge over the bench top; absent: no back rest. */
    readonly backRestTop?: Length;
    readonly hasHeadRest: boolean;
    readonly isAccessible: boolean;
    readonly build: BenchBuild;
}

/** An opening in a wall, in that wall's frame seen from inside. */
export interface WallOpening {
    readonly name: string;
    readonly kind: 'door' | 'vent' | 'window';
    readonly wall: Wall;
    readonly u: Interval;
    readonly v: Interval;
}

/** A space nothing may stand in, in the room frame: a heater with its clearances. */
export interface KeepClear {
    readonly name: string;
    readonly box: Box;
}

/** A place on the floor legs must miss, in the room frame: a drain. */
export interface FloorObstacle {
    readonly name: string;
    readonly x: Interval;
    readonly y: Interval;
}

/**
 * The floor under the legs; z = 0 is the finished floor all heights are measured from, and lower floor is negative.
 * `falls`: a plane, 0 at the high side and `-fall` at the lining of the side it falls to. `measured`: heights found at the feet of single
 * legs, by mark; 0 where none is given.
 */
export type FloorShape =
    | { readonly kind: 'level' }
    | { readonly kind: 'falls'; readonly fall: Length; readonly toward: Wall }
    | { readonly kind: 'measured'; readonly heights: Readonly<Record<string, Length>> };

export interface BenchesInput {
    readonly inside: InsideSize;
    /** In the order written. Names are unique. */
    readonly benches: readonly BenchInput[];
    readonly openings: readonly WallOpening[];
    readonly keepClear: readonly KeepClear[];
    readonly floorObstacles: readonly FloorObstacle[];
    readonly floor: FloorShape;
    /** Greatest rise between tiers; `commonClimb` when absent. */
    readonly climbLimit?: Length;
}
