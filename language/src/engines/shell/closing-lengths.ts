import { ticks, type Length } from '../../core/length.js';
import { moduleSums, type Stretch, type WidthOffer, type WidthRange } from './stretch.js';

/** What is known of a stretch before its length: the corners or sections at its ends. */
export type StretchEnds = Pick<Stretch, 'leastFirst' | 'leastLast' | 'leastOnly' | 'mayBeEmpty'>;

/**
 * Every length up to `limit` with which a stretch closes, as closed ranges that neither meet nor overlap, shortest first. With no panel
 * made to measure the ranges are single lengths.
 */
export function closingLengths(ends: StretchEnds, offer: WidthOffer, madeToMeasure: 0 | 1, limit: Length): readonly WidthRange[] {
    const modules = offer.modules;
    const range = madeToMeasure === 1 ? offer.madeToMeasure : undefined;
    const sums = moduleSums(modules, limit);
    let known: readonly WidthRange[] = [];
    let found: [number, number][] = [];
    const add = (from: number, to: number): void => {
        if (from <= to && from <= limit && !isCovered(known, from, Math.min(to, limit))) found.push([from, Math.min(to, limit)]);
    };
    // Ranges soon cover every length; merging as they come keeps the list as short as the answer.
    const settle = (): void => {
        if (found.length === 0) return;
        known = merged([...known.map(({ from, to }): [number, number] => [from, to]), ...found]);
        found = [];
    };
    if (ends.mayBeEmpty) add(0, 0);
    for (const width of modules) if (width >= ends.leastOnly) add(width, width);
    if (range) add(Math.max(range.from, ends.leastOnly), range.to);
    const first = modules.filter(width => width >= ends.leastFirst);
    const last = modules.filter(width => width >= ends.leastLast);
    if (range) {
        for (const width of last) add(Math.max(range.from, ends.leastFirst) + width, range.to + width);
        for (const width of first) add(Math.max(range.from, ends.leastLast) + width, range.to + width);
    }
    const isEveryModuleWideEnough = first.length === modules.length && last.length === modules.length;
    const outer = new Set(first.flatMap(a => last.map(b => a + b)));
    for (let count = 2; sums(count).size > 0; count++) {
        settle();
        const reached = isEveryModuleWideEnough ? sums(count) : new Set([...sums(count - 2)].flatMap(inner => [...outer].map(pair => pair + inner)));
        for (const sum of reached) {
            add(sum, sum);
            if (range) add(range.from + sum, range.to + sum);
        }
        if (!range || isEveryModuleWideEnough) continue;
        // Made to measure at one end, a module that is wide enough at the other.
        for (const inner of sums(count - 1)) {
            for (const width of last) add(Math.max(range.from, ends.leastFirst) + width + inner, range.to + width + inner);
            for (const width of first) add(Math.max(range.from, ends.leastLast) + width + inner, range.to + width + inner);
        }
    }
    settle();
    return known;
}

/** Index of the first range that ends at or after a length; the number of ranges when none does. */
function firstEndingFrom(ranges: readonly WidthRange[], length: number): number {
    let [low, high] = [0, ranges.length];
    while (low < high) {
        const middle = (low + high) >> 1;
        if ((ranges[middle]?.to ?? Infinity) < length) low = middle + 1;
        else high = middle;
    }
    return low;
}

function isCovered(ranges: readonly WidthRange[], from: number, to: number): boolean {
    const range = ranges[firstEndingFrom(ranges, to)];
    return range !== undefined && range.from <= from;
}

function merged(ranges: [number, number][]): readonly WidthRange[] {
    const result: { from: number; to: number }[] = [];
    for (const [from, to] of ranges.sort((a, b) => a[0] - b[0] || a[1] - b[1])) {
        const before = result.at(-1);
        if (before && from <= before.to + 1) before.to = Math.max(before.to, to);
        else result.push({ from, to });
    }
    return result.map(({ from, to }) => ({ from: ticks(from), to: ticks(to) }));
}

/** The shortest closing length of at least `length`. */
export const closingFrom = (ranges: readonly WidthRange[], length: number): number | undefined => {
    const range = ranges[firstEndingFrom(ranges, length)];
    return range && Math.max(range.from, length);
};
/** The longest closing length of at most `length`. */
export const closingUpTo = (ranges: readonly WidthRange[], length: number): number | undefined => {
    const index = firstEndingFrom(ranges, length);
    const at = ranges[index];
    const range = at && at.from <= length ? at : ranges[index - 1];
    return range && Math.min(range.to, length);
};
