import { extent, interval, overlap, type Box, type InsideSize, type Interval } from '../../core/geometry.js';
import { inches, minus, plus, zero, type Length } from '../../core/length.js';
import type { Thing } from '../fittings/things.js';
import { inRoom, wallBox } from '../fittings/wall-frame.js';
import type { Door } from '../openings/door.js';
import type { PlacedHeater } from './casing.js';

/** How far a heater is lifted to come off its hanging screws. Common practice, no source. */
export const usualLift = inches(1);

export interface RemovalPath {
    /** The two smaller of width, height and depth, smaller first: what an opening has to let through. */
    readonly smallerTwo: readonly [Length, Length];
    readonly clear: { readonly width: Length; readonly height: Length };
    /** In whichever position, turned or tilted, the heater passes the clear opening. */
    readonly passesDoor: boolean;
    /** Places of the casing on its way out, upright and not turned, from where it hangs to the door; absent when there is no such way. */
    readonly path?: readonly Box[];
    /** Why there is no such way: the opening does not take it upright and not turned, or things stand in every way. */
    readonly noPath?: 'opening_too_small_upright' | 'things_in_the_way';
    /** Things in the straight way: off the wall, then to the door. Empty when a path was found. */
    readonly inTheWay: readonly Thing[];
}

/**
 * The way out of the heater with the benches in place: lifted off its screws, carried level and upright at one height, moved at right angles to the walls, and out through the
 * clear opening. A sufficient check, not a necessary one: turning or tilting may find more, so no path is a warning and only `passesDoor` false is impossible.
 * @param obstacles what stays in the room; surfaces, openings and what belongs to the heater are left out
 */
export function removalPath(heater: PlacedHeater, door: Door, obstacles: readonly Thing[], inside: InsideSize): RemovalPath {
    const { body, depth } = heater.manual;
    const [small = zero, middle = zero] = [body.width, body.height, depth].sort((a, b) => a - b);
    const clear = { width: door.clearWidth, height: door.clearHeight };
    const [narrow = zero, wide = zero] = [clear.width, clear.height].sort((a, b) => a - b);
    const shared = { smallerTwo: [small, middle], clear, passesDoor: small <= narrow && middle <= wide } as const;

    const solid = obstacles.filter(({ kind, belongsTo }) => belongsTo !== heater.name && !passThrough.has(kind));
    const target = doorway(heater, door, inside);
    const heights = carryingHeights(heater, door, solid, inside);
    const [first] = heights;
    if (!target || !first) return { ...shared, noPath: 'opening_too_small_upright', inTheWay: [] };
    for (const height of heights) {
        const path = wayAt(heater, height, target, solid, inside);
        if (path) return { ...shared, path, inTheWay: [] };
    }
    return { ...shared, noPath: 'things_in_the_way', inTheWay: straightWay(heater, first, target, solid) };
}

const passThrough: ReadonlySet<Thing['kind']> = new Set(['wall', 'ceiling', 'floor', 'door', 'window', 'vent', 'heater', 'guard', 'duckboard', 'sign']);

/** Along the door's wall, where the casing has to be to pass, and how far into the room it stands just inside; `undefined` when the opening is too narrow for it upright. */
interface Doorway { readonly x: Interval; readonly y: Interval }

function doorway(heater: PlacedHeater, door: Door, inside: InsideSize): Doorway | undefined {
    const { casing } = heater;
    const alongX = door.wall === 'front' || door.wall === 'back';
    const size = extent(alongX ? casing.x : casing.y);
    if (size > door.clearWidth) return undefined;
    const opening = inRoom(door.wall, wallBox(door.clear.u, door.clear.v, interval(zero, extent(alongX ? casing.y : casing.x))), inside);
    // The low edge may lie anywhere between the two that touch the jambs.
    const slack = (clear: Interval): Interval => interval(clear.from, minus(clear.to, size));
    return alongX ? { x: slack(opening.x), y: interval(opening.y.from, opening.y.from) } : { x: interval(opening.x.from, opening.x.from), y: slack(opening.y) };
}

/** As it hangs and lifted off, at the threshold, and just over each thing, where that passes the ceiling and the head of the door. */
function carryingHeights(heater: PlacedHeater, door: Door, solid: readonly Thing[], inside: InsideSize): readonly Interval[] {
    const height = extent(heater.onWall.v);
    const { v } = door.clear;
    const lifted = plus(heater.onWall.v.from, usualLift);
    const bottoms = [...new Set<Length>([lifted, v.from, ...solid.map(({ box }) => box.z.to)])];
    return bottoms.filter(bottom => bottom >= v.from && bottom + height <= Math.min(v.to, inside.height))
        .sort((a, b) => Math.abs(a - lifted) - Math.abs(b - lifted) || a - b).map(bottom => interval(bottom, plus(bottom, height)));
}

interface Spot { readonly x: Length; readonly y: Length }

/**
 * Search over the places that matter: low edges of the casing at the room's linings, touching a thing on either side, in line with the door. A path of moves along
 * one axis exists if and only if one over these places does, because any move can be pushed until something touches.
 */
function wayAt(heater: PlacedHeater, z: Interval, target: Doorway, solid: readonly Thing[], inside: InsideSize): readonly Box[] | undefined {
    const { casing } = heater;
    const width = extent(casing.x);
    const depth = extent(casing.y);
    const lifting: Box = { x: casing.x, y: casing.y, z: hull(casing.z, z) };
    if (solid.some(({ box }) => overlap(box, lifting))) return undefined;
    const low = solid.filter(({ box }) => box.z.from < z.to && z.from < box.z.to);
    const start: Spot = { x: casing.x.from, y: casing.y.from };
    const edges = (axis: 'x' | 'y', size: Length, room: Length, own: Length, goal: Interval): readonly Length[] => [...new Set<Length>([
        own, goal.from, goal.to, zero, minus(room, size), ...low.flatMap(({ box }) => [box[axis].to, minus(box[axis].from, size)]),
    ])].filter(at => at >= 0 && at <= room - size).sort((a, b) => a - b);
    const xs = edges('x', width, inside.width, start.x, target.x);
    const ys = edges('y', depth, inside.depth, start.y, target.y);
    const casingAt = ({ x, y }: Spot): Box => ({ x: interval(x, plus(x, width)), y: interval(y, plus(y, depth)), z });
    const isFree = (swept: Box): boolean => !low.some(({ box }) => overlap(box, swept));
    const isThere = ({ x, y }: Spot): boolean => within(target.x, x) && within(target.y, y);

    const cameFrom = new Map<string, Spot | undefined>([[keyOf(start), undefined]]);
    const queue: Spot[] = [start];
    for (let at = queue[0], next = 1; at; at = queue[next++]) {
        if (isThere(at)) return trace(at, cameFrom).map(casingAt);
        for (const spot of besides(at, xs, ys)) {
            if (cameFrom.has(keyOf(spot)) || !isFree(sweep(casingAt(at), casingAt(spot)))) continue;
            cameFrom.set(keyOf(spot), at);
            queue.push(spot);
        }
    }
    return undefined;
}

const within = ({ from, to }: Interval, at: Length): boolean => from <= at && at <= to;
const keyOf = ({ x, y }: Spot): string => `${x}/${y}`;

/** The next places that matter along either axis, in a fixed order. */
function besides({ x, y }: Spot, xs: readonly Length[], ys: readonly Length[]): readonly Spot[] {
    const column = xs.indexOf(x);
    const row = ys.indexOf(y);
    const along = [xs[column - 1], xs[column + 1]].flatMap(next => next === undefined ? [] : [{ x: next, y }]);
    return [...along, ...[ys[row - 1], ys[row + 1]].flatMap(next => next === undefined ? [] : [{ x, y: next }])];
}

const hull = (a: Interval, b: Interval): Interval => interval(Math.min(a.from, b.from) as Length, Math.max(a.to, b.to) as Length);
const sweep = (a: Box, b: Box): Box => ({ x: hull(a.x, b.x), y: hull(a.y, b.y), z: hull(a.z, b.z) });

function trace(end: Spot, cameFrom: ReadonlyMap<string, Spot | undefined>): readonly Spot[] {
    const spots: Spot[] = [];
    for (let at: Spot | undefined = end; at; at = cameFrom.get(keyOf(at))) spots.unshift(at);
    // Stops on a straight line are left out: a crew sees two moves, not five.
    return spots.filter((spot, at) => {
        const before = spots[at - 1];
        const after = spots[at + 1];
        return !before || !after || !((before.x === spot.x && spot.x === after.x) || (before.y === spot.y && spot.y === after.y));
    });
}

/** What meets the casing when it comes straight off its wall into line with the door, and then straight to it. */
function straightWay(heater: PlacedHeater, z: Interval, target: Doorway, solid: readonly Thing[]): readonly Thing[] {
    const { casing } = heater;
    const nearest = (goal: Interval, own: Length): Length => Math.max(goal.from, Math.min(goal.to, own)) as Length;
    const end: Spot = { x: nearest(target.x, casing.x.from), y: nearest(target.y, casing.y.from) };
    const offWallAlongX = heater.wall === 'left' || heater.wall === 'right';
    const corner: Spot = offWallAlongX ? { x: end.x, y: casing.y.from } : { x: casing.x.from, y: end.y };
    const at = ({ x, y }: Spot): Box => ({ x: interval(x, plus(x, extent(casing.x))), y: interval(y, plus(y, extent(casing.y))), z });
    const legs = [sweep(at({ x: casing.x.from, y: casing.y.from }), at(corner)), sweep(at(corner), at(end))];
    return solid.filter(({ box }) => legs.some(leg => overlap(leg, box)));
}
