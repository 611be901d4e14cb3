import { box, interval, overlap, type Box, type Interval } from '../core/geometry.js';
import { longest, shortest } from '../core/length.js';

/** What two boxes share; nothing when they only touch. */
export function common(a: Box, b: Box): Box | undefined {
    if (!overlap(a, b)) return undefined;
    const both = (one: Interval, other: Interval): Interval => interval(longest(one.from, other.from), shortest(one.to, other.to));
    return box(both(a.x, b.x), both(a.y, b.y), both(a.z, b.z));
}

/** What a hole leaves of a body, as boxes that do not overlap: at most six, cut across x first, then y, then z. */
export function without(body: readonly Box[], hole: Box): readonly Box[] {
    return body.flatMap(one => {
        const gone = common(one, hole);
        if (!gone) return [one];
        return [
            box(interval(one.x.from, gone.x.from), one.y, one.z), box(interval(gone.x.to, one.x.to), one.y, one.z),
            box(gone.x, interval(one.y.from, gone.y.from), one.z), box(gone.x, interval(gone.y.to, one.y.to), one.z),
            box(gone.x, gone.y, interval(one.z.from, gone.z.from)), box(gone.x, gone.y, interval(gone.z.to, one.z.to)),
        ].filter(({ x, y, z }) => x.from < x.to && y.from < y.to && z.from < z.to);
    });
}

export const withoutAll = (body: readonly Box[], holes: readonly Box[]): readonly Box[] => holes.reduce(without, body);

/** The smallest box round a body. */
export function bounds(body: readonly Box[]): Box {
    const [first, ...rest] = body;
    if (!first) throw new Error('A body without a box has no bounds');
    const round = (a: Interval, b: Interval): Interval => interval(shortest(a.from, b.from), longest(a.to, b.to));
    return rest.reduce((all, one) => box(round(all.x, one.x), round(all.y, one.y), round(all.z, one.z)), first);
}
