import type { Box, InsideSize, Interval } from '../../core/geometry.js';
import { grow, interval, overlap } from '../../core/geometry.js';
import { longest, minus, negate, plus, shortest, zero, type Length } from '../../core/length.js';
import { zoneOneOffset, zoneTwoTop } from '../../rule-sets/iec-figures.js';

export type Zone = 1 | 2 | 3;

/** Zone 1 on plan: the heater's outline offset all round with rounded corners, cut off by the room. */
export interface ZoneOneOutline {
    /** The outline grown by the offset; its corners are rounded with `cornerRadius`. */
    readonly x: Interval;
    readonly y: Interval;
    readonly cornerRadius: Length;
    /** Nothing of the zone lies outside this rectangle. */
    readonly clip: { readonly x: Interval; readonly y: Interval };
}
/** The three zones as solids in the room frame: zone 1 over its whole height, zones 2 and 3 everywhere else, one above the other. */
export interface ZoneSolids {
    readonly one: ZoneOneOutline & { readonly z: Interval };
    readonly two: { readonly z: Interval };
    readonly three: { readonly z: Interval };
    readonly bounds: Box;
}

/**
 * The zones around a heater.
 * @param heater casing of the heater, room frame, inside origin
 * @param inside dimensions on the lining faces
 * @param toColdSide distance from the lining faces to the cold side of the insulation, where the zones really end; zero ends them at the lining
 * @param overCeiling the same above the ceiling lining
 * Source: IEC 60364-7-703 ed. 2.0, 703.32, from memory.
 */
export function zoneSolids(heater: Box, inside: InsideSize, toColdSide: Length = zero, overCeiling: Length = toColdSide): ZoneSolids {
    const bounds = boundsOf(inside, toColdSide, overCeiling);
    const lower = shortest(zoneTwoTop, bounds.z.to);
    return {
        one: { x: grow(heater.x, zoneOneOffset), y: grow(heater.y, zoneOneOffset), cornerRadius: zoneOneOffset, clip: { x: bounds.x, y: bounds.y }, z: bounds.z },
        two: { z: interval(zero, lower) },
        three: { z: interval(lower, bounds.z.to) },
        bounds,
    };
}

/**
 * The zones a thing stands in, lowest number first: it may straddle two or all three, and then meets the demands of each. Exact, by squared
 * distances in whole ticks; a thing that touches a zone's face from outside is not in it.
 * @param thing box in the room frame, inside origin
 * @param heater casing of the heater, same frame
 * @param toColdSide as in `zoneSolids`: a box inside the wall is in a zone only when this reaches it
 * @returns empty for a thing wholly outside the room
 * Source: IEC 60364-7-703 ed. 2.0, 703.32, from memory.
 */
export function zoneOf(thing: Box, heater: Box, inside: InsideSize, toColdSide: Length = zero, overCeiling: Length = toColdSide): readonly Zone[] {
    const bounds = boundsOf(inside, toColdSide, overCeiling);
    if (!overlap(thing, bounds)) return [];
    const part: Box = { x: clip(thing.x, bounds.x), y: clip(thing.y, bounds.y), z: clip(thing.z, bounds.z) };
    const reach = square(zoneOneOffset);
    const zones: Zone[] = [];
    if (square(gap(part.x, heater.x)) + square(gap(part.y, heater.y)) < reach) zones.push(1);
    // The point of a rectangle that lies farthest from another one is a corner, so the farthest corner tells whether all of it is in zone 1.
    const isPartlyOutsideOne = square(farthest(part.x, heater.x)) + square(farthest(part.y, heater.y)) > reach;
    if (isPartlyOutsideOne && part.z.from < zoneTwoTop) zones.push(2);
    if (isPartlyOutsideOne && part.z.to > zoneTwoTop) zones.push(3);
    return zones;
}

const boundsOf = ({ width, depth, height }: InsideSize, toColdSide: Length, overCeiling: Length): Box => ({
    x: interval(negate(toColdSide), plus(width, toColdSide)),
    y: interval(negate(toColdSide), plus(depth, toColdSide)),
    // Below the floor there is no insulated side that the standard lets the zones reach to.
    z: interval(zero, plus(height, overCeiling)),
});
const clip = (a: Interval, b: Interval): Interval => interval(longest(a.from, b.from), shortest(a.to, b.to));
const square = (length: Length): bigint => BigInt(length) * BigInt(length);
const gap = (a: Interval, b: Interval): Length => longest(zero, minus(b.from, a.to), minus(a.from, b.to));
/** How far the end of `a` that lies farthest from `b` is from it. */
const farthest = (a: Interval, b: Interval): Length => longest(zero, minus(b.from, a.from), minus(a.to, b.to));
