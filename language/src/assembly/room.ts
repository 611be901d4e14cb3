import { walls, type InsideSize, type Wall } from '../core/geometry.js';
import { zero } from '../core/length.js';
import { insideSize, thicknessOf, type WallThickness } from '../engines/shell/wall-run.js';
import type { PanelSystem, ShellInput, ShellLayer } from '../engines/shell/shell-input.js';
import type { Block, LinkedLayer, Link } from '../model/block.js';
import type { Job } from '../model/job.js';
import { given, stockOf } from './catalogue-values.js';
import { freeSides } from './known.js';

/** What the room and its panel system say of the shell, before openings and fastenings are known. */
export interface RoomShell {
    readonly block: Block<'room'>;
    readonly system: Block<'panel_system'>;
    readonly base: Omit<ShellInput, 'openings' | 'fastenings'>;
    readonly thickness: WallThickness;
    readonly ceilingThickness: ReturnType<typeof thicknessOf>;
    /** Absent while the walls leave no room between them. */
    readonly inside?: InsideSize;
}

/** @returns nothing while a size, the system or one of its necessary facts is not written */
export function roomShell(job: Job): RoomShell | undefined {
    const room = job.room;
    const system = room?.values.system?.value.block;
    const { width, depth, height } = room?.values ?? {};
    if (!room || !system || !width || !depth || !height) return undefined;
    const { lining, core, modules, engagement, corners, plate, plate_set_in: setIn, made_to_measure: madeToMeasure } = system.values;
    const plateStock = stockOf(plate?.value);
    if (!lining || !core || !modules || !engagement || !corners || !plateStock || !setIn) return undefined;
    const hidden: readonly Wall[] = room.values.no_facing?.value ?? [];
    const wallLayers = Object.fromEntries(walls.map(wall => [wall, layersOf(system, { isFaced: !hidden.includes(wall) })])) as Record<Wall, readonly ShellLayer[]>;
    const ceilingLayers = layersOf(system, { isFaced: true, core: system.values.ceiling_core?.value, facing: system.values.ceiling_facing?.value });
    const thickness = Object.fromEntries(walls.map(wall => [wall, thicknessOf(wallLayers[wall])])) as WallThickness;
    const ceilingThickness = thicknessOf(ceilingLayers);
    const panelSystem: PanelSystem = {
        modules: modules.value, engagement: engagement.value,
        plate: { section: plateStock.section, setIn: setIn.value, stock: plateStock.stock, ...given({ nominal: plateStock.nominal, longestPiece: plateStock.longest }) },
        ...given({ madeToMeasure: madeToMeasure?.value }),
    };
    const span = room.values.ceiling?.value;
    const base: RoomShell['base'] = {
        width: width.value, depth: depth.value, height: height.value,
        corners: room.values.corners?.value ?? corners.value,
        wallLayers, ceilingLayers, system: panelSystem,
        freeSides: freeSides(job),
        ...given({
            ceilingSpan: span === undefined ? undefined : span === 'spans_front_to_back' ? 'front_to_back' as const : 'left_to_right' as const,
            closingCorner: room.values.closing_corner?.value,
            siteCeiling: job.site?.values.ceiling?.value,
        }),
    };
    const inside = insideSize(base, thickness, ceilingThickness);
    const hasRoom = inside.width > 0 && inside.depth > 0 && inside.height > 0;
    return { block: room, system, base, thickness, ceilingThickness, ...(hasRoom && { inside }) };
}

interface LayerChoice { readonly isFaced: boolean; readonly core?: LinkedLayer<'material' | 'stock'> | undefined; readonly facing?: LinkedLayer<'material' | 'stock'> | undefined }

/** Layers inside to outside. */
function layersOf(system: Block<'panel_system'>, { isFaced, core = system.values.core?.value, facing = system.values.facing?.value }: LayerChoice): readonly ShellLayer[] {
    const { lining, air_gap: gap, barrier, sheathing } = system.values;
    const layer = (role: ShellLayer['role'], given: LinkedLayer<'material' | 'stock'> | undefined): ShellLayer[] => given
        ? [{ role, name: given.of.name, thickness: given.thickness, ...density(given.of) }] : [];
    return [
        ...layer('lining', lining?.value),
        ...(gap ? [{ role: 'air_gap' as const, name: 'air gap', thickness: gap.value }] : []),
        ...(barrier ? [{ role: 'barrier' as const, name: barrier.value.name, thickness: zero, ...density(barrier.value) }] : []),
        ...layer('core', core),
        ...layer('sheathing', sheathing?.value),
        ...(isFaced ? layer('facing', facing) : []),
    ];
}

function density(link: Link<'material' | 'stock'>): { readonly densityKgPerM3?: number } {
    const value = link.block?.values.density?.value.kgPerM3;
    return value === undefined ? {} : { densityKgPerM3: value };
}
