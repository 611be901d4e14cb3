import type { JudgedHeater } from '../assembly/heater-judgement.js';
import type { Results } from '../assembly/results.js';
import { interval, type InsideSize, type Interval } from '../core/geometry.js';
import { minus, negate, plus, sum, ticks, times, zero, type Length } from '../core/length.js';
import { inRoom, wallBox, type WallBox } from '../engines/fittings/wall-frame.js';
import { idOf, type Solid } from './scene.js';

/** Casing, the guard's rails and posts, and the blocking in the wall behind. */
export const heaterSolids = ({ heaters, room }: Results, inside: InsideSize): readonly Solid[] => heaters.flatMap((judged): readonly Solid[] => {
    const { name, block, heater, blocking, model, parts } = judged;
    if (!heater || !room) return [];
    const lining = sum(zero, ...room.base.wallLayers[heater.wall].filter(({ role }) => role === 'lining' || role === 'air_gap').map(layer => layer.thickness));
    const board = parts.find(({ what }) => what === 'heater blocking');
    const thickness = board?.section.thickness;
    return [
        { id: idOf(name), kind: `heater ${model.name?.value ?? ''}`.trim(), layer: 'heater', boxes: [heater.casing], span: block.head },
        ...guardSolids(judged, inside),
        ...(blocking && thickness !== undefined ? [{
            id: idOf(board?.mark ?? `${name}-blocking`), kind: 'heater blocking', layer: 'blocking', wall: heater.wall, isOpen: true, span: block.head, ...(board && { mark: board.mark }),
            boxes: [inRoom(heater.wall, wallBox(blocking.u, blocking.v, interval(negate(plus(lining, thickness)), negate(lining))), inside)],
        } as const] : []),
    ];
});

/** Rails evenly over the height, the lowest and the highest flush; posts behind them. Without a stock the guard is one open outline. */
function guardSolids({ name, block, heater, guard, parts }: JudgedHeater, inside: InsideSize): readonly Solid[] {
    if (!heater || !guard) return [];
    const [front, side, post] = ['guard rail, front', 'guard rail, side', 'guard post'].map(what => parts.find(part => part.what === what));
    const { u, v, w } = guard.onWall;
    const make = (id: string, kind: string, boxes: readonly WallBox[], mark?: string): Solid =>
        ({ id, kind, layer: 'guard', boxes: boxes.map(one => inRoom(heater.wall, one, inside)), span: block.head, ...(mark !== undefined && { mark }) });
    if (!front || !side || !post) return [{ ...make(idOf(name, 'guard'), 'heater guard', [guard.onWall]), isOpen: true }];
    const { thickness: t, width } = front.section;
    const rows = Array.from({ length: front.count }, (_, row): Interval => {
        const from = plus(v.from, ticks(Math.floor(row * (v.to - v.from - width) / Math.max(1, front.count - 1))));
        return interval(from, plus(from, width));
    });
    const inner = minus(w.to, t);
    const at = (from: Length, size: Length): Interval => interval(from, plus(from, size));
    return [
        ...rows.map((row, i) => make(idOf(front.mark, i + 1), front.what, [wallBox(u, row, interval(inner, w.to))], front.mark)),
        ...rows.flatMap((row, i) => [at(u.from, t), at(minus(u.to, t), t)].map((across, end) => make(idOf(side.mark, 2 * i + end + 1), side.what, [wallBox(across, row, interval(zero, inner))], side.mark))),
        ...[
            wallBox(at(plus(u.from, t), width), v, interval(minus(inner, t), inner)), wallBox(at(minus(u.to, plus(t, width)), width), v, interval(minus(inner, t), inner)),
            wallBox(at(plus(u.from, t), t), v, at(zero, width)), wallBox(at(minus(u.to, times(t, 2)), t), v, at(zero, width)),
        ].map((one, i) => make(idOf(post.mark, i + 1), post.what, [one], post.mark)),
    ];
}
