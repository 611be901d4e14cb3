import fc from 'fast-check';
import { expect, test } from 'vitest';
import { overlap, type Box, type InsideSize, type Interval, type Wall } from '../../../language/src/core/geometry.js';
import { inches, minus, mm, ticks, TICKS_PER_INCH, zero, type Length } from '../../../language/src/core/length.js';
import type { BenchesInput, BenchInput } from '../../../language/src/engines/benches/bench-input.js';
import type { BenchesResult } from '../../../language/src/engines/benches/bench-result.js';
import { computeBenches } from '../../../language/src/engines/benches/compute-benches.js';
import { bench, slatted, stock } from './rooms.js';

// Lengths in 1/64", so that halves are whole ticks and a mirror image can be exact.
const length = (least: number, most: number) => fc.integer({ min: least * 64, max: most * 64 }).map(n => ticks(n * TICKS_PER_INCH / 64));
const wallSets: readonly (readonly [Wall, ...Wall[]])[] = [['back'], ['left'], ['right'], ['back', 'left'], ['back', 'right'], ['left', 'back'], ['right', 'back'], ['left', 'back', 'right'], ['back', 'left', 'right']];
const anyBench = (name: string, top: readonly [number, number]) => fc.record({
    walls: fc.constantFrom(...wallSets), top: length(...top), depth: length(10, 26), overlap: fc.oneof(fc.constant(zero), length(0, 3)),
    loadPath: fc.constantFrom('end_ledgers' as const, 'back_ledger_and_legs' as const), hasFascia: fc.boolean(), gap: fc.constantFrom(zero, inches(0, 1, 4)),
    leg: fc.constantFrom('2x2' as const, '2x3' as const, '2x4' as const), spacing: fc.constantFrom(inches(36), inches(72)),
    place: fc.option(fc.record({ size: length(30, 90), distance: length(0, 30) })),
}).map(({ walls, top, gap, leg, spacing, place, ...rest }): BenchInput => bench(name, walls, top, rest.depth, {
    ...rest, build: { ...slatted, wallGap: gap, leg: stock(leg), legSpacing: spacing, slatGap: { from: zero, to: inches(1, 1, 4) } },
    ...(place && walls.length === 1 && { length: place.size, from: { wall: walls[0] === 'back' ? 'left' as const : 'back' as const, distance: place.distance } }),
}));
const anyOpening = (wall: Wall) => fc.record({ from: length(0, 60), size: length(8, 30), bottom: length(0, 40), height: length(4, 40) }).map(({ from, size, bottom, height }) => ({
    name: `view on ${wall}`, kind: 'window' as const, wall, u: { from, to: ticks(from + size) }, v: { from: bottom, to: ticks(bottom + height) },
}));
const anyRoom = fc.record({
    width: length(60, 160), depth: length(60, 160), benches: fc.tuple(anyBench('upper', [30, 44]), anyBench('lower', [12, 20])),
    openings: fc.oneof(fc.constant([]), fc.tuple(anyOpening('left'), anyOpening('back'))), fall: length(0, 2), toward: fc.constantFrom('left' as const, 'front' as const),
}).map(({ width, depth, benches, openings, fall, toward }): BenchesInput => ({
    inside: { width, depth, height: inches(84) }, benches, openings, keepClear: [], floorObstacles: [], floor: { kind: 'falls', fall, toward },
}));

const otherSide = (wall: Wall): Wall => wall === 'left' ? 'right' : wall === 'right' ? 'left' : wall;
const turned = (u: Interval, run: Length): Interval => ({ from: minus(run, u.to), to: minus(run, u.from) });
const mirrorRoom = (input: BenchesInput): BenchesInput => ({
    ...input,
    benches: input.benches.map(one => ({
        ...one, walls: one.walls.map(otherSide) as unknown as BenchInput['walls'], ...(one.from && { from: { ...one.from, wall: otherSide(one.from.wall) } }),
    })),
    openings: input.openings.map(opening => ({
        ...opening, wall: otherSide(opening.wall), u: turned(opening.u, opening.wall === 'back' || opening.wall === 'front' ? input.inside.width : input.inside.depth),
    })),
    floor: input.floor.kind === 'falls' ? { ...input.floor, toward: otherSide(input.floor.toward) } : input.floor,
});
const mirrorBox = (box: Box, inside: InsideSize): Box => ({ ...box, x: turned(box.x, inside.width) });
type Row = readonly [words: string, ...figures: number[]];
const figures = ({ x, y, z }: Box): readonly number[] => [x.from, x.to, y.from, y.to, z.from, z.to];
const boxes = (result: BenchesResult, place: (box: Box) => Box): readonly Row[] => result.benches.flatMap(one => [
    ...one.pieces.map((piece): Row => [`${one.name} ${piece.kind}`, ...figures(place(piece.box))]), ...one.runs.map((run): Row => [`${one.name} run`, ...figures(place(run.box))]),
]);
/** Parts with the place they go to; `turn` puts them in the mirror. */
const cutList = (result: BenchesResult, turn: boolean): readonly Row[] => result.parts.map(({ what, count, section, length: long, notches, cut, nominal, place }): Row => {
    const wall = (one: Wall): Wall => turn ? otherSide(one) : one;
    const stretches = (place?.stretches ?? []).map(u => turn && place ? turned(u, place.run) : u).sort((a, b) => a.from - b.from);
    return [
        JSON.stringify([what, count, section, notches.map(notch => ({ ...notch, ...(notch.toward && { toward: wall(notch.toward) }) })), cut, nominal, place && wall(place.wall), place?.run, place?.heights]),
        long, ...stretches.flatMap(({ from, to }) => [from, to]),
    ];
});
/** Rows of one list without a row of the other in its place; a middle that falls on half a tick has no exact mirror image, so one tick is allowed. */
const unmatched = (rows: readonly Row[], others: readonly Row[]): readonly Row[] => {
    const left = [...others];
    return rows.filter(([words, ...at]) => {
        const found = left.findIndex(([otherWords, ...place]) => otherWords === words && place.every((figure, i) => Math.abs(figure - at[i]!) <= 1));
        if (found >= 0) left.splice(found, 1);
        return found < 0;
    });
};

test('the mirror image of a room has the mirror image of its benches and the same parts', () => {
    fc.assert(fc.property(anyRoom, input => {
        const here = computeBenches(input);
        const there = computeBenches(mirrorRoom(input));
        expect(there.parts).toHaveLength(here.parts.length);
        expect(unmatched(boxes(there, box => box), boxes(here, box => mirrorBox(box, input.inside)))).toEqual([]);
        expect(unmatched(cutList(there, false), cutList(here, true))).toEqual([]);
        expect(there.problems.map(problem => problem.kind).sort()).toEqual(here.problems.map(problem => problem.kind).sort());
    }), { numRuns: 400 });
});

test('marks of one row count left to right as seen from inside', () => {
    const counted = new Map<string, number>();
    fc.assert(fc.property(anyRoom, input => {
        const { benches, parts } = computeBenches(input);
        for (const layout of benches) {
            const rows = new Map<string, readonly (readonly [number: number, from: number])[]>();
            for (const { mark, kind, run } of layout.pieces) {
                const { place, goesTo } = parts.find(part => part.mark === mark)!;
                const row = `${run} ${kind} ${place!.wall} ${kind === 'box leg post' ? goesTo.replace(/ of .*/, '') : ''}`;
                rows.set(row, [...rows.get(row) ?? [], [Number(/\d+$/.exec(mark)![0]), place!.stretches[0]!.from]]);
            }
            for (const [row, marks] of rows) {
                const numbers = [...new Map(marks)].sort(([a], [b]) => a - b);
                const places = numbers.map(([, from]) => from);
                expect([row, places]).toEqual([row, [...places].sort((a, b) => a - b)]);
                const kind = row.split(' ').slice(1, -1).join(' ').replace(/ (front|left|back|right)$/, '');
                if (numbers.length > 1) counted.set(kind, (counted.get(kind) ?? 0) + 1);
            }
        }
    }), { numRuns: 400 });
    for (const kind of ['front leg', 'rear leg', 'ledger']) expect([...counted.keys()].some(row => row.startsWith(kind)), kind).toBe(true);
});

test('no two pieces of a sound room want the same space; a notched leg gives way to what it is notched for', () => {
    let sound = 0;
    fc.assert(fc.property(anyRoom, input => {
        const result = computeBenches(input);
        if (result.problems.some(problem => problem.kind !== 'climb-too-high' && problem.kind !== 'across-opening' && problem.kind !== 'no-wall-behind' && problem.kind !== 'slats-do-not-fit')) return;
        sound++;
        const notched = new Map(result.benches.flatMap(one => one.legs.filter(leg => leg.notches.length > 0).map(leg => [leg.mark, leg] as const)));
        const pieces = result.benches.flatMap(one => one.pieces.map(piece => ({ ...piece, bench: one.name })));
        for (const [i, a] of pieces.entries()) {
            for (const b of pieces.slice(i + 1)) {
                if (!overlap(a.box, b.box)) continue;
                const leg = notched.get(a.mark) ?? notched.get(b.mark);
                const other = leg?.mark === a.mark ? b : a;
                const isCleared = leg && (other.bench === leg.passes || other.kind === 'fascia');
                expect(isCleared ? 'cleared' : `${a.mark} ${a.kind} and ${b.mark} ${b.kind}`).toBe('cleared');
            }
        }
    }), { numRuns: 400 });
    expect(sound).toBeGreaterThan(100);
});

test('no clear bay of a rail is longer than the leg spacing unless the result says so', () => {
    fc.assert(fc.property(anyRoom, input => {
        const result = computeBenches(input);
        for (const layout of result.benches) {
            if (result.problems.some(problem => problem.bench === layout.name && problem.kind === 'span-without-leg')) continue;
            const limit = input.benches.find(one => one.name === layout.name)!.build.legSpacing!;
            for (const spans of layout.spans) {
                expect(spans.frontRail).toBeLessThanOrEqual(limit);
                expect(spans.rearRail ?? 0).toBeLessThanOrEqual(limit);
            }
        }
    }), { numRuns: 300 });
});

test('a rail that rests on a leg in passing lies on it, over the whole thickness of the rail', () => {
    let carried = 0;
    fc.assert(fc.property(anyRoom, input => {
        const result = computeBenches(input);
        const pieces = new Map(result.benches.flatMap(one => one.pieces.map(piece => [piece.mark, piece.box] as const)));
        for (const layout of result.benches) {
            for (const leg of layout.legs) {
                const run = layout.runs[leg.run]!;
                const across = run.wall === 'back' || run.wall === 'front' ? 'y' : 'x';
                for (const mark of [leg.under, ...leg.alsoCarries]) {
                    const rail = pieces.get(mark)!;
                    if (leg.line !== 'box') expect(leg.box[across].from <= rail[across].from && rail[across].to <= leg.box[across].to).toBe(true);
                    expect(overlap({ ...leg.box, z: rail.z }, rail)).toBe(true);
                }
                for (const mark of leg.alsoCarries) {
                    carried++;
                    const notch = leg.notches.find(one => one.clears.includes('rear rail'))!;
                    expect(leg.box.z.to - notch.from - notch.length).toBe(pieces.get(mark)!.z.from);
                }
            }
        }
    }), { numRuns: 300 });
    expect(carried).toBeGreaterThan(20);
});

test('pieces stay inside a room the benches fit in, marks are unique, and every part has a piece', () => {
    fc.assert(fc.property(anyRoom, input => {
        const result = computeBenches(input);
        const marks = result.parts.map(part => part.mark);
        expect(new Set(marks).size).toBe(marks.length);
        expect([...new Set(result.benches.flatMap(one => one.pieces.map(piece => piece.mark)))].sort()).toEqual([...marks].sort());
        for (const part of result.parts) {
            expect(part.length).toBeGreaterThan(0);
            for (const notch of part.notches) {
                expect(notch.from >= 0 && notch.length > 0 && notch.from + notch.length <= part.length && notch.depth > 0 && notch.depth < part.section.width).toBe(true);
            }
        }
        if (result.problems.some(problem => problem.kind === 'outside-room')) return;
        const { width, depth } = input.inside;
        for (const { box } of result.benches.flatMap(one => one.pieces)) {
            expect(box.x.from >= 0 && box.x.to <= width && box.y.from >= 0 && box.y.to <= depth).toBe(true);
        }
    }), { numRuns: 300 });
});

test('a room written in millimetres is the room written in inches', () => {
    const written = (l: (inch: number, metric: number) => Length): BenchesInput => ({
        inside: { width: l(76.5, 1943.1), depth: l(64.5, 1638.3), height: l(80, 2032) },
        benches: [bench('upper', ['back'], l(37, 939.8), l(20, 508)), bench('lower', ['back', 'left'], l(18, 457.2), l(20, 508), { inFrontOf: 'upper', overlap: l(1, 25.4) })],
        openings: [], keepClear: [], floorObstacles: [], floor: { kind: 'level' },
    });
    expect(computeBenches(written((_inch, metric) => mm(metric)))).toEqual(computeBenches(written(inch => inches(0, inch * 2, 2))));
});

test('equal inputs give equal results, byte for byte', () => {
    fc.assert(fc.property(anyRoom, input => {
        const text = (value: unknown): string => JSON.stringify(value, (_key, item: unknown) => typeof item === 'bigint' ? `${item}` : item);
        expect(text(computeBenches(structuredClone(input)))).toBe(text(computeBenches(input)));
    }), { numRuns: 50 });
});

test('an upper bench keeps its marks when the lower bench changes', () => {
    fc.assert(fc.property(anyRoom, length(10, 26), (input, depth) => {
        const marks = (result: BenchesResult): readonly string[] | undefined => result.benches.find(one => one.name === 'upper')?.parts.map(part => part.mark);
        const [upper, lower] = input.benches;
        const other = computeBenches({ ...input, benches: [upper!, { ...lower!, depth, overlap: zero }] });
        const here = computeBenches({ ...input, benches: [upper!, { ...lower!, overlap: zero }] });
        expect(marks(other)).toEqual(marks(here));
    }), { numRuns: 100 });
});
