import { minus, plus, sum, ticks, zero, type Length } from '../../core/length.js';
import { rational } from '../../core/rational.js';
import { evenPlaces } from './even-places.js';
import type { SlatLayout } from './bench-result.js';

export interface GapLimits {
    readonly from: Length;
    readonly to: Length;
}

/**
 * Slats over a bench's depth: first and last flush, equal gap g with n·w + (n−1)·g = depth exactly and g within the limits. When several
 * numbers fit, the one whose gap is nearest the middle of the limits is taken, and of two equally near the one with more slats.
 * @param depth back edge to front edge, above zero
 * @param width of one slat, above zero
 * @returns `undefined` when no number fits; `nearestDepths` then says which depths do
 */
export function layOutSlats(depth: Length, width: Length, limits: GapLimits): SlatLayout | undefined {
    if (width <= 0) return undefined;
    let best: { readonly count: number; readonly off: number } | undefined;
    for (let count = 1; count * width <= depth; count++) {
        const gaps = depth - count * width;
        const spaces = count - 1;
        if (spaces === 0 ? gaps !== 0 : gaps < spaces * limits.from || gaps > spaces * limits.to) continue;
        // Distance of the gap from the middle of the limits, compared across counts as a fraction.
        const off = spaces === 0 ? 0 : Math.abs(2 * gaps - spaces * (limits.from + limits.to)) / spaces;
        if (!best || off <= best.off) best = { count, off };
    }
    if (!best) return undefined;
    const { count } = best;
    const gaps = ticks(depth - count * width);
    return {
        count,
        gap: count === 1 ? rational(0n) : rational(BigInt(gaps), BigInt(count - 1)),
        starts: count === 1 ? [zero] : evenPlaces(gaps, count - 1).map((place, i) => sum(place, ticks(i * width))),
    };
}

/** The nearest smaller and larger depths that slats of one width fill with an equal gap within the limits; `smaller` is absent below one slat. */
export function nearestDepths(depth: Length, width: Length, limits: GapLimits): { readonly smaller: Length | undefined; readonly larger: Length | undefined } {
    let smaller: Length | undefined;
    if (width <= 0 || limits.from > limits.to) return { smaller: undefined, larger: undefined };
    for (let count = 1; ; count++) {
        const least = plus(ticks(count * width), ticks((count - 1) * limits.from));
        const most = plus(ticks(count * width), ticks((count - 1) * limits.to));
        if (least > depth) return { smaller, larger: least };
        // Ranges of depths grow with the count, so the last one that ends below `depth` ends nearest to it.
        if (most < depth) smaller = most;
        else return { smaller: depth, larger: depth };
    }
}

/** Longest clear stretch between neighbours of one width at these places. */
export function longestClear(starts: readonly Length[], wide: Length): Length {
    return starts.slice(1).reduce<Length>((longest, start, i) => {
        const clear = minus(start, plus(starts[i] ?? zero, wide));
        return clear > longest ? clear : longest;
    }, zero);
}
