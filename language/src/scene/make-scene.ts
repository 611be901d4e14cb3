import { nameBlocks } from '../assembly/naming.js';
import type { Results } from '../assembly/results.js';
import { box, interval, type InsideSize } from '../core/geometry.js';
import { minus, negate, zero } from '../core/length.js';
import { inRoom, wallBox } from '../engines/fittings/wall-frame.js';
import { isMoulding } from '../engines/fittings/ceiling-moulding.js';
import type { Job } from '../model/job.js';
import { benchSolids } from './bench-solids.js';
import { heaterSolids } from './heater-solids.js';
import { openingSolids } from './opening-solids.js';
import { idOf, type Scene, type Solid } from './scene.js';
import { shellSolids } from './shell-solids.js';

/**
 * The room as solids.
 * @returns nothing while the room has no inside: there is nothing to draw then, and findings say why
 */
export function makeScene(job: Job, results: Results): Scene | undefined {
    const { inside, room, shell } = results;
    if (!inside || !room || !shell) return undefined;
    const { thickness, base } = room;
    const benchBlocks = new Map(nameBlocks(job.benches).map(({ name, block }) => [name, block.head]));
    return {
        inside,
        outside: box(
            interval(negate(thickness.left), minus(base.width, thickness.left)), interval(negate(thickness.front), minus(base.depth, thickness.front)), interval(zero, base.height)),
        plateThickness: base.system.plate.section.thickness,
        solids: [
            ...shellSolids(results, inside), ...openingSolids(results, inside), ...benchSolids(results.benches, name => benchBlocks.get(name)),
            ...heaterSolids(results, inside), ...fittingSolids(results), ...mouldingSolids(job, results, inside),
        ],
    };
}

/** What has no size of its own is a point: it hides nothing and has no lines, only its sign and its name. */
const fittingSolids = ({ fittings }: Results): readonly Solid[] => fittings.flatMap(({ name, thing, block }): readonly Solid[] => {
    if (!thing) return [];
    const isSolid = (['x', 'y', 'z'] as const).every(axis => thing.box[axis].from < thing.box[axis].to);
    return [{ id: idOf(thing.kind, name), kind: thing.kind.replaceAll('_', ' '), layer: 'fittings', boxes: [thing.box], span: block.head, ...(!isSolid && { isOpen: true }) }];
});

/** Ceiling mouldings lie under the ceiling with their width upright. */
const mouldingSolids = (job: Job, { parts }: Results, inside: InsideSize): readonly Solid[] => parts.filter(isMoulding).flatMap(({ mark, section, place, what }): readonly Solid[] => {
    const [stretch] = place?.stretches ?? [];
    if (!place || !stretch) return [];
    const at = wallBox(stretch, interval(minus(inside.height, section.width), inside.height), interval(zero, section.thickness));
    return [{ id: idOf(mark), mark, kind: what, layer: 'trim', wall: place.wall, boxes: [inRoom(place.wall, at, inside)], ...(job.room && { span: job.room.head }) }];
});
