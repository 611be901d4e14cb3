import { contains, intervalsOverlap, type InsideSize, type Interval } from '../../core/geometry.js';
import { zero } from '../../core/length.js';
import type { Thing, ThingKind } from '../fittings/things.js';
import type { Door } from '../openings/door.js';

/** A rectangle on plan, in the room frame from the inside origin. Touching is not overlapping. */
export interface PlanBox { readonly x: Interval; readonly y: Interval }

/** What takes floor from a wheelchair, whatever its height. */
const takesFloor: ReadonlySet<ThingKind> = new Set(['bench', 'rest', 'heater', 'guard']);

/** Rectangles on plan that are taken; one that lies in another is left out. */
export function takenFloor(things: readonly Thing[], { width, depth }: InsideSize): readonly PlanBox[] {
    const room: PlanBox = { x: { from: zero, to: width }, y: { from: zero, to: depth } };
    const boxes = things.filter(({ kind }) => takesFloor.has(kind)).map(({ box: { x, y } }): PlanBox => ({ x, y }))
        .filter(({ x, y }) => intervalsOverlap(x, room.x) && intervalsOverlap(y, room.y));
    return boxes.filter((one, at) => !boxes.some((other, i) => i !== at && contains(other.x, one.x) && contains(other.y, one.y) && (i < at || !same(one, other))));
}

/** Floor an inward leaf sweeps, as the rectangle round its quarter circle. */
export const sweptFloor = (doors: readonly Door[], things: readonly Thing[]): readonly PlanBox[] => doors.filter(({ swing }) => swing.side === 'inside')
    .flatMap(door => things.filter(({ kind, name }) => kind === 'door' && name === `${door.name} leaf`).map(({ box: { x, y } }): PlanBox => ({ x, y })));

const same = (a: PlanBox, b: PlanBox): boolean => a.x.from === b.x.from && a.x.to === b.x.to && a.y.from === b.y.from && a.y.to === b.y.to;
