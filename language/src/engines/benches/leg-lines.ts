import { intervalsOverlap, interval, type Interval } from '../../core/geometry.js';
import { minus, plus, zero, type Length } from '../../core/length.js';
import { supportsInBay } from './even-places.js';

/** One rail and what is under it, along the wall. */
export interface RailLine {
    readonly rail: Interval;
    /** Whether a ledger or box leg holds the end; an end that is not held stands on a leg of its own. */
    readonly isHeld: { readonly left: boolean; readonly right: boolean };
    /** Legs of the tier behind on which the rail rests in passing. */
    readonly shared: readonly Interval[];
    readonly legThickness: Length;
    /** Greatest clear bay. */
    readonly spacing: Length;
}

/** Own legs of a rail, left to right, and the centre supports of any kind. */
export interface RailLegs {
    readonly own: readonly Interval[];
    readonly centres: readonly Interval[];
}

/** Legs at the ends that nothing holds, and the fewest centre legs that leave no clear bay longer than the spacing, bay by equal bay. */
export function legsUnderRail(line: RailLine): RailLegs {
    const { rail, isHeld, legThickness } = line;
    const shared = line.shared.filter(leg => intervalsOverlap(leg, rail));
    const leftEnd = interval(rail.from, plus(rail.from, legThickness));
    const rightEnd = interval(minus(rail.to, legThickness), rail.to);
    const ends: Interval[] = [];
    if (!isHeld.left && !shared.some(leg => intervalsOverlap(leg, leftEnd))) ends.push(leftEnd);
    if (!isHeld.right && !shared.some(leg => intervalsOverlap(leg, rightEnd))) ends.push(rightEnd);

    const standing = inOrder([...ends, ...shared]);
    const filled = baysOf(line, standing).flatMap(bay => supportsInBay(bay, legThickness, line.spacing));
    return {
        own: inOrder([...ends, ...filled]),
        centres: inOrder([...filled, ...shared.filter(leg => !intervalsOverlap(leg, leftEnd) && !intervalsOverlap(leg, rightEnd))]),
    };
}

/**
 * Legs under a front rail, in line with the supports of the rear rail when that takes no more legs than dividing the rail equally.
 * @param inLineWith centre supports of the rear rail
 */
export function legsInLine(line: RailLine, inLineWith: readonly Interval[]): RailLegs {
    const equal = legsUnderRail(line);
    if (equal.centres.length === 0) return equal;
    const places = inLineWith.map(leg => centredOn(leg, line.legThickness));
    const aligned = legsUnderRail({ ...line, shared: places });
    if (aligned.centres.length > equal.centres.length) return equal;
    return { own: inOrder([...aligned.own, ...places.filter(leg => intervalsOverlap(leg, line.rail))]), centres: aligned.centres };
}

/** Longest clear bay of a rail on these supports; its held ends count as supports. */
export const longestBay = (line: RailLine, supports: readonly Interval[]): Length =>
    baysOf(line, inOrder(supports)).reduce<Length>((longest, bay) => bay.to - bay.from > longest ? minus(bay.to, bay.from) : longest, zero);

function baysOf({ rail }: RailLine, supports: readonly Interval[]): readonly Interval[] {
    const bays: Interval[] = [];
    let from = rail.from;
    for (const leg of supports) {
        if (!intervalsOverlap(leg, rail)) continue;
        if (leg.from > from) bays.push(interval(from, leg.from));
        if (leg.to > from) from = leg.to;
    }
    if (rail.to > from) bays.push(interval(from, rail.to));
    return bays;
}

function centredOn(leg: Interval, wide: Length): Interval {
    const spare = minus(minus(leg.to, leg.from), wide);
    const from = plus(leg.from, Math.trunc(spare / 2) as Length);
    return interval(from, plus(from, wide));
}

const inOrder = (legs: readonly Interval[]): readonly Interval[] => [...legs].sort((a, b) => a.from - b.from);
