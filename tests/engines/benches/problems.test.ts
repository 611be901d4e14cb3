import { expect, test } from 'vitest';
import { feet, inches, ticks, type Length } from '../../../language/src/core/length.js';
import type { BenchesInput, BenchInput } from '../../../language/src/engines/benches/bench-input.js';
import type { BenchProblem } from '../../../language/src/engines/benches/bench-problem.js';
import { computeBenches } from '../../../language/src/engines/benches/compute-benches.js';
import { bench, inside, room, slatted, twoTiers } from './rooms.js';

const only = (top: Length, more: Partial<BenchInput> = {}, around: Partial<BenchesInput> = {}): BenchesInput => room([bench('upper', more.walls ?? ['back'], top, more.depth ?? inches(20), more)], around);
const low = inches(18);
const door = (from: number, to: number): Partial<BenchesInput> => ({
    openings: [{ name: 'entry', kind: 'door', wall: 'front', u: { from: inches(from), to: inches(to) }, v: { from: inches(0), to: inches(76) } }],
});
const vent = (wall: 'back' | 'left', bottom: number): Partial<BenchesInput> => ({
    openings: [{ name: 'intake', kind: 'vent', wall, u: { from: inches(50), to: inches(58) }, v: { from: inches(bottom), to: inches(bottom + 4) } }],
});
const keep = (y: number): Partial<BenchesInput> => ({
    keepClear: [{ name: 'stove', box: { x: { from: inches(60), to: inches(76, 1, 2) }, y: { from: inches(10), to: inches(y) }, z: { from: inches(0), to: inches(60) } } }],
});

test.each<[what: string, input: BenchesInput, problems: readonly BenchProblem[]]>([
    ['a straight bench in its room', only(low), []],
    ['no bench at all', room([]), []],
    ['no depth', only(low, { depth: ticks(0) }), [{ bench: 'upper', kind: 'figure-not-above-zero', what: 'depth', value: ticks(0) }]],
    ['bearers closer than they are wide', only(low, { build: { ...slatted, bearerSpacing: inches(3) } }),
        [{ bench: 'upper', kind: 'bearers-closer-than-wide', spacing: inches(3), bearerWidth: inches(3, 1, 2) }]],
    ['in front of a bench that is not there', room([bench('upper', ['back'], low, inches(20), { inFrontOf: 'uper' }), bench('side', ['front'], low, inches(20))]),
        [{ bench: 'upper', kind: 'in-front-of-unknown', named: 'uper', known: ['side'] }]],
    ['two benches each in front of the other: one problem, and the tops decide',
        room([bench('upper', ['back'], inches(37), inches(20), { inFrontOf: 'lower' }), bench('lower', ['back'], low, inches(20), { inFrontOf: 'upper' })]),
        [{ bench: 'upper', kind: 'in-front-of-cycle', chain: ['upper', 'lower'] }]],
    ['in front of itself', only(low, { inFrontOf: 'upper' }), [{ bench: 'upper', kind: 'in-front-of-cycle', chain: ['upper'] }]],
    ['the upper in front of the lower', room([bench('upper', ['back'], inches(37), inches(20), { inFrontOf: 'lower' }), bench('lower', ['back'], low, inches(20))]),
        [{ bench: 'upper', kind: 'in-front-of-not-higher', behind: 'lower', top: inches(37), topBehind: low }]],
    ['in front of a bench on another wall', room([bench('upper', ['back'], inches(36), inches(20)), bench('lower', ['left'], low, inches(20), { inFrontOf: 'upper', length: inches(44, 1, 2), from: { wall: 'front', distance: inches(0) } })]),
        [{ bench: 'lower', kind: 'in-front-of-other-wall', behind: 'upper', walls: ['left'], wallsBehind: ['back'] }]],
    ['a wall named twice', only(low, { walls: ['back', 'back'] }), [{ bench: 'upper', kind: 'wall-named-twice', wall: 'back' }]],
    ['an L on facing walls', only(low, { walls: ['left', 'right'] }), [{ bench: 'upper', kind: 'walls-not-adjacent', walls: ['left', 'right'] }]],
    ['all round', only(low, { walls: ['left', 'back', 'right', 'front'] }), [{ bench: 'upper', kind: 'too-many-walls', walls: ['left', 'back', 'right', 'front'] }]],
    ['a place from a wall that does not meet it', only(low, { from: { wall: 'front', distance: inches(3) }, length: inches(40) }),
        [{ bench: 'upper', kind: 'place-not-neighbour', wall: 'back', from: 'front', neighbours: ['left', 'right'] }]],
    ['a length and no place', only(low, { length: inches(70) }), [{ bench: 'upper', kind: 'place-missing', wall: 'back', length: inches(70), free: inches(6, 1, 2) }]],
    ['a length that is the wall needs no place', only(low, { length: inside.width }), []],
    ['an L turned away from its corner', only(low, { walls: ['back', 'left'], length: inches(40), from: { wall: 'right', distance: inches(0) } }),
        [{ bench: 'upper', kind: 'runs-do-not-meet', first: 'back', second: 'left' }]],
    ['an L starts in its corner', only(low, { walls: ['back', 'left'], length: inches(40) }), []],
    ['longer than the wall', only(low, { length: inches(80), from: { wall: 'left', distance: inches(0) } }), [{ bench: 'upper', kind: 'outside-room', side: 'right', by: inches(3, 1, 2), wall: 'back' }]],
    ['through the ceiling', only(inches(81), { build: slatted }, { climbLimit: inches(90) }), [{ bench: 'upper', kind: 'outside-room', side: 'ceiling', by: inches(1), wall: 'back' }]],
    ['hardly any length', only(low, { length: inches(9), from: { wall: 'left', distance: inches(0) } }), [{ bench: 'upper', kind: 'run-too-short', wall: 'back', length: inches(9), least: inches(10) }]],
    ['hardly any depth', only(low, { depth: inches(3, 1, 2) }), [{ bench: 'upper', kind: 'too-shallow', depth: inches(3, 1, 2), least: inches(7) }]],
    ['a top a tick under the build-up', only(ticks(inches(5, 3, 4) - 1)), [{ bench: 'upper', kind: 'top-below-build-up', top: ticks(inches(5, 3, 4) - 1), buildUp: inches(5, 3, 4) }]],
    ['a top equal to the build-up', only(inches(5, 3, 4)), []],
    ['slats that do not fit', only(low, { depth: inches(17, 1, 2) }), [{ bench: 'upper', kind: 'slats-do-not-fit', depth: inches(17, 1, 2), smaller: inches(16, 1, 4), larger: inches(18, 1, 2) }]],
    ['a back ledger with no wall behind', twoTiersWith({ loadPath: 'back_ledger_and_legs' }), [{ bench: 'lower', kind: 'no-wall-behind', what: 'back ledger', wall: 'back', off: inches(20) }]],
    ['a back rest with no wall behind', twoTiersWith({ backRestTop: inches(14) }), [{ bench: 'lower', kind: 'no-wall-behind', what: 'back rest', wall: 'back', off: inches(20) }]],
    ['a gap as wide as the ledger is thick', only(low, { build: { ...slatted, wallGap: inches(1, 1, 2) } }), [{ bench: 'upper', kind: 'ledger-missed', wallGap: inches(1, 1, 2), ledgerThickness: inches(1, 1, 2) }]],
    ['a fascia of nothing', only(low, { hasFascia: true, build: withoutTrim() }), [{ bench: 'upper', kind: 'no-stock-for', what: 'fascia' }]],
    ['a back rest of nothing', only(low, { backRestTop: inches(14), build: withoutTrim() }), [{ bench: 'upper', kind: 'no-stock-for', what: 'back rest' }]],
    ['an overlap as deep as the legs are wide', twoTiersWith({ overlap: inches(3, 1, 2) }),
        [{ bench: 'upper', kind: 'span-without-leg', wall: 'back', span: inches(73, 1, 2), limit: feet(6), notchFor: 'lower', notch: inches(3, 1, 2), legWidth: inches(3, 1, 2) }]],
    ['a free end over a lower bench that is not its tier', room([
        bench('upper', ['back'], inches(36), inches(20), { length: inches(70), from: { wall: 'right', distance: inches(0) } }), bench('lower', ['left'], low, inches(20))]),
        [{ bench: 'upper', kind: 'leg-through-bench', mark: 'UPPER-LEG-1', other: 'lower' }, { bench: 'upper', kind: 'leg-through-bench', mark: 'UPPER-LEG-2', other: 'lower' }]],
    ['a drain under a leg', only(low, {}, { floorObstacles: [{ name: 'drain', x: { from: inches(36), to: inches(40) }, y: { from: inches(60), to: inches(64) } }] }),
        [{ bench: 'upper', kind: 'leg-on-obstacle', mark: 'UPPER-LEG-1', obstacle: 'drain', x: { from: inches(37, 1, 2), to: inches(39) }, y: { from: inches(61), to: inches(64, 1, 2) } }]],
    ['two benches in one corner', room([bench('one', ['back'], low, inches(20)), bench('two', ['left'], low, inches(20))]),
        [{ bench: 'two', kind: 'tiers-overlap', other: 'one', shared: { x: { from: 0, to: inches(20) }, y: { from: inches(44, 1, 2), to: inches(64, 1, 2) }, z: { from: inches(12, 1, 4), to: low } } } as never]],
    ['a climb a tick over the limit', only(ticks(inches(20) + 1)), [{ bench: 'upper', kind: 'climb-too-high', from: undefined, rise: ticks(inches(20) + 1), limit: inches(20) }]],
    ['a climb equal to the limit', only(inches(20)), []],
    ['a rise between tiers over the limit', { ...twoTiers(), climbLimit: low }, [{ bench: 'upper', kind: 'climb-too-high', from: 'lower', rise: inches(19), limit: low }]],
    // The front wall is seen from inside, so its u runs from the right wall.
    ['across the door', only(low, { walls: ['left'] }, door(50, 60)), [{ bench: 'upper', kind: 'across-opening', opening: 'entry', openingKind: 'door', wall: 'front', u: { from: inches(56, 1, 2), to: inches(60) }, v: { from: inches(0), to: low } }]],
    ['up to the door', only(low, { walls: ['left'] }, door(50, 56.5)), []],
    ['over a vent', only(low, {}, vent('back', 8)), []],
    ['before a vent', only(low, {}, vent('back', 14)), [{ bench: 'upper', kind: 'across-opening', opening: 'intake', openingKind: 'vent', wall: 'back', u: { from: inches(50), to: inches(58) }, v: { from: inches(14), to: low } }]],
    ['beside the heater', only(low, {}, keep(44.5)), []],
    ['in the heater\'s space', only(low, {}, keep(45)), [{ bench: 'upper', kind: 'in-keep-clear', zone: 'stove', shared: { x: { from: inches(60), to: inches(76, 1, 2) }, y: { from: inches(44, 1, 2), to: inches(45) }, z: { from: inches(12, 1, 4), to: low } } }]],
])('%s', (_what, input, problems) => {
    expect(computeBenches(input).problems).toEqual(problems);
});

test('a bench that cannot be placed leaves the others as if it were not there', () => {
    const fine = room([bench('side', ['front'], low, inches(16))]);
    const alone = computeBenches(fine).benches;
    const both = computeBenches({ ...fine, benches: [bench('upper', ['left', 'right'], inches(37), inches(20)), ...fine.benches, bench('bad', ['back'], low, ticks(0))] });
    expect(both.benches.map(one => one.name)).toEqual(['side']);
    expect(both.benches[0]!.pieces).toEqual(alone[0]!.pieces);
    expect(both.problems.map(problem => problem.bench)).toEqual(['upper', 'bad']);
});

test('slats that do not fit leave the frame of the bench standing', () => {
    const layout = computeBenches(only(low, { depth: inches(17, 1, 2) })).benches[0]!;
    expect(layout.slats).toBeUndefined();
    expect(layout.parts.map(part => part.what)).toContain('bench front rail');
    expect(layout.parts.map(part => part.what)).not.toContain('bench slat');
});

function twoTiersWith(more: Partial<BenchInput>): BenchesInput {
    return room([bench('upper', ['back'], inches(37), inches(20)), bench('lower', ['back'], low, inches(20), more)]);
}
function withoutTrim(): BenchInput['build'] {
    const { name, slat, slatGap, bearer, bearerSpacing, rail, ledger, leg, wallGap } = slatted;
    return { name, slat, slatGap, bearer, bearerSpacing, rail, ledger, leg, wallGap };
}
