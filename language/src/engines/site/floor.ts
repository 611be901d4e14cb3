import { interval, intervalsOverlap, type Interval, type Wall } from '../../core/geometry.js';
import { inches, minus, plus, ticks, half, zero, type Length } from '../../core/length.js';
import { rational, roundHalfEven } from '../../core/rational.js';

export const floorMaterials = ['tile', 'concrete', 'vinyl', 'stone', 'other_waterproof', 'wood', 'carpet'] as const;
export type FloorMaterial = typeof floorMaterials[number];

export interface FloorFacts { readonly isWaterproof: boolean; readonly isCombustible: boolean }

/** What a finished floor is. Vinyl keeps water out and burns. Common practice, no source. */
export function floorFacts(material: FloorMaterial): FloorFacts {
    switch (material) {
        case 'tile': case 'concrete': case 'stone': return { isWaterproof: true, isCombustible: false };
        case 'vinyl': return { isWaterproof: true, isCombustible: true };
        // Nothing says what it is made of, so it is taken to burn.
        case 'other_waterproof': return { isWaterproof: true, isCombustible: true };
        case 'wood': case 'carpet': return { isWaterproof: false, isCombustible: true };
        default: return material satisfies never;
    }
}

export interface FloorInput {
    /** Clear size of the place: along the front and to the back. */
    readonly width: Length;
    readonly depth: Length;
    /** How much lower the floor is at the side it falls to. */
    readonly fall?: Length;
    readonly fallsTo?: Wall;
}

export type FloorProblem =
    /** A fall without a side, or a side without a fall. */
    | { readonly kind: 'fall-direction-missing' }
    | { readonly kind: 'fall-missing' };

export interface FloorSlope {
    readonly fall: Length;
    readonly fallsTo?: Wall;
    /** The length over which it falls; zero for a level floor. */
    readonly over: Length;
    readonly problems: readonly FloorProblem[];
}

/** The floor as a plane that falls evenly to one side. Half stated, it counts as level and says what is missing. */
export function floorSlope({ width, depth, fall, fallsTo }: FloorInput): FloorSlope {
    const level = { fall: zero, over: zero };
    if ((fall === undefined || fall === 0) && !fallsTo) return { ...level, problems: [] };
    if (fall === undefined) return { ...level, problems: [{ kind: 'fall-missing' }] };
    if (!fallsTo) return { ...level, problems: [{ kind: 'fall-direction-missing' }] };
    return { fall, fallsTo, over: fallsTo === 'front' || fallsTo === 'back' ? depth : width, problems: [] };
}

/**
 * How much lower the floor is at a point than at the high side of the place, to the nearest tick.
 * @param x, y from the front-left corner of the place
 */
export function dropAt({ fall, fallsTo, over }: FloorSlope, x: Length, y: Length): Length {
    if (!fallsTo || over <= 0) return zero;
    const along = fallsTo === 'left' ? minus(over, x) : fallsTo === 'right' ? x : fallsTo === 'front' ? minus(over, y) : y;
    return ticks(Number(roundHalfEven(rational(BigInt(fall) * BigInt(along), BigInt(over)))));
}

/**
 * How much longer a leg or shim has to be at each point so that its top is level with the one at the highest of them.
 * @returns one figure per point, in order, the smallest being zero
 */
export function levellingAt(slope: FloorSlope, points: readonly { readonly x: Length; readonly y: Length }[]): readonly Length[] {
    const drops = points.map(({ x, y }) => dropAt(slope, x, y));
    const least = Math.min(...drops);
    return drops.map(drop => ticks(drop - least));
}

/** Width of a floor drain when only its middle is measured. Common practice, no source. */
export const usualDrain = inches(4);

/** Something that stands on the floor: a base plate, a leg. In the frame of the place. */
export interface Footing { readonly name: string; readonly x: Interval; readonly y: Interval }

/** Footings that stand on the drain, which plate and legs have to miss; touching its edge misses it. */
export function onDrain(drain: { readonly x: Length; readonly y: Length; readonly size?: Length }, footings: readonly Footing[]): readonly Footing[] {
    const size = drain.size ?? usualDrain;
    const square = (middle: Length): Interval => interval(minus(middle, half(size)), plus(minus(middle, half(size)), size));
    const [x, y] = [square(drain.x), square(drain.y)];
    return footings.filter(footing => intervalsOverlap(footing.x, x) && intervalsOverlap(footing.y, y));
}
