import { minus, plus, rootUp, zero, type Length } from './length.js';

/**
 * A box in the room frame: x right along the front wall, y to the back, z up from the finished floor; origin at the inside front-left
 * corner on the lining faces unless a function says otherwise. Half-open on every axis: boxes that touch do not overlap.
 */
export interface Box {
    readonly x: Interval;
    readonly y: Interval;
    readonly z: Interval;
}
/** Half-open stretch `[from, to)`. */
export interface Interval {
    readonly from: Length;
    readonly to: Length;
}

export const interval = (from: Length, to: Length): Interval => ({ from, to });
export const box = (x: Interval, y: Interval, z: Interval): Box => ({ x, y, z });
export const extent = ({ from, to }: Interval): Length => minus(to, from);
export const shift = ({ from, to }: Interval, by: Length): Interval => ({ from: plus(from, by), to: plus(to, by) });
export const grow = ({ from, to }: Interval, by: Length): Interval => ({ from: minus(from, by), to: plus(to, by) });
export const intervalsOverlap = (a: Interval, b: Interval): boolean => a.from < b.to && b.from < a.to;
export const contains = (outer: Interval, inner: Interval): boolean => outer.from <= inner.from && inner.to <= outer.to;
export const overlap = (a: Box, b: Box): boolean =>
    intervalsOverlap(a.x, b.x) && intervalsOverlap(a.y, b.y) && intervalsOverlap(a.z, b.z);

/** The free stretch between two intervals: zero when they touch, overlap or one holds the other. */
export function gapBetween(a: Interval, b: Interval): Length {
    if (a.to <= b.from) return minus(b.from, a.to);
    if (b.to <= a.from) return minus(a.from, b.to);
    return zero;
}

/** Shortest distance between two boxes, rounded up to a tick; zero when they touch or overlap. */
export function distance(a: Box, b: Box): Length {
    const square = [gapBetween(a.x, b.x), gapBetween(a.y, b.y), gapBetween(a.z, b.z)]
        .reduce((total, gap) => total + BigInt(gap) * BigInt(gap), 0n);
    return rootUp(square);
}

/** The four walls of the plan, front at the bottom. */
export const walls = ['front', 'left', 'back', 'right'] as const;
export type Wall = typeof walls[number];
export const isWall = (word: string): word is Wall => (walls as readonly string[]).includes(word);

/** The walls on which a wall ends, as seen from INSIDE the room facing it: `left` first. */
export const neighbours: Readonly<Record<Wall, { readonly left: Wall; readonly right: Wall }>> = {
    front: { left: 'right', right: 'left' },
    right: { left: 'back', right: 'front' },
    back: { left: 'left', right: 'right' },
    left: { left: 'front', right: 'back' },
};

/** Inside dimensions of the room: width along the front, depth to the back, height to the ceiling lining. */
export interface InsideSize {
    readonly width: Length;
    readonly depth: Length;
    readonly height: Length;
}

/** Inside length of a wall, lining to lining. */
export const insideRun = (wall: Wall, inside: InsideSize): Length => wall === 'front' || wall === 'back' ? inside.width : inside.depth;

/**
 * Frame of one wall seen from inside: u from the wall's left inside corner to the right, v up from the finished floor, w from the lining into the room.
 * Converts a stretch along the wall into the room frame's interval on that wall's own axis (x for front and back, y for left and right).
 */
export function alongWall(wall: Wall, u: Interval, inside: InsideSize): Interval {
    switch (wall) {
        case 'back': return u;
        case 'front': return { from: minus(inside.width, u.to), to: minus(inside.width, u.from) };
        case 'left': return u;
        case 'right': return { from: minus(inside.depth, u.to), to: minus(inside.depth, u.from) };
    }
}

/** Box of a thing on a wall, given by u, v and w in the wall's frame, in the room frame. */
export function boxOnWall(wall: Wall, u: Interval, v: Interval, w: Interval, inside: InsideSize): Box {
    const along = alongWall(wall, u, inside);
    switch (wall) {
        case 'front': return box(along, w, v);
        case 'back': return box(along, { from: minus(inside.depth, w.to), to: minus(inside.depth, w.from) }, v);
        case 'left': return box(w, along, v);
        case 'right': return box({ from: minus(inside.width, w.to), to: minus(inside.width, w.from) }, along, v);
    }
}

/**
 * Where a stretch lies along a wall when its distance is given from one of the neighbouring walls.
 * @param from the neighbouring wall whose lining the distance starts at
 * @param near distance from that lining to the near edge of the thing
 * @returns the stretch in the wall's own u; `undefined` when `from` is not a neighbour of `wall`
 */
export function placeFrom(wall: Wall, from: Wall, near: Length, size: Length, inside: InsideSize): Interval | undefined {
    const ends = neighbours[wall];
    if (from === ends.left) return interval(near, plus(near, size));
    if (from === ends.right) {
        const run = insideRun(wall, inside);
        return interval(minus(run, plus(near, size)), minus(run, near));
    }
    return undefined;
}
