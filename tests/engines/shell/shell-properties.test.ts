import fc from 'fast-check';
import { expect, test } from 'vitest';
import { insideRun, walls, type Wall } from '../../../language/src/core/geometry.js';
import { inches, mm, ticks, TICKS_PER_INCH, type Length } from '../../../language/src/core/length.js';
import { computeShell } from '../../../language/src/engines/shell/shell.js';
import type { ShellInput, ShellOpening, WallFastening } from '../../../language/src/engines/shell/shell-input.js';
import { panelUnits } from '../../../language/src/engines/shell/parts.js';
import { layers, mirrored, room, system } from './rooms.js';

const eighths = (from: number, to: number) => fc.integer({ min: from * 8, max: to * 8 }).map(n => ticks(n * TICKS_PER_INCH / 8));
const wall = fc.constantFrom(...walls);
const opening = (name: string) => fc.record({ on: wall, from: wall, near: eighths(3, 60), kind: fc.constantFrom('door' as const, 'window' as const), plate: fc.constantFrom('threshold' as const, 'cut_out' as const) })
    .map(({ on, ...rest }): ShellOpening => ({ name, wall: on, clearWidth: inches(18), sectionWidth: inches(24), ...rest }));
const rooms = fc.record({
    width: eighths(48, 144), depth: eighths(48, 144), corners: fc.constantFrom('front_and_back' as const, 'sides' as const, 'pinwheel' as const),
    openings: fc.tuple(opening('entry'), opening('view')).map(both => both.slice(0, 1 + both[0].near % 2)), bare: wall,
    fastenings: fc.array(fc.record({ wall, at: eighths(0, 100) }).map(({ wall, at }): WallFastening => ({ kind: 'ledger-end', name: 'ledger', wall, at })), { maxLength: 3 }),
    freeSides: fc.uniqueArray(wall), longestPiece: eighths(60, 120), chainStartsAt: fc.constantFrom('left' as const, 'right' as const),
}).map(({ bare, longestPiece, chainStartsAt, ...rest }): ShellInput => room({
    ...rest, system: { ...system, chainStartsAt, plate: { ...system.plate, longestPiece } },
    wallLayers: { ...{ front: layers, left: layers, back: layers, right: layers }, [bare]: layers.filter(({ role }) => role !== 'facing') },
}));

test('a chain of panels sums to its run exactly, and every part of it stands where the one before it ends', () => {
    let closing = 0;
    fc.assert(fc.property(rooms, input => {
        const result = computeShell(input);
        for (const side of walls) {
            const { panels, run, joints } = result.walls[side];
            if (panels.length === 0) { expect(result.problems.some(problem => 'wall' in problem && problem.wall === side)).toBe(true); continue; }
            closing += 1;
            expect(panels.reduce((total, panel) => total + panel.cover, 0)).toBe(run.to - run.from);
            expect(panels.map(({ at }) => at.from)).toEqual([run.from, ...panels.slice(0, -1).map(({ at }) => at.to)]);
            expect(panels.at(-1)?.at.to).toBe(run.to);
            expect(joints.map(({ at }) => at)).toEqual(panels.slice(1).map(({ at }) => at.from));
            expect(panels.map(({ mark }) => mark)).toEqual(panels.map((_, index) => `${side.toUpperCase()}-${index + 1}`));
            expect(panels.reduce((total, panel) => total + panel.overall - panel.cover, 0)).toBe((panels.length - 1) * system.engagement);
        }
        const ceiling = result.ceiling?.panels ?? [];
        expect(ceiling.reduce((total, panel) => total + panel.cover, 0)).toBe(input.width);
    }), { seed: 3, numRuns: 200 });
    expect(closing).toBeGreaterThan(400);
});

test('marks are all different', () => fc.assert(fc.property(rooms, input => {
    const result = computeShell(input);
    const marks = [...panelUnits(result).map(({ mark }) => mark), ...result.basePlates.map(({ mark }) => mark)];
    expect(new Set(marks).size).toBe(marks.length);
})));

test('equal inputs give equal results, byte for byte', () => fc.assert(fc.property(rooms, input => {
    expect(JSON.stringify(computeShell(structuredClone(input)))).toBe(JSON.stringify(computeShell(input)));
}), { numRuns: 50 }));

test('the same room in millimetres and in inches is the same shell', () => fc.assert(fc.property(
    fc.integer({ min: 48, max: 120 }), fc.integer({ min: 48, max: 120 }), fc.integer({ min: 10, max: 60 }), (width, depth, near) => {
        // Whole inches are whole tenths of a millimetre.
        const written = (length: (inch: number) => Length) => computeShell(room({
            width: length(width), depth: length(depth), height: length(84),
            openings: [{ name: 'entry', kind: 'door', wall: 'front', from: 'left', near: length(near), clearWidth: length(24), sectionWidth: length(30), plate: 'cut_out' }],
        }));
        expect(written(inch => mm(inch * 25.4))).toEqual(written(inch => inches(inch)));
    }), { numRuns: 60 }));

const mirrorOf: Readonly<Record<Wall, Wall>> = { front: 'front', back: 'back', left: 'right', right: 'left' };
test('a mirrored room mirrors its shell', () => {
    const seen = { exact: 0, walls: 0 };
    fc.assert(fc.property(rooms, input => {
        const ours = computeShell(input);
        const theirs = computeShell(mirrored(input, side => insideRun(side, ours.inside)));
        expect(theirs.inside).toEqual(ours.inside);
        for (const side of walls) {
            const [here, there] = [ours.walls[side], theirs.walls[mirrorOf[side]]];
            const whole = insideRun(side, ours.inside);
            expect(there.run).toEqual({ from: whole - here.run.to, to: whole - here.run.from });
            expect(there.score).toEqual(here.score);
            const places = (panels: typeof here.panels) => panels.filter(panel => panel.opening !== undefined).map(({ opening, at }) => ({ opening, at }));
            expect(places(there.panels).reverse()).toEqual(places(here.panels).map(({ opening, at }) => ({ opening, at: { from: whole - at.to, to: whole - at.from } })));
            seen.walls += 1;
            // "Larger first from the left" is the one preference that has a hand. Where it had nothing to choose the panels are mirrored one by one, tongues and all.
            const reversed = here.panels.map(({ cover }) => cover).reverse();
            if (here.panels.length === 0 || there.panels.some(({ cover }, index) => cover !== reversed[index])) continue;
            seen.exact += 1;
            expect(there.panels.map(({ overall, at }) => ({ overall, at })).reverse()).toEqual(here.panels.map(({ overall, at }) => ({ overall, at: { from: whole - at.to, to: whole - at.from } })));
        }
        const suggested = (result: typeof ours) => result.sizes;
        expect(suggested(theirs)).toEqual(suggested(ours));
        const lengths = (result: typeof ours, side: Wall) => result.basePlates.filter(plate => plate.wall === side).reduce((total, plate) => total + plate.length, 0);
        for (const side of walls) expect(lengths(theirs, mirrorOf[side])).toBe(lengths(ours, side));
        expect(theirs.closing === undefined).toBe(ours.closing === undefined);
    }), { seed: 5, numRuns: 150 });
    expect(seen.exact, JSON.stringify(seen)).toBeGreaterThan(60);
});

test('no size a designer may write makes it throw', () => {
    const any = fc.oneof(fc.integer({ min: -20_000_000, max: 3_000_000_000 }), eighths(0, 200)).map(n => ticks(n));
    fc.assert(fc.property(fc.record({
        width: any, depth: any, height: any, engagement: any, modules: fc.array(any, { maxLength: 3 }), from: any, to: any, near: any, clear: any, section: any,
        set: any, longestPiece: any, at: any, layer: any, sky: any, freeSides: fc.uniqueArray(wall),
    }), ({ width, depth, height, engagement, modules, from, to, near, clear, section, set, longestPiece, at, layer, sky, freeSides }) => {
        const result = computeShell(room({
            width, depth, height, freeSides, siteCeiling: [sky], fastenings: [{ kind: 'leg-fastening', name: 'leg', wall: 'back', at }],
            ceilingLayers: [{ role: 'core', name: 'core', thickness: layer }],
            system: { ...system, engagement, modules: [...modules, inches(24)], madeToMeasure: { from, to }, plate: { ...system.plate, setIn: set, longestPiece } },
            openings: [{ name: 'entry', kind: 'door', wall: 'front', from: 'right', near, clearWidth: clear, sectionWidth: section, plate: 'cut_out' }],
        }));
        expect(result.headroom.required).toBeGreaterThanOrEqual(Math.max(...result.headroom.terms.map(({ height: term }) => term)));
    }), { numRuns: 300 });
});
