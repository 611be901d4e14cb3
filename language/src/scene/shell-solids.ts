import type { Results } from '../assembly/results.js';
import { box, boxOnWall, grow, interval, shift, walls, type Box, type InsideSize } from '../core/geometry.js';
import { minus, negate, plus, zero } from '../core/length.js';
import type { Span } from '../core/span.js';
import { inRoom, wallBox } from '../engines/fittings/wall-frame.js';
import { withoutAll } from './boxes.js';
import { idOf, type Solid } from './scene.js';

/** Wall panels with everything cut out of them, ceiling panels and base plates. */
export function shellSolids(results: Results, inside: InsideSize): readonly Solid[] {
    const { shell, room } = results;
    if (!shell || !room) return [];
    const { result, input } = shell;
    const plate = input.system.plate.section.thickness;
    const ofRoom = { span: room.block.head };
    const holes = holesIn(results, inside);
    const spans = new Map<string, Span>([...results.doors, ...results.windows].map(({ name, block }) => [name, block.head]));
    return [
        ...result.basePlates.map((part): Solid => ({
            id: idOf(part.mark), mark: part.mark, kind: 'base plate', layer: 'base', wall: part.wall, ...ofRoom,
            boxes: [boxOnWall(part.wall, part.along, interval(zero, part.section.thickness), part.across, inside)],
        })),
        ...walls.flatMap(wall => result.walls[wall].panels.map((panel): Solid => {
            const solid = boxOnWall(wall, panel.at, interval(plate, plus(plate, panel.height)), interval(negate(panel.thickness), zero), inside);
            const span = panel.opening === undefined ? undefined : spans.get(panel.opening);
            return { id: idOf(panel.mark), mark: panel.mark, kind: kindOf[panel.kind], layer: 'walls', wall, boxes: withoutAll([solid], holes), ...ofRoom, ...(span && { span }) };
        })),
        ...ceilingSolids(results, inside).map(solid => ({ ...solid, ...ofRoom })),
    ];
}

const kindOf = { module: 'wall panel', made_to_measure: 'wall panel made to measure', door_section: 'door section', window_section: 'window section' } as const;

function ceilingSolids({ shell, room }: Results, inside: InsideSize): readonly Solid[] {
    const ceiling = shell?.result.ceiling;
    if (!shell || !ceiling || !room) return [];
    const { thickness } = room;
    const x = interval(negate(thickness.left), minus(shell.input.width, thickness.left));
    const y = interval(negate(thickness.front), minus(shell.input.depth, thickness.front));
    return ceiling.panels.map((panel): Solid => {
        const z = interval(inside.height, plus(inside.height, panel.thickness));
        const body = ceiling.acrossAxis === 'x' ? box(shift(panel.at, negate(thickness.left)), y, z) : box(x, shift(panel.at, negate(thickness.front)), z);
        return { id: idOf(panel.mark), mark: panel.mark, kind: panel.kind === 'made_to_measure' ? 'ceiling panel made to measure' : 'ceiling panel', layer: 'ceiling', boxes: [body] };
    });
}

/** Door frames, panes and vents go through the whole wall. */
function holesIn({ doors, windows, air, room }: Results, inside: InsideSize): readonly Box[] {
    if (!room) return [];
    const through = (wall: typeof walls[number]) => interval(negate(room.thickness[wall]), zero);
    return [
        ...doors.flatMap(({ door }) => door ? [inRoom(door.wall, wallBox(grow(door.frameOpening.u, door.frameWidth), interval(zero, plus(door.frameOpening.v.to, door.frameWidth)), through(door.wall)), inside)] : []),
        ...windows.flatMap(({ window }) => window ? [inRoom(window.wall, wallBox(window.glass.u, window.glass.v, through(window.wall)), inside)] : []),
        ...(air?.vents ?? []).flatMap(({ vent }) => vent ? [vent.box] : []),
    ];
}
