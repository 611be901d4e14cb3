import { minus, plus, sum, ticks, zero, type Length } from '../../core/length.js';
import { interval, type Interval } from '../../core/geometry.js';

/**
 * The ends of `spaces` equal spaces that fill `length`: `spaces + 1` places, the first 0, the last `length`. A place that is no whole
 * number of ticks goes down in the first half and up in the second, so that the mirror image of a layout is the layout of the mirror image;
 * each place is within one tick (12.5 nm) of its exact one.
 */
export function evenPlaces(length: Length, spaces: number): readonly Length[] {
    if (spaces < 1) return [zero];
    return Array.from({ length: spaces + 1 }, (_, i) => i * 2 <= spaces
        ? ticks(Math.floor(i * length / spaces))
        : minus(length, ticks(Math.floor((spaces - i) * length / spaces))));
}

/** Where things of width `wide` stand so that the first and last are flush and no two centres are more than `spacing` apart, with the fewest things. */
export function equalCentres(length: Length, wide: Length, spacing: Length): readonly Length[] {
    const run = minus(length, wide);
    return evenPlaces(run, Math.max(1, Math.ceil(run / spacing)));
}

/**
 * The fewest supports of width `wide` that leave no clear bay longer than `limit` between two faces, in equal bays.
 * @param bay from face to face of what carries the ends
 */
export function supportsInBay(bay: Interval, wide: Length, limit: Length): readonly Interval[] {
    const clear = minus(bay.to, bay.from);
    const count = Math.max(0, Math.ceil((clear - limit) / (wide + limit)));
    const free = ticks(clear - count * wide);
    return evenPlaces(free, count + 1).slice(1, -1).map((place, i) => {
        const from = sum(bay.from, place, ticks(i * wide));
        return interval(from, plus(from, wide));
    });
}
