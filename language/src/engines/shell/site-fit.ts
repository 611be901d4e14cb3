import type { Wall } from '../../core/geometry.js';
import { inches, minus, plus, shortest, sum, ticks, times, zero, type Length } from '../../core/length.js';
import { defaultSideGap } from './headroom.js';

/** Room to the building behind or beside a closed side where someone must reach. Common practice, no source. */
export const reachGap: Length = inches(2);
/** What one panel joint may add to a wall as built. Common practice, no source. */
export const jointTolerance: Length = inches(0, 1, 32);

/** How a side of the room stands to the building. */
export type SideGap = 'free' | 'closed' | 'closed-with-reach';

/** The place the room is built in, as measured; every list holds up to three places, the smallest governs. */
export interface SiteMeasures {
    readonly width: readonly Length[];
    readonly depth: readonly Length[];
    /** Both diagonals of the place, from the front-left and from the front-right corner to the back. */
    readonly diagonals?: readonly [fromFrontLeft: Length, fromFrontRight: Length];
    readonly sides: Readonly<Record<Wall, SideGap>>;
}

export interface RoomOnSite {
    /** Outside. */
    readonly width: Length;
    readonly depth: Length;
    /** Panel joints in the longest chain along each axis. */
    readonly jointsAlongWidth: number;
    readonly jointsAlongDepth: number;
}

export interface AxisFit {
    readonly axis: 'width' | 'depth';
    readonly available: Length;
    readonly outside: Length;
    /** Gap owed at the left or front side, and at the right or back side. */
    readonly gaps: readonly [Length, Length];
    /** Lost because the place is out of square; zero when no diagonals were measured. */
    readonly outOfSquare: Length;
    /** outside + gaps + out of square, and what is left over; below zero it does not fit. */
    readonly required: Length;
    readonly spare: Length;
    /** n x 1/32" of the joints along the axis, and the gap that has to absorb it: `undefined` when a side is free and takes it. */
    readonly stackUp: Length;
    readonly stackUpGap: Length | undefined;
    readonly fits: boolean;
    /** The joints may add more than the gaps and the spare hold. */
    readonly isStackUpAbsorbed: boolean;
}

export interface SiteFit {
    readonly axes: readonly [AxisFit, AxisFit];
    /** How far the back side lies to the right (above zero) or left of square over the front side; `undefined` without diagonals. */
    readonly outOfSquare: Length | undefined;
}

/**
 * Fits the outside rectangle into the measured place: smallest measure, gap to the building at each closed side, and the joints' stack-up against
 * those gaps. Equal to what is owed passes.
 * @returns `undefined` for an axis list without a measure
 */
export function siteFit(room: RoomOnSite, site: SiteMeasures): SiteFit | undefined {
    const width = smallest(site.width);
    const depth = smallest(site.depth);
    if (width === undefined || depth === undefined) return undefined;
    const skew = site.diagonals && width > 0 ? outOfSquare(width, site.diagonals[0], site.diagonals[1]) : undefined;
    const lost = skew === undefined ? zero : ticks(Math.abs(skew));
    return {
        outOfSquare: skew,
        axes: [
            axisFit('width', width, room.width, [site.sides.left, site.sides.right], lost, room.jointsAlongWidth),
            axisFit('depth', depth, room.depth, [site.sides.front, site.sides.back], zero, room.jointsAlongDepth),
        ],
    };
}

/** Of up to three measures the smallest governs. */
export const smallest = ([first, ...others]: readonly Length[]): Length | undefined => first === undefined ? undefined : shortest(first, ...others);

/**
 * Sideways lean of a place with parallel front and back of the given width, from its diagonals: (d1 squared - d2 squared) / (4 width), which is the
 * law of cosines for the two halves of a parallelogram.
 * @param fromFrontLeft diagonal from the front-left to the back-right corner, `fromFrontRight` the other
 * @returns how far the back lies to the right of square, rounded away from zero to a tick; negative when it lies to the left
 */
export function outOfSquare(width: Length, fromFrontLeft: Length, fromFrontRight: Length): Length {
    const difference = BigInt(fromFrontLeft) ** 2n - BigInt(fromFrontRight) ** 2n;
    const over = 4n * BigInt(width);
    const size = ((difference < 0n ? -difference : difference) + over - 1n) / over;
    return ticks(Number(difference < 0n ? -size : size));
}

function axisFit(axis: AxisFit['axis'], available: Length, outside: Length, sides: readonly [SideGap, SideGap], lost: Length, joints: number): AxisFit {
    const gaps = [gapOf(sides[0]), gapOf(sides[1])] as const;
    const required = sum(outside, gaps[0], gaps[1], lost);
    const spare = minus(available, required);
    const stackUp = times(jointTolerance, joints);
    const stackUpGap = sides.includes('free') ? undefined : plus(sum(...gaps), ticks(Math.max(0, spare)));
    return {
        axis, available, outside, gaps, outOfSquare: lost, required, spare, stackUp, stackUpGap,
        fits: spare >= 0, isStackUpAbsorbed: stackUpGap === undefined || stackUp <= stackUpGap,
    };
}

function gapOf(side: SideGap): Length {
    switch (side) {
        case 'free': return zero;
        case 'closed': return defaultSideGap;
        case 'closed-with-reach': return reachGap;
    }
}
