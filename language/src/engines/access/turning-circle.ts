import type { InsideSize } from '../../core/geometry.js';
import { ticks, times, type Length } from '../../core/length.js';
import type { PlanBox } from './free-floor.js';

/** A circle on plan, in the room frame from the inside origin. */
export interface Circle { readonly x: Length; readonly y: Length; readonly diameter: Length }

type Point = readonly [x: number, y: number];
/** Places the centre may touch: straight stretches and quarter arcs at one radius from what is taken. */
interface Limits { readonly lines: readonly Line[]; readonly arcs: readonly Point[] }
interface Line { readonly axis: 'x' | 'y'; readonly at: number; readonly from: number; readonly to: number }

/**
 * A place for a circle of that diameter on the free floor, or nothing when there is none.
 *
 * The centre has to keep one radius from the linings and from every rectangle. The region it may lie in is closed, and its leftmost, then frontmost point lies where
 * two limits meet, because what is kept off is convex: so only those meetings are tried. Each is tried at the whole ticks around it, against exact
 * integer squares, so a circle that is found fits exactly, and one held between straight edges is found even without a tick to spare. A place whose
 * room for the centre is narrower than a tick (12.5 nm) between arcs may be passed over.
 * @param diameter an even number of ticks; an odd one is taken a tick larger
 */
export function placeCircle(diameter: Length, taken: readonly PlanBox[], { width, depth }: InsideSize): Circle | undefined {
    const radius = Math.ceil(diameter / 2);
    if (2 * radius > width || 2 * radius > depth) return undefined;
    const radiusSquared = BigInt(radius) ** 2n;
    const isFree = ([x, y]: Point): boolean => x >= radius && y >= radius && x <= width - radius && y <= depth - radius
        && taken.every(box => {
            const [dx, dy] = [beyond(x, box.x.from, box.x.to), beyond(y, box.y.from, box.y.to)];
            return BigInt(dx) ** 2n + BigInt(dy) ** 2n >= radiusSquared;
        });
    for (const point of meetings(limitsOf(radius, taken, width, depth), radius)) {
        if (!mayBeFree(point, radius, taken, width, depth)) continue;
        const found = around(point).find(isFree);
        if (found) return { x: ticks(found[0]), y: ticks(found[1]), diameter: times(ticks(radius), 2) };
    }
    return undefined;
}

/** The largest circle on the free floor, to two ticks below; `undefined` when no floor is free. */
export function largestCircle(taken: readonly PlanBox[], inside: InsideSize): Circle | undefined {
    let [low, high] = [0, Math.floor(Math.min(inside.width, inside.depth) / 2)];
    let best: Circle | undefined;
    while (low < high) {
        const radius = Math.ceil((low + high) / 2);
        const found = placeCircle(times(ticks(radius), 2), taken, inside);
        if (found) { best = found; low = radius; } else high = radius - 1;
    }
    return best;
}

/** Distance of a coordinate from a stretch; zero within it. */
const beyond = (at: number, from: number, to: number): number => Math.max(0, from - at, at - to);

function limitsOf(radius: number, taken: readonly PlanBox[], width: number, depth: number): Limits {
    const lines: Line[] = [
        { axis: 'x', at: radius, from: radius, to: depth - radius }, { axis: 'x', at: width - radius, from: radius, to: depth - radius },
        { axis: 'y', at: radius, from: radius, to: width - radius }, { axis: 'y', at: depth - radius, from: radius, to: width - radius },
        ...taken.flatMap(({ x, y }): Line[] => [
            { axis: 'x', at: x.from - radius, from: y.from, to: y.to }, { axis: 'x', at: x.to + radius, from: y.from, to: y.to },
            { axis: 'y', at: y.from - radius, from: x.from, to: x.to }, { axis: 'y', at: y.to + radius, from: x.from, to: x.to },
        ]),
    ];
    return { lines, arcs: taken.flatMap(({ x, y }): Point[] => [[x.from, y.from], [x.from, y.to], [x.to, y.from], [x.to, y.to]]) };
}

/** Where two limits meet, in doubles: good to far less than a tick at the size of rooms. */
function* meetings({ lines, arcs }: Limits, radius: number): Generator<Point> {
    const inLine = (line: Line, along: number): boolean => along >= line.from - 1 && along <= line.to + 1;
    const pointOn = (line: Line, along: number): Point => line.axis === 'x' ? [line.at, along] : [along, line.at];
    for (const [i, one] of lines.entries()) {
        for (const other of lines.slice(i + 1)) if (one.axis !== other.axis && inLine(one, other.at) && inLine(other, one.at)) yield pointOn(one, other.at);
        for (const [x, y] of arcs) {
            const [across, along] = one.axis === 'x' ? [one.at - x, y] : [one.at - y, x];
            const reach = radius ** 2 - across ** 2;
            if (reach < 0) continue;
            for (const sign of [-1, 1]) { const at = along + sign * Math.sqrt(reach); if (inLine(one, at)) yield pointOn(one, at); }
        }
    }
    for (const [i, [ax, ay]] of arcs.entries()) for (const [bx, by] of arcs.slice(i + 1)) {
        const [dx, dy] = [bx - ax, by - ay];
        const apart = Math.hypot(dx, dy);
        if (apart === 0 || apart > 2 * radius) continue;
        const off = Math.sqrt(Math.max(0, radius ** 2 - (apart / 2) ** 2)) / apart;
        for (const sign of [-1, 1]) yield [ax + dx / 2 - sign * off * dy, ay + dy / 2 + sign * off * dx];
    }
}

/** Quick look in doubles, generous by two ticks, before the exact one. */
const mayBeFree = ([x, y]: Point, radius: number, taken: readonly PlanBox[], width: number, depth: number): boolean =>
    x >= radius - 2 && y >= radius - 2 && x <= width - radius + 2 && y <= depth - radius + 2
    && taken.every(box => Math.hypot(beyond(x, box.x.from, box.x.to), beyond(y, box.y.from, box.y.to)) >= radius - 2);

/** Whole ticks at and around a point, nearest first. */
function around([x, y]: Point): readonly Point[] {
    const [cx, cy] = [Math.round(x), Math.round(y)];
    return [[0, 0], [-1, 0], [1, 0], [0, -1], [0, 1], [-1, -1], [-1, 1], [1, -1], [1, 1], [-2, 0], [2, 0], [0, -2], [0, 2]].map(([dx = 0, dy = 0]): Point => [cx + dx, cy + dy]);
}

/** Whether a circle keeps clear of everything, exactly: the referee of the search. */
export const circleFits = ({ x, y, diameter }: Circle, taken: readonly PlanBox[], { width, depth }: InsideSize): boolean => {
    const square = BigInt(diameter) ** 2n;
    const double = (from: Length, to: Length, at: Length): bigint => BigInt(2 * beyond(at, from, to));
    return 2 * x >= diameter && 2 * y >= diameter && 2 * (width - x) >= diameter && 2 * (depth - y) >= diameter
        && taken.every(box => double(box.x.from, box.x.to, x) ** 2n + double(box.y.from, box.y.to, y) ** 2n >= square);
};
