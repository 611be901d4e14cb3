/** Fictional rooms for the shell's tests. */
import { inches, mm, ticks, TICKS_PER_INCH, type Length } from '../../../language/src/core/length.js';
import type { Wall } from '../../../language/src/core/geometry.js';
import type { PanelSystem, ShellInput, ShellLayer, ShellOpening } from '../../../language/src/engines/shell/shell-input.js';

/** 3/4" lining, 2 1/2" core, 1/2" facing: T = 3 3/4". Densities are round figures for the tests. */
export const layers: readonly ShellLayer[] = [
    { role: 'lining', name: 'lining', thickness: inches(0, 3, 4), densityKgPerM3: 400 },
    { role: 'barrier', name: 'foil', thickness: inches(0) },
    { role: 'core', name: 'core', thickness: inches(2, 1, 2), densityKgPerM3: 100 },
    { role: 'facing', name: 'facing', thickness: inches(0, 1, 2), densityKgPerM3: 500 },
];
export const system: PanelSystem = {
    modules: [inches(24), inches(18), inches(12)], madeToMeasure: { from: inches(6), to: inches(23, 7, 8) }, engagement: inches(0, 3, 8),
    plate: { section: { thickness: inches(1, 1, 2), width: inches(3, 1, 2) }, nominal: '2x4', stock: 'base_2x4', setIn: inches(0) },
};
export const door = (more: Partial<ShellOpening> = {}): ShellOpening => ({
    name: 'entry', kind: 'door', wall: 'front', from: 'left', near: inches(23, 1, 4), clearWidth: inches(24), sectionWidth: inches(30), plate: 'cut_out', massKg: 40, ...more,
});
/** 84" x 72" x 7'0", front and back run through, door in the front wall, front and right sides free. */
export const room = (more: Partial<ShellInput> = {}): ShellInput => ({
    width: inches(84), depth: inches(72), height: inches(84), corners: 'front_and_back',
    wallLayers: { front: layers, left: layers, back: layers, right: layers }, ceilingLayers: layers, ceilingSpan: 'front_to_back',
    system, openings: [door()], fastenings: [], freeSides: ['front', 'right'], ...more,
});

const mirroredWall: Readonly<Record<Wall, Wall>> = { front: 'front', back: 'back', left: 'right', right: 'left' };
/** The same room seen in a mirror: left and right change places, and with them the order in which the chain of panels is put up. */
export function mirrored(input: ShellInput, insideRun: (wall: Wall) => Length): ShellInput {
    const flipSide = { left: 'right', right: 'left' } as const;
    return {
        ...input,
        wallLayers: { front: input.wallLayers.front, back: input.wallLayers.back, left: input.wallLayers.right, right: input.wallLayers.left },
        freeSides: input.freeSides.map(wall => mirroredWall[wall]),
        system: { ...input.system, chainStartsAt: flipSide[input.system.chainStartsAt ?? 'left'], pinwheelThroughAt: flipSide[input.system.pinwheelThroughAt ?? 'left'] },
        openings: input.openings.map(opening => ({ ...opening, wall: mirroredWall[opening.wall], from: mirroredWall[opening.from] })),
        fastenings: input.fastenings.map(fastening => {
            const run = insideRun(fastening.wall);
            const wall = mirroredWall[fastening.wall];
            return fastening.kind === 'fastening-zone'
                ? { ...fastening, wall, zone: { from: ticks(run - fastening.zone.to), to: ticks(run - fastening.zone.from) } }
                : { ...fastening, wall, at: ticks(run - fastening.at) };
        }),
    };
}

export const shown = (length: Length): number => length / TICKS_PER_INCH;
export { inches, mm };
