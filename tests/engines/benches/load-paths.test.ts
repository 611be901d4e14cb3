import { expect, test } from 'vitest';
import { inches } from '../../../language/src/core/length.js';
import { computeBenches } from '../../../language/src/engines/benches/compute-benches.js';
import type { BenchesInput, BenchInput } from '../../../language/src/engines/benches/bench-input.js';
import { bench, room, slatted, stock } from './rooms.js';

const one = (more: Partial<BenchInput>, around: Partial<BenchesInput> = {}) => computeBenches(room([bench('upper', more.walls ?? ['back'], inches(18), inches(20), more)], around)).benches[0]!;
const kinds = (layout: ReturnType<typeof one>): Record<string, number> => Object.fromEntries(
    [...new Set(layout.pieces.map(piece => piece.kind))].sort().map(kind => [kind, layout.pieces.filter(piece => piece.kind === kind).length]));
const window = (wall: 'left' | 'back', from: number, to: number): Partial<BenchesInput> => ({
    openings: [{ name: 'view', kind: 'window', wall, u: { from: inches(from), to: inches(to) }, v: { from: inches(14), to: inches(40) } }],
});

test.each<[what: string, more: Partial<BenchInput>, around: Partial<BenchesInput>, pieces: Record<string, number>]>([
    ['end ledgers: two ledgers, two rails, a centre leg under each', {}, {}, { ledger: 2, 'rear rail': 1, 'front rail': 1, 'rear leg': 1, 'front leg': 1, bearer: 6, slat: 5 }],
    ['end ledgers within the leg spacing: no leg', { build: { ...slatted, legSpacing: inches(73, 1, 2) } }, {}, { ledger: 2, 'rear rail': 1, 'front rail': 1, bearer: 6, slat: 5 }],
    ['back ledger: one ledger, a front rail on legs at both ends and the middle, no rear rail', { loadPath: 'back_ledger_and_legs' }, {}, { ledger: 1, 'front rail': 1, 'front leg': 3, bearer: 6, slat: 5 }],
    ['a free end stands on two legs', { length: inches(60), from: { wall: 'left', distance: inches(0) } }, {}, { ledger: 1, 'rear rail': 1, 'front rail': 1, 'rear leg': 1, 'front leg': 1, bearer: 5, slat: 5 }],
    ['both ends free', { length: inches(60), from: { wall: 'left', distance: inches(8) } }, {}, { 'rear rail': 1, 'front rail': 1, 'rear leg': 2, 'front leg': 2, bearer: 5, slat: 5 }],
    ['a window takes an end ledger: a box leg', { build: { ...slatted, legSpacing: inches(80) } }, window('left', 50, 60), { ledger: 1, 'box leg head': 1, 'box leg post': 2, 'rear rail': 1, 'front rail': 1, bearer: 6, slat: 5 }],
    ['a window beside the ledger takes nothing', { build: { ...slatted, legSpacing: inches(80) } }, window('left', 30, 44.5), { ledger: 2, 'rear rail': 1, 'front rail': 1, bearer: 6, slat: 5 }],
    ['a window takes the middle of a back ledger: a rail on two legs bridges it', { loadPath: 'back_ledger_and_legs' }, window('back', 20, 40), { ledger: 2, 'rear rail': 1, 'rear leg': 2, 'front rail': 1, 'front leg': 3, bearer: 6, slat: 5 }],
    ['a window close to the corner leaves no ledger worth fixing there', { loadPath: 'back_ledger_and_legs' }, window('back', 5, 40), { ledger: 1, 'rear rail': 1, 'rear leg': 2, 'front rail': 1, 'front leg': 3, bearer: 6, slat: 5 }],
    ['fascia and back rest', { hasFascia: true, backRestTop: inches(14), build: { ...slatted, legSpacing: inches(80) } }, {}, { ledger: 2, 'rear rail': 1, 'front rail': 1, bearer: 6, slat: 5, fascia: 1, 'back rest': 1 }],
    ['a U: the first wall through, both others against it', { walls: ['back', 'left', 'right'], build: { ...slatted, legSpacing: inches(80) } }, {}, { ledger: 4, 'rear rail': 3, 'front rail': 3, 'rear leg': 2, 'front leg': 2, bearer: 14, slat: 15 }],
])('%s', (_what, more, around, pieces) => expect(kinds(one(more, around))).toEqual(Object.fromEntries(Object.entries(pieces).sort(([a], [b]) => a < b ? -1 : 1))));

test('a window takes an end ledger: rails begin at the box leg and posts stand under its head', () => {
    const layout = one({}, window('left', 50, 60));
    const head = layout.pieces.find(piece => piece.kind === 'box leg head')!;
    expect(head.mark).toBe('UPPER-BOX-HEAD-1');
    for (const leg of layout.legs.filter(({ line }) => line === 'box')) {
        expect(leg.under).toBe(head.mark);
        expect(leg.box.x).toEqual(head.box.x);
        expect(leg.box.z.to).toBe(head.box.z.from);
    }
});

test('a fascia closes the front inside the depth, so rails and bearers stand back behind it', () => {
    const layout = one({ hasFascia: true });
    const front = (kind: string) => layout.pieces.find(piece => piece.kind === kind)!.box.y;
    expect(front('slat').from > front('fascia').from).toBe(true);
    expect(front('fascia')).toEqual({ from: inches(44, 1, 2), to: inches(45, 1, 4) });
    expect(front('front rail').from).toBe(inches(45, 1, 4));
    expect(front('bearer').from).toBe(inches(45, 1, 4));
    expect(layout.pieces.find(piece => piece.kind === 'fascia')!.box.z).toEqual({ from: inches(11, 3, 4), to: inches(17, 1, 4) });
});

test('a leg that stands forward of a fascia is notched for it at its head', () => {
    const [upper] = computeBenches(room([bench('upper', ['back'], inches(37), inches(20), { hasFascia: true, build: { ...slatted, leg: stock('2x6') } }), bench('lower', ['back'], inches(18), inches(20))])).benches;
    const leg = upper!.legs.find(({ line }) => line === 'front')!;
    expect(leg.notches.map(({ from, length, depth, clears }) => [clears, from, length, depth])).toEqual([
        ['fascia', 0, inches(0, 1, 2), inches(2, 1, 4)], ['rear rail, bearers and slats of lower', inches(13, 1, 4), inches(5, 3, 4), inches(1, 1, 2)],
    ]);
});

test('legs too narrow for two rails stay behind the front, and the lower tier stands on legs of its own', () => {
    const build = { ...slatted, leg: stock('2x2') };
    const [upper, lower] = computeBenches(room([bench('upper', ['back'], inches(37), inches(20), { build }), bench('lower', ['back'], inches(18), inches(20), { build })])).benches;
    expect(upper!.legs.map(leg => [leg.line, leg.alsoCarries, leg.notches.length])).toEqual([['rear', [], 0], ['front', [], 0]]);
    expect(lower!.legs.map(leg => leg.line)).toEqual(['rear', 'front']);
});

test('three tiers: each stands in front of the next higher', () => {
    const layouts = computeBenches(room([
        bench('low', ['back'], inches(12), inches(16, 1, 4)), bench('high', ['back'], inches(44), inches(20)), bench('middle', ['back'], inches(28), inches(16, 1, 4)),
    ])).benches;
    expect(layouts.map(layout => [layout.name, layout.inFrontOf, layout.runs[0]!.w.from, layout.isHighest])).toEqual([
        ['low', 'middle', inches(36, 1, 4), false], ['high', undefined, 0, true], ['middle', 'high', inches(20), false],
    ]);
    expect(layouts[1]!.legs.at(-1)!.alsoCarries).toEqual(['MIDDLE-RAIL-1']);
    expect(layouts[2]!.legs.at(-1)!.alsoCarries).toEqual(['LOW-RAIL-1']);
});

test('an L in front of an L turns with it', () => {
    const [, lower] = computeBenches(room([bench('upper', ['back', 'left'], inches(37), inches(20)), bench('lower', ['back', 'left'], inches(18), inches(20), { overlap: inches(1) })])).benches;
    expect(lower!.runs.map(({ wall, u, w, ends }) => [wall, u, w, ends])).toEqual([
        ['back', { from: inches(19), to: inches(76, 1, 2) }, { from: inches(19), to: inches(39) }, { left: 'tier', right: 'wall' }],
        ['left', { from: 0, to: inches(25, 1, 2) }, { from: inches(19), to: inches(39) }, { left: 'wall', right: 'own_run' }],
    ]);
});

test('ledger screws every 16" and two screws at every crossing of slat and bearer', () => {
    const layout = one({});
    expect(layout.fastenings.map(({ joint, marks, screw, count }) => [joint, marks, screw, count])).toEqual([
        ['ledger to wall', ['UPPER-LEDGER-1'], 'ledger_3', 3], ['ledger to wall', ['UPPER-LEDGER-2'], 'ledger_3', 3],
        ['slat to bearer', ['UPPER-BEARER-1', 'UPPER-SLAT-1'], 'slat_2', 5 * 6 * 2],
    ]);
});

test('a head rest is a loose part of its own', () => {
    const rest = one({ hasHeadRest: true }).parts.filter(part => part.what.startsWith('head rest'));
    expect(rest.map(({ mark, count, length }) => [mark, count, length])).toEqual([['UPPER-HEAD-REST-BEARER-1', 2, inches(11)], ['UPPER-HEAD-REST-SLAT-1', 3, inches(16)]]);
});
