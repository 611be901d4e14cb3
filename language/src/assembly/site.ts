import { walls, type Wall } from '../core/geometry.js';
import { inches, type Length } from '../core/length.js';
import { doorOnSite, type DoorOnSite } from '../engines/site/door-opens.js';
import { floorFacts, floorSlope, onDrain, usualDrain, type FloorFacts, type FloorSlope, type Footing } from '../engines/site/floor.js';
import { obstructionGaps, placeObstruction, standRoom, type ObstructionGap, type RoomStand } from '../engines/site/obstructions.js';
import { siteFit, smallest, type SideGap, type SiteFit } from '../engines/shell/site-fit.js';
import { blockedWayIn, type WayIn, type WayInPart } from '../engines/shell/way-in.js';
import { panelUnits } from '../engines/shell/parts.js';
import type { ShellPanel, ShellResult } from '../engines/shell/shell-result.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import { given } from './catalogue-values.js';
import { freeSides } from './known.js';
import { nameBlocks } from './naming.js';
import type { AssembledDoor } from './openings.js';
import type { RoomShell } from './room.js';

export interface AssembledSite {
    readonly block: Block<'site'>;
    readonly fit?: SiteFit;
    readonly sides: Readonly<Record<Wall, SideGap>>;
    readonly stand?: RoomStand;
    readonly obstructions: readonly (ObstructionGap & { readonly block: Block<'obstruction'> })[];
    readonly floor?: FloorFacts;
    readonly slope?: FloorSlope;
    readonly doors: readonly { readonly door: AssembledDoor; readonly onSite: DoorOnSite }[];
    /** Panels that do not pass the way in, with the parts of it that stop them. */
    readonly blocked: readonly { readonly panel: ShellPanel; readonly at: readonly WayInPart[] }[];
    /** Base plates and legs that would stand on the drain. */
    readonly onDrain: readonly Footing[];
}

export function assembleSite(job: Job, room: RoomShell, shell: ShellResult, doors: readonly AssembledDoor[], footings: readonly Footing[]): AssembledSite | undefined {
    const block = job.site;
    if (!block) return undefined;
    const { values } = block;
    const free = freeSides(job);
    const reach = values.reach?.value ?? [];
    const sides = Object.fromEntries(walls.map(wall => [wall, free.includes(wall) ? 'free' : reach.includes(wall) ? 'closed-with-reach' : 'closed'])) as Record<Wall, SideGap>;
    const gap = Object.fromEntries(walls.map(wall => [wall, inches(sides[wall] === 'closed-with-reach' ? 2 : 1)])) as Record<Wall, Length>;
    const isFree = Object.fromEntries(walls.map(wall => [wall, free.includes(wall)])) as Record<Wall, boolean>;
    const joints = (axis: readonly Wall[]): number => Math.max(...axis.map(wall => shell.walls[wall].joints.length));
    const [d1, d2] = values.diagonals?.value ?? [];
    const fit = values.width && values.depth ? siteFit(
        { width: room.base.width, depth: room.base.depth, jointsAlongWidth: joints(['front', 'back']), jointsAlongDepth: joints(['left', 'right']) },
        { width: values.width.value, depth: values.depth.value, sides, ...(d1 !== undefined && d2 !== undefined && { diagonals: [d1, d2] as const }) },
    ) : undefined;
    const width = smallest(values.width?.value ?? []);
    const depth = smallest(values.depth?.value ?? []);
    const ceiling = smallest(values.ceiling?.value ?? []);
    const stand = width !== undefined && depth !== undefined ? standRoom({ site: { width, depth }, room: room.base, isFree, gap }) : undefined;
    const obstructions = nameBlocks(job.obstructions).flatMap(({ name, block: obstruction }) => {
        const { from_left: fromLeft, from_front: fromFront, width: across, depth: along, bottom, top } = obstruction.values;
        if (!fromLeft || !fromFront || !across || !along || ceiling === undefined) return [];
        return [{ block: obstruction, placed: placeObstruction({ name, fromLeft: fromLeft.value, fromFront: fromFront.value, width: across.value, depth: along.value, ...given({ bottom: bottom?.value, top: top?.value }) }, ceiling) }];
    });
    const standing = stand?.box;
    const corner = stand?.left !== undefined && stand.front !== undefined ? { left: stand.left, front: stand.front } : undefined;
    const clearFloor = Object.fromEntries((values.clear?.value ?? []).map(({ wall, length }) => [wall, length])) as Partial<Record<Wall, Length>>;
    const drain = values.drain_from_left && values.drain_from_front && { x: values.drain_from_left.value, y: values.drain_from_front.value, size: usualDrain };
    return {
        block, sides,
        obstructions: standing ? obstructionGaps(standing, obstructions.map(({ placed }) => placed)).map((found, i) => ({ ...found, block: obstructions[i]?.block ?? job.obstructions[0] as Block<'obstruction'> })) : [],
        doors: doors.flatMap(door => door.door && room.inside ? [{
            door,
            onSite: doorOnSite(door.door, {
                inside: room.inside, shell: { walls: room.thickness, ceiling: room.ceilingThickness }, isFree, clearFloor, gap,
                obstructions: obstructions.map(({ placed }) => placed), ...(corner && { corner }),
            }),
        }] : []),
        blocked: panelUnits(shell).flatMap(panel => {
            const at = blockedWayIn([panel.overall, panel.height, panel.thickness], wayIn(values));
            return at.length > 0 ? [{ panel, at }] : [];
        }),
        onDrain: drain && corner ? onDrain(drain, footings.map(footing => ({ name: footing.name, x: move(footing.x, corner.left), y: move(footing.y, corner.front) }))) : [],
        ...(fit && { fit }), ...(stand && { stand }),
        ...(values.floor && { floor: floorFacts(values.floor.value) }),
        ...(width !== undefined && depth !== undefined && { slope: floorSlope({ width, depth, ...given({ fall: values.floor_fall?.value, fallsTo: values.falls_to?.value }) }) }),
    };
}

const move = ({ from, to }: Footing['x'], by: Length): Footing['x'] => ({ from: (from + by) as Length, to: (to + by) as Length });

function wayIn(values: Block<'site'>['values']): WayIn {
    const [before, after] = values.corridor?.value ?? [];
    return given<WayIn>({
        doorway: values.doorway?.value,
        turn: before === undefined ? undefined : { before, after: after ?? before },
        stairs: values.stairs && { width: values.stairs.value.width, headHeight: values.stairs.value.height },
        liftCar: values.lift_car && values.lift_car_height ? { width: values.lift_car.value.width, depth: values.lift_car.value.height, height: values.lift_car_height.value } : undefined,
    });
}
