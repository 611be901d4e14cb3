import { neighbours, shift, walls } from '../../core/geometry.js';
import { squareEnds, type Part } from '../parts/part.js';
import type { BasePlate } from './base-plates.js';
import type { ShellInput } from './shell-input.js';
import { outsideLength } from './wall-run.js';
import type { ShellPanel, ShellResult } from './shell-result.js';

/** The sticks the shell itself adds to the cut list: its base plates, all shop cut and square. */
export function shellParts(input: Pick<ShellInput, 'system' | 'width' | 'depth'>, result: Pick<ShellResult, 'basePlates' | 'thickness'>): readonly Part[] {
    const { plate } = input.system;
    return result.basePlates.map((piece: BasePlate): Part => ({
        mark: piece.mark, what: 'base plate', count: 1, material: plate.stock === undefined ? {} : { stock: plate.stock },
        ...(plate.nominal !== undefined && { nominal: plate.nominal }),
        section: piece.section, length: piece.length, ends: squareEnds, notches: [], cut: 'shop',
        goesTo: piece.thresholdFor.length > 0 ? `under the ${piece.wall} wall, threshold of ${piece.thresholdFor.join(' and ')}` : `under the ${piece.wall} wall`,
        place: { wall: piece.wall, stretches: [shift(piece.along, result.thickness[neighbours[piece.wall].left])], run: outsideLength(input, piece.wall), between: 'outside' },
    }));
}

/** Panels and sections as assembled units, walls in plan order and then the ceiling: what the shop packs and the crew carries. */
export const panelUnits = (result: Pick<ShellResult, 'walls' | 'ceiling'>): readonly ShellPanel[] =>
    [...walls.flatMap(wall => result.walls[wall].panels), ...(result.ceiling?.panels ?? [])];
