import { insideRun, interval, neighbours, placeFrom, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { half, minus, plus, type Length } from '../../core/length.js';

/** Where a thing stands along its wall: a distance from the lining of a neighbouring wall to the thing's near edge or to its middle. */
export interface WallPlace {
    readonly from: Wall;
    readonly distance: Length;
    readonly to: 'near_edge' | 'middle';
}

/** Where a thing stands up its wall; without any of them the height is not known. */
export interface WallHeight {
    /** From the finished floor to its underside. */
    readonly bottom?: Length;
    /** From the ceiling lining down to its upper edge. */
    readonly belowCeiling?: Length;
}

export type PlaceProblem =
    | { readonly kind: 'place-missing'; readonly wall: Wall }
    | { readonly kind: 'not-a-neighbour'; readonly wall: Wall; readonly from: Wall; readonly neighbours: readonly [Wall, Wall] }
    /** It runs past the lining of the wall `past`, `over` of it lying beyond. */
    | { readonly kind: 'runs-off-the-wall'; readonly wall: Wall; readonly past: Wall; readonly over: Length }
    | { readonly kind: 'height-missing'; readonly wall: Wall }
    | { readonly kind: 'below-the-floor'; readonly wall: Wall; readonly over: Length }
    | { readonly kind: 'above-the-ceiling'; readonly wall: Wall; readonly over: Length };

export interface PlacedStretch {
    /** In the wall's own u or v; absent when nothing says where. A stretch that runs off the wall is still given, so that the rest can be worked out. */
    readonly stretch?: Interval;
    readonly problems: readonly PlaceProblem[];
}

/**
 * The stretch a thing takes along its wall.
 * @param size along the wall; zero for a thing whose size is not known
 * @returns u left to right seen from inside. A middle of an odd number of ticks puts the odd one (12.5 nm) on the far side of the named wall.
 */
export function alongTheWall(wall: Wall, place: WallPlace | undefined, size: Length, inside: InsideSize): PlacedStretch {
    if (!place) return { problems: [{ kind: 'place-missing', wall }] };
    const near = place.to === 'near_edge' ? place.distance : minus(place.distance, half(size));
    const stretch = placeFrom(wall, place.from, near, size, inside);
    const ends = neighbours[wall];
    if (!stretch) return { problems: [{ kind: 'not-a-neighbour', wall, from: place.from, neighbours: [ends.left, ends.right] }] };
    const run = insideRun(wall, inside);
    const problems: PlaceProblem[] = [];
    if (stretch.from < 0) problems.push({ kind: 'runs-off-the-wall', wall, past: ends.left, over: minus(0 as Length, stretch.from) });
    if (stretch.to > run) problems.push({ kind: 'runs-off-the-wall', wall, past: ends.right, over: minus(stretch.to, run) });
    return { stretch, problems };
}

/** The stretch a thing takes up its wall, from the finished floor. `bottom` is used when both are stated. */
export function upTheWall(wall: Wall, height: WallHeight, size: Length, inside: InsideSize): PlacedStretch {
    const bottom = height.bottom ?? (height.belowCeiling === undefined ? undefined : minus(inside.height, plus(height.belowCeiling, size)));
    if (bottom === undefined) return { problems: [{ kind: 'height-missing', wall }] };
    const stretch = interval(bottom, plus(bottom, size));
    const problems: PlaceProblem[] = [];
    if (stretch.from < 0) problems.push({ kind: 'below-the-floor', wall, over: minus(0 as Length, stretch.from) });
    if (stretch.to > inside.height) problems.push({ kind: 'above-the-ceiling', wall, over: minus(stretch.to, inside.height) });
    return { stretch, problems };
}

/** Distance from a named neighbouring wall's lining to the near edge of a stretch; `undefined` when it is not a neighbour. */
export function distanceFrom(wall: Wall, neighbour: Wall, u: Interval, inside: InsideSize): Length | undefined {
    if (neighbour === neighbours[wall].left) return u.from;
    return neighbour === neighbours[wall].right ? minus(insideRun(wall, inside), u.to) : undefined;
}
