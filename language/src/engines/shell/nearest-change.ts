import { ticks, type Length } from '../../core/length.js';
import { closingFrom, closingLengths, closingUpTo, type StretchEnds } from './closing-lengths.js';
import type { WidthOffer, WidthRange } from './stretch.js';

/** A stretch whose length changes with the size or place looked at: by the whole change, against it, or not at all. */
export interface VaryingStretch {
    readonly ends: StretchEnds;
    readonly offer: WidthOffer;
    readonly length: Length;
    readonly grows: 1 | 0 | -1;
}

/** Finds the smallest change in one direction after which at most so many panels are made to measure; `undefined` when none is near enough. */
export type ChangeFinder = (direction: 1 | -1, mostMadeToMeasure: number) => Length | undefined;

/**
 * Prepares the search for the smallest change, upwards or downwards, with which every stretch closes.
 * @param limit largest change worth naming
 * @returns a finder: direction 1 is a longer run or a place further right, -1 the other way; it answers with the change without its sign
 */
export function changeFinder(stretches: readonly VaryingStretch[], limit: Length): ChangeFinder {
    const both = stretches.map(stretch => {
        const longest = ticks(Math.max(0, stretch.length + limit));
        return ([0, 1] as const).map(count => closingLengths(stretch.ends, stretch.offer, count, longest));
    });
    return (direction, most) => {
        let nearest: number | undefined;
        for (const allowance of allowances(stretches.length, Math.min(most, stretches.length))) {
            const ranges = both.map((options, index) => options[allowance[index] ?? 0] ?? []);
            const change = nearestFor(stretches, ranges, direction, nearest ?? limit);
            if (change !== undefined && (nearest === undefined || change < nearest)) nearest = change;
        }
        return nearest === undefined ? undefined : ticks(nearest);
    };
}

/** Raises the change until no stretch asks for more; each step passes one gap between closing lengths, so it ends. */
function nearestFor(stretches: readonly VaryingStretch[], ranges: readonly (readonly WidthRange[])[], direction: 1 | -1, limit: number): number | undefined {
    let change = 1;
    for (let settled = false; !settled;) {
        settled = true;
        for (const [index, stretch] of stretches.entries()) {
            const closing = ranges[index] ?? [];
            const way = stretch.grows * direction;
            const wanted = stretch.length + way * change;
            const found = way < 0 ? closingUpTo(closing, wanted) : closingFrom(closing, wanted);
            if (found === undefined || (way === 0 && found !== wanted)) return undefined;
            if (found === wanted) continue;
            change = Math.abs(found - stretch.length);
            settled = false;
            if (change > limit) return undefined;
        }
    }
    return change <= limit ? change : undefined;
}

/** Every way to allow made to measure in exactly `count` of the stretches. */
function allowances(stretches: number, count: number): readonly (readonly (0 | 1)[])[] {
    if (count < 0) return [];
    if (stretches === 0) return count === 0 ? [[]] : [];
    return [
        ...allowances(stretches - 1, count).map(rest => [0 as const, ...rest]),
        ...(count > 0 ? allowances(stretches - 1, count - 1).map(rest => [1 as const, ...rest]) : []),
    ];
}
