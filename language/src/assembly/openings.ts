import { grow, type InsideSize } from '../core/geometry.js';
import { minus, zero } from '../core/length.js';
import { placeDoor, type Door, type DoorProblem } from '../engines/openings/door.js';
import { hinges, type Hinges } from '../engines/openings/hinges.js';
import { frameParts, headerPart, windowTrimParts } from '../engines/openings/opening-parts.js';
import { placeWindow, type WindowInWall, type WindowProblem } from '../engines/openings/window.js';
import type { Part } from '../engines/parts/part.js';
import type { ShellOpening } from '../engines/shell/shell-input.js';
import { neighbours } from '../core/geometry.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import { given, placeOf, stockOf, wallOf } from './catalogue-values.js';
import { nameBlocks, type NamedBlock } from './naming.js';

export interface AssembledDoor extends NamedBlock<'door'> {
    readonly model: Block<'door_model'>;
    /** Absent while nothing says where it is. */
    readonly door?: Door;
    readonly problems: readonly DoorProblem[];
    readonly hinges: Hinges;
    readonly parts: readonly Part[];
}
export interface AssembledWindow extends NamedBlock<'window'> {
    readonly model: Block<'window_model'>;
    readonly window?: WindowInWall;
    readonly problems: readonly WindowProblem[];
    readonly parts: readonly Part[];
}

export function assembleDoors(job: Job, inside: InsideSize): readonly AssembledDoor[] {
    return nameBlocks(job.doors).flatMap(({ name, block }): AssembledDoor[] => {
        const model = block.values.model?.value.block;
        const wall = wallOf(block);
        const { leaf, clear, section, gap, bottom_gap: bottomGap, threshold, pane, leaf_thickness: leafThickness, frame, frame_width: frameWidth } = model?.values ?? {};
        if (!model || !wall || !leaf || !clear || !section || !block.values.hinge) return [];
        const stock = stockOf(frame?.value);
        const { door, problems } = placeDoor({
            name, wall, hinge: block.values.hinge.value, swing: block.values.swing?.value ?? 'outward',
            leaf: leaf.value, clear: clear.value, section: section.value,
            ...given({
                place: placeOf(block), gap: gap?.value, bottomGap: bottomGap?.value, pane: pane?.value, leafThickness: leafThickness?.value,
                threshold: block.values.threshold?.value ?? threshold?.value, frameWidth: frameWidth?.value ?? stock?.section.width,
            }),
        }, inside);
        const { leaf_mass: mass, hinge_limit: limit, hinges: stated } = model.values;
        return [{
            name, block, model, problems, ...(door && { door }),
            hinges: hinges(given({ leafMassKg: mass?.value, pairCarriesKg: limit?.value, stated: stated?.value })),
            parts: door && stock ? [...frameParts(door, stock), headerPart(door, stock)] : [],
        }];
    });
}

export function assembleWindows(job: Job, inside: InsideSize): readonly AssembledWindow[] {
    return nameBlocks(job.windows).flatMap(({ name, block }): AssembledWindow[] => {
        const model = block.values.model?.value.block;
        const wall = wallOf(block);
        const { glass_size: glass, section, trim } = model?.values ?? {};
        if (!model || !wall || !glass || !section || !block.values.sill) return [];
        const stock = stockOf(trim?.value);
        const { window, problems } = placeWindow({
            name, wall, sill: block.values.sill.value, glass: glass.value, section: section.value,
            ...given({ place: placeOf(block), trim: stock && { stock: stock.stock, ...stock.section } }),
        }, inside);
        return [{ name, block, model, problems, ...(window && { window }), parts: window ? windowTrimParts(window) : [] }];
    });
}

/** Doors and windows as the division of the walls takes them, measured from the neighbour their place names. */
export function shellOpenings(doors: readonly AssembledDoor[], windows: readonly AssembledWindow[], inside: InsideSize): readonly ShellOpening[] {
    return [
        ...doors.flatMap(({ name, block, door }): ShellOpening[] => door ? [{
            name, kind: 'door', wall: door.wall, ...nearOf(block, door.wall, door.clear.u, inside),
            clearWidth: door.clearWidth, sectionWidth: minus(door.section.to, door.section.from), plate: door.threshold.kind === 'raised' ? 'threshold' : 'cut_out',
            // The jambs stand on the floor, so the plate makes room for the whole frame.
            cutOut: grow(door.frameOpening.u, door.frameWidth),
        }] : []),
        ...windows.flatMap(({ name, block, window }): ShellOpening[] => window ? [{
            name, kind: 'window', wall: window.wall, ...nearOf(block, window.wall, window.glass.u, inside),
            clearWidth: minus(window.glass.u.to, window.glass.u.from), sectionWidth: minus(window.section.to, window.section.from), plate: 'threshold',
        }] : []),
    ];
}

/** From the wall the designer measured from, so that suggestions come back in the same terms. */
function nearOf(block: Block<'door'> | Block<'window'>, wall: Door['wall'], clear: { from: Door['clearWidth']; to: Door['clearWidth'] }, inside: InsideSize): Pick<ShellOpening, 'from' | 'near'> {
    const from = placeOf(block)?.from ?? neighbours[wall].left;
    const run = wall === 'front' || wall === 'back' ? inside.width : inside.depth;
    return { from, near: from === neighbours[wall].right ? minus(run, clear.to) : minus(clear.from, zero) };
}
