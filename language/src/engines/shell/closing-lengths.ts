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
    const sums = allSums(modules, limit);
    const first = modules.filter(width => width >= ends.leastFirst);
    const last = modules.filter(width => width >= ends.leastLast);
    const found: [number, number][] = [];
    const add = (from: number, to: number): void => {
        if (from <= to && from <= limit) found.push([from, Math.min(to, limit)]);
    };
    if (ends.mayBeEmpty) add(0, 0);
    for (const width of modules) if (width >= ends.leastOnly) add(width, width);
    const outer = new Set(first.flatMap(a => last.map(b => a + b)));
    for (const pair of outer) for (const sum of sums) add(pair + sum, pair + sum);
    const range = offer.madeToMeasure;
    if (madeToMeasure === 1 && range) {
        add(Math.max(range.from, ends.leastOnly), range.to);
        for (const sum of sums) {
            for (const width of last) add(Math.max(range.from, ends.leastFirst) + width + sum, range.to + width + sum);
            for (const width of first) add(Math.max(range.from, ends.leastLast) + width + sum, range.to + width + sum);
            for (const pair of outer) add(range.from + pair + sum, range.to + pair + sum);
        }
    }
    return merged(found);
}

function allSums(modules: readonly Length[], limit: Length): ReadonlySet<number> {
    const level = moduleSums(modules, limit);
    const all = new Set<number>();
    for (let count = 0; ; count++) {
        const sums = level(count);
        if (sums.size === 0) return all;
        for (const sum of sums) all.add(sum);
    }
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
    const range = ranges.find(({ to }) => to >= length);
    return range && Math.max(range.from, length);
};
/** The longest closing length of at most `length`. */
export const closingUpTo = (ranges: readonly WidthRange[], length: number): number | undefined => {
    const range = ranges.findLast(({ from }) => from <= length);
    return range && Math.min(range.to, length);
};
