import fc from 'fast-check';
import { expect, test } from 'vitest';
import { box, interval, neighbours, type Wall } from '../../../language/src/core/geometry.js';
import { inches, mm, ticks, type Length } from '../../../language/src/core/length.js';
import { roomSurfaces, type Thing, type ThingKind } from '../../../language/src/engines/fittings/things.js';
import { duckboardThing } from '../../../language/src/engines/fittings/placed-fitting.js';
import { duckboardsUnderStones, heaterGuard, heaterThings, placeHeater, type HeaterManual } from '../../../language/src/engines/heater/casing.js';
import { checkClearances, clearanceFigures, type Clearance } from '../../../language/src/engines/heater/clearances.js';
import { rangeThatClears } from '../../../language/src/engines/heater/clear-range.js';
import { heaterAt, inside, mirrorThing, mirrorWall, shell, tarn } from '../fittings/demo-room.js';

// On the right wall, 20" from the front: casing x 64 1/2..74 1/2, y 20..36, z 8..32.
const stove = heaterAt('right', 'front', inches(20));
const options = { inside, isFloorCombustible: true };
const thing = (kind: ThingKind, x: [number, number], y: [number, number], z: [number, number]): Thing => ({
    kind, name: kind, box: box(...[x, y, z].map(([from, to]) => interval(ticks(from), ticks(to))) as [never, never, never]),
});
const at = (one: Thing, manual: HeaterManual = tarn): Clearance =>
    checkClearances(heaterAt('right', 'front', inches(20), manual), [one], clearanceFigures(manual), options)[0]!;
const w = inches;

test('the casing stands where the manual hangs it', () => {
    expect(stove.casing).toEqual(box(interval(w(64, 1, 2), w(74, 1, 2)), interval(w(20), w(36)), interval(w(8), w(32))));
    expect(stove.stoneTop).toBe(w(32));
    expect(stove.missing).toEqual([]);
});

test.each([
    ['side', 'hook', [w(70), w(76)], [w(40), w(42)], [w(20), w(24)], w(4)],
    ['front', 'shelf', [w(50), w(58, 1, 2)], [w(24), w(30)], [w(20), w(24)], w(6)],
    ['above', 'light', [w(70), w(76)], [w(24), w(30)], [w(74), w(78)], w(42)],
    ['below', 'trim', [w(70), w(76)], [w(24), w(30)], [w(0), w(2)], w(6)],
    ['side', 'bench', [w(60), w(76)], [w(41), w(60)], [w(16), w(30)], w(5)],
    ['front', 'rest', [w(40), w(59, 1, 2)], [w(20), w(30)], [w(16), w(30)], w(5)],
] as const)('%s of a %s: exactly the requirement passes, one tick less is short', (direction, kind, x, y, z, required) => {
    const first = thing(kind, [...x], [...y], [...z]);
    expect(at(first)).toMatchObject({ direction, measured: required, status: 'clear', isOk: true, collides: false });
    expect(at(first).required).toEqual({ value: required, citation: { kind: 'manual', text: 'Tarn 60 manual, edition 1 (fictional)' } });
    const axis = direction === 'side' ? 'y' : direction === 'front' ? 'x' : 'z';
    const by = axis === 'x' || direction === 'below' ? 1 : -1;
    const nearer = { ...first, box: { ...first.box, [axis]: interval(ticks(first.box[axis].from + by), ticks(first.box[axis].to + by)) } };
    expect(at(nearer)).toMatchObject({ direction, measured: required - 1, status: 'short', isOk: false });
});

test('the figure of a bench is its own only where the manual gives one', () => {
    const bench = thing('bench', [w(60), w(76)], [w(40), w(60)], [w(16), w(30)]);
    expect(at(bench)).toMatchObject({ figure: 'bench', status: 'short' });
    const { clearBench: _none, ...without } = tarn;
    expect(at(bench, without)).toMatchObject({ figure: 'side', status: 'clear' });
});

test('a figure the manual does not give is missing, and a rule set fills it only then', () => {
    const { clearFront: _front, clearSide: _side, ...without } = tarn;
    const shelf = thing('shelf', [w(40), w(50)], [w(24), w(30)], [w(20), w(24)]);
    expect(at(shelf, without)).toMatchObject({ direction: 'front', measured: w(14, 1, 2), status: 'missing', isOk: false });
    expect(at(shelf, without).required).toBeUndefined();
    const published = { value: w(20), citation: { kind: 'practice', text: 'made up for this test' } } as const;
    expect(clearanceFigures(without, { front: published, above: published })).toMatchObject({ front: published, above: { value: w(42) } });
});

test('a thing off a corner is clear when it is clear in one of the two directions', () => {
    const corner = (x: number, y: number) => at(thing('shelf', [w(50), x], [y, w(60)], [w(20), w(24)]));
    expect(corner(w(58, 1, 2), w(37))).toMatchObject({ direction: 'front', status: 'clear' });
    expect(corner(w(62), w(40))).toMatchObject({ direction: 'side', status: 'clear' });
    // 2" short to the front and 1" short to the side: the side needs the smaller move.
    expect(corner(w(60, 1, 2), w(39))).toMatchObject({ direction: 'side', measured: w(3), status: 'short' });
});

test('a thing in the casing, or on the wall behind it, collides', () => {
    expect(at(thing('shelf', [w(66), w(70)], [w(24), w(30)], [w(20), w(24)]))).toMatchObject({ status: 'short', measured: 0, collides: true });
    expect(at(thing('cable_moulding', [w(75, 3, 4), w(76, 1, 2)], [w(10), w(50)], [w(20), w(21)]))).toMatchObject({ status: 'short', collides: true });
    expect(at(thing('window', [w(76, 1, 2), w(80)], [w(24), w(30)], [w(20), w(24)]))).toMatchObject({ status: 'short', collides: true });
});

test('a point on the wall is measured like a box', () => {
    expect(at(thing('sensor', [w(76, 1, 2), w(76, 1, 2)], [w(39), w(39)], [w(20), w(20)]))).toMatchObject({ direction: 'side', measured: w(3), status: 'short' });
    expect(at(thing('sensor', [w(76, 1, 2), w(76, 1, 2)], [w(30), w(30)], [w(20), w(20)]))).toMatchObject({ collides: true });
});

test('walls, ceiling and floor of the room', () => {
    const found = checkClearances(stove, roomSurfaces(inside, shell), clearanceFigures(tarn), options);
    expect(found.map(({ thing: { name }, direction, measured, status }) => [name, direction, measured, status])).toEqual([
        ['front', 'side', w(20), 'clear'], ['left', 'front', w(64, 1, 2), 'clear'], ['back', 'side', w(28, 1, 2), 'clear'],
        ['right', 'behind', w(2), 'clear'], ['ceiling', 'above', w(46), 'clear'], ['floor', 'below', w(8), 'clear'],
    ]);
});

test('a floor that does not burn needs nothing under the heater, and what belongs to the heater is exempt', () => {
    const low: HeaterManual = { ...tarn, clearBelow: w(10) };
    const floor = roomSurfaces(inside, shell)[5]!;
    const heater = heaterAt('right', 'front', w(20), low);
    const judged = (isFloorCombustible: boolean) => checkClearances(heater, [floor], clearanceFigures(low), { inside, isFloorCombustible })[0];
    expect(judged(true)).toMatchObject({ measured: w(8), status: 'short' });
    expect(judged(false)).toMatchObject({ measured: w(8), status: 'exempt', exemption: 'floor_does_not_burn', isOk: true });
    const sensor = { ...thing('sensor', [w(76), w(76, 1, 2)], [w(24), w(25)], [w(70), w(71)]), belongsTo: 'stove' };
    expect(at(sensor)).toMatchObject({ status: 'exempt', exemption: 'belongs_to_heater', direction: 'above', measured: w(38) });
    expect(checkClearances(stove, heaterThings(stove), clearanceFigures(tarn), options)).toEqual([]);
});

test('the heater in millimetres has the same clearances', () => {
    const metric: HeaterManual = {
        ...tarn, body: { width: mm(406.4), height: mm(609.6) }, depth: mm(254), offWall: mm(50.8), offFloor: mm(203.2),
        clearSide: mm(101.6), clearFront: mm(152.4), clearAbove: mm(1066.8), clearBelow: mm(152.4), clearBench: mm(127),
    };
    const things = [thing('bench', [w(60), w(76)], [w(40), w(60)], [w(16), w(30)]), ...roomSurfaces(inside, shell)];
    const heater = heaterAt('right', 'front', mm(508), metric);
    expect(checkClearances(heater, things, clearanceFigures(metric), options)).toEqual(checkClearances(stove, things, clearanceFigures(tarn), options));
});

const inchBox = fc.tuple(...[76, 64, 78].map(size => fc.tuple(fc.integer({ min: 0, max: size - 1 }), fc.integer({ min: 1, max: 30 })).map(([from, long]): [number, number] => [w(from), w(Math.min(size, from + long))])));
const anyThing = fc.tuple(fc.constantFrom<ThingKind[]>('bench', 'hook', 'light', 'duckboard', 'window'), inchBox).map(([kind, [x, y, z]]) => thing(kind, x!, y!, z!));
const anyWall = fc.constantFrom<Wall[]>('front', 'left', 'back', 'right');

test('mirroring the room mirrors nothing but left and right: every clearance is the same', () => {
    fc.assert(fc.property(anyWall, fc.boolean(), fc.integer({ min: 0, max: 40 }), fc.array(anyThing, { maxLength: 6 }), (wall, nearLeft, distance, placed) => {
        const from = nearLeft ? neighbours[wall].left : neighbours[wall].right;
        const things = [...roomSurfaces(inside, shell), ...placed];
        const mirrored = things.map(one => mirrorThing(one, inside));
        const seen = (found: readonly Clearance[]) => found.map(({ direction, figure, measured, status, collides }) => ({ direction, figure, measured, status, collides }));
        const here = heaterAt(wall, from, w(distance));
        const there = heaterAt(mirrorWall(wall), mirrorWall(from), w(distance));
        const figures = clearanceFigures(tarn);
        expect(seen(checkClearances(there, mirrored, figures, options))).toEqual(seen(checkClearances(here, things, figures, options)));
        const range = rangeThatClears(here, from, things, figures, inside)!;
        const mirroredRange = rangeThatClears(there, mirrorWall(from), mirrored, figures, inside)!;
        expect(mirroredRange.ranges).toEqual(range.ranges);
        expect(mirroredRange.nearest).toEqual(range.nearest);
    }));
});

test('every end of a range is clear and one tick beyond it is not, and from the other wall it is the same range', () => {
    const curable = (found: readonly Clearance[], never: readonly Thing[]) => found.filter(({ thing: one }) => !never.includes(one));
    fc.assert(fc.property(anyWall, fc.array(anyThing, { maxLength: 5 }), (wall, placed) => {
        const { left: from, right: other } = neighbours[wall];
        const figures = clearanceFigures(tarn);
        const things = [...roomSurfaces(inside, shell).filter(({ kind }) => kind !== 'floor'), ...placed];
        const range = rangeThatClears(heaterAt(wall, from, w(10)), from, things, figures, inside)!;
        const isOk = (distance: number) => curable(checkClearances(heaterAt(wall, from, distance as Length), things, figures, options), range.never).every(one => one.isOk);
        for (const { from: low, to: high } of range.ranges) {
            expect([low, high].map(isOk)).toEqual([true, true]);
            expect(isOk(Math.floor((low + high) / 2))).toBe(true);
            expect([low - 1, high + 1].map(isOk)).toEqual([false, false]);
        }
        for (let distance = 0; distance <= 60; distance += 3) {
            const run = wall === 'front' || wall === 'back' ? inside.width : inside.depth;
            if (w(distance) + tarn.body.width > run) continue;
            expect(range.ranges.some(({ from: low, to: high }) => low <= w(distance) && w(distance) <= high)).toBe(isOk(w(distance)));
        }
        const run = (wall === 'front' || wall === 'back' ? inside.width : inside.depth) - tarn.body.width;
        const turned = rangeThatClears(heaterAt(wall, from, w(10)), other, things, figures, inside)!.ranges;
        expect(turned.map(one => ({ from: run - one.to, to: run - one.from })).reverse()).toEqual(range.ranges);
    }), { numRuns: 60 });
});

test('the range beside a bench, and what no place cures', () => {
    const bench = thing('bench', [w(0), w(76, 1, 2)], [w(44, 1, 2), w(64, 1, 2)], [w(16), w(30)]);
    const things = [...roomSurfaces(inside, shell), bench];
    const found = rangeThatClears(stove, 'front', things, clearanceFigures(tarn), inside)!;
    // 4" from the front wall; the far side 5" before the bench: 44 1/2 - 5 - 16.
    expect(found).toMatchObject({ ranges: [{ from: w(4), to: w(23, 1, 2) }], nearest: w(20), never: [], notJudged: [] });
    const high: HeaterManual = { ...tarn, clearAbove: w(50) };
    const low = rangeThatClears(heaterAt('right', 'front', w(30), high), 'front', things, clearanceFigures(high), inside)!;
    expect(low.never.map(({ name }) => name)).toEqual(['ceiling']);
    expect(low.nearest).toBe(w(23, 1, 2));
    expect(rangeThatClears(stove, 'left', things, clearanceFigures(tarn), inside)).toBeUndefined();
});

test('a thing that leaves a single position does not count as one no place clears', () => {
    const wide = (from: number) => thing('shelf', [w(50), w(76, 1, 2)], [from, w(64, 1, 2)], [w(16), w(30)]);
    const found = (from: number) => rangeThatClears(stove, 'front', [wide(from)], clearanceFigures(tarn), inside)!;
    expect(found(w(20))).toMatchObject({ ranges: [{ from: 0, to: 0 }], nearest: 0, never: [] }); // 16" of casing and 4" beside it
    expect(found(w(20) - 1).never).toHaveLength(1);
});

test('a missing figure limits nothing and says so; a heater wider than its wall has no range', () => {
    const { clearSide: _side, ...without } = tarn;
    const found = rangeThatClears(heaterAt('right', 'front', w(20), without), 'front', roomSurfaces(inside, shell), clearanceFigures(without), inside)!;
    expect(found.ranges).toEqual([{ from: 0, to: w(48, 1, 2) }]);
    expect(found.notJudged.map(({ name }) => name)).toEqual(['front', 'back']);
    const wide: HeaterManual = { ...tarn, body: { width: w(70), height: w(24) } };
    expect(rangeThatClears(heaterAt('right', 'front', w(0), wide), 'front', [], clearanceFigures(wide), inside)!.ranges).toEqual([]);
});

test('missing figures for its place are named, and a heater without a place is not placed', () => {
    const { offWall: _wall, offFloor: _floor, ...without } = tarn;
    expect(heaterAt('right', 'front', w(20), without).missing).toEqual(['offWall', 'offFloor']);
    expect(checkClearances(heaterAt('right', 'front', w(20), without), roomSurfaces(inside, shell), clearanceFigures(without), options)[3]).toMatchObject({ direction: 'behind', status: 'missing' });
    expect(placeHeater({ name: 'stove', wall: 'right', manual: tarn }, inside)).toEqual({ problems: [{ kind: 'place-missing', wall: 'right' }] });
});

test('the guard stands its offset before the casing and meets what is nearer', () => {
    const shelf = thing('shelf', [w(62, 1, 2), w(70)], [w(38), w(60)], [w(20), w(24)]);
    const { guard, problems } = heaterGuard(stove, { isBuilt: true, inside, things: [shelf, ...roomSurfaces(inside, shell)] });
    expect(guard!.box).toEqual(box(interval(w(62, 1, 2), w(76, 1, 2)), interval(w(18), w(38)), interval(w(8), w(32))));
    expect(problems).toEqual([]); // it touches the shelf
    const nearer = thing('shelf', [w(62, 1, 2), w(70)], [w(38) - 1, w(60)], [w(20), w(24)]);
    expect(heaterGuard(stove, { isBuilt: true, inside, things: [{ ...nearer, belongsTo: 'stove' }] }).problems).toEqual([]);
    expect(heaterGuard(stove, { isBuilt: true, inside, things: [nearer] }).problems).toEqual([{ kind: 'guard-meets', thing: nearer }]);
    expect(heaterGuard(heaterAt('right', 'front', w(1)), { isBuilt: true, inside, things: [] }).problems).toEqual([{ kind: 'guard-leaves-the-wall', over: w(1) }]);
});

test('what the manual says of a guard', () => {
    const problems = (manual: HeaterManual, isBuilt: boolean) => heaterGuard(heaterAt('right', 'front', w(20), manual), { isBuilt, inside, things: [] }).problems.map(({ kind }) => kind);
    const { guardOffset: _offset, ...without } = tarn;
    expect(problems({ ...tarn, guard: 'required' }, false)).toEqual(['guard-required-and-not-built']);
    expect(problems(tarn, false)).toEqual(['guard-recommended-and-not-built']);
    expect(problems({ ...tarn, guard: 'not_needed' }, false)).toEqual([]);
    expect(problems(without, true)).toEqual(['guard-offset-missing']);
});

test('a duckboard under or before the heater, even one of unknown thickness', () => {
    const board = (fromLeft: number) => duckboardThing({ name: 'walk', fromLeft: ticks(fromLeft), fromFront: w(10), width: w(20), depth: w(40), thickness: ticks(0) });
    // The zone reaches 2 + 10 + 6 = 18" from the right wall: x from 58 1/2.
    expect(duckboardsUnderStones(stove, [board(w(38, 1, 2))], inside)).toEqual([]);
    expect(duckboardsUnderStones(stove, [board(w(38, 1, 2) + 1)], inside)).toHaveLength(1);
});
