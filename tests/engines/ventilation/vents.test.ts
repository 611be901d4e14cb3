import fc from 'fast-check';
import { expect, test } from 'vitest';
import { box, interval, neighbours, type Wall } from '../../../language/src/core/geometry.js';
import { area, inSquareInches, inches, mm, negate, ticks, zero, type Length } from '../../../language/src/core/length.js';
import type { WallPlace } from '../../../language/src/engines/fittings/wall-place.js';
import { airPaths, exhaustPlace, openingSides, shortCircuits, ventPosition } from '../../../language/src/engines/ventilation/air-paths.js';
import { freeArea, placeVent, ventThing, ventToHeater, type Vent, type VentInput } from '../../../language/src/engines/ventilation/vents.js';
import { doorOf, heaterAt, inside, mirrorWall, tarn } from '../fittings/demo-room.js';

const w = inches;
const thick = w(3, 3, 4);
const stove = heaterAt('right', 'front', w(20));
const low: VentInput = {
    name: 'intake', role: 'intake', wall: 'right', size: { width: w(8), height: w(4) }, place: { from: 'front', distance: w(24), to: 'near_edge' }, height: { bottom: w(2) }, air: 'outdoors',
};
const ventOf = (change: Partial<VentInput> = {}): Vent => placeVent({ ...low, ...change }, inside, thick).vent!;
const exhaust = (change: Partial<VentInput>) => ventOf({ name: 'exhaust', role: 'exhaust', ...change });

test('a vent through its wall', () => {
    const vent = ventOf();
    expect(vent.box).toEqual(box(interval(inside.width, w(80, 1, 4)), interval(w(24), w(32)), interval(w(2), w(6))));
    expect([vent.lowerEdge, vent.belowCeiling]).toEqual([w(2), w(72)]);
    expect(ventToHeater(vent, stove)).toBe(ticks(Math.ceil(Math.hypot(w(2), w(2))))); // 2" behind the casing's rear face and 2" under it
});

test('4 in by 8 in is 32 in2', () => {
    // IMC 914.5, IRC G2440.6: an opening of at least 4 in by 8 in.
    expect(inSquareInches(ventOf().gross)).toBe(32);
    expect(openingSides(ventOf())).toEqual({ shorter: w(4), longer: w(8) });
    expect(openingSides(ventOf({ size: { width: w(4), height: w(8) } }))).toEqual({ shorter: w(4), longer: w(8) });
});

test.each([[100, 32], [70, 22.4], [62.5, 20], [0, 0], [140, 32], [-3, 0], [Number.NaN, 0]])('%s per cent of it is %s in2 free', (percent, free) => {
    expect(inSquareInches(freeArea(area(w(4), w(8)), percent))).toBeCloseTo(free, 9);
});

test('behind the heater it opens in the middle of the casing', () => {
    const { place: _place, ...unplaced } = low;
    const { vent, problems } = placeVent({ ...unplaced, behind: stove }, inside, thick);
    expect(problems).toEqual([]);
    expect(vent!.box.y).toEqual(interval(w(24), w(32)));
    expect(vent!.behind).toBe('stove');
    expect(ventPosition(vent!, stove)).toMatchObject({ isBehindHeater: true, isBelowHeaterTop: true, toHeater: ventToHeater(vent!, stove) });
    const elsewhere = placeVent({ ...unplaced, wall: 'left', behind: stove }, inside, thick);
    expect(elsewhere.vent).toBeUndefined();
    expect(elsewhere.problems.map(({ kind }) => kind)).toEqual(['vent-on-other-wall-than-its-heater', 'place-missing']);
});

test('what is not stated is said', () => {
    const { role: _role, place: _place, ...bare } = low;
    expect(placeVent({ ...bare, height: {} }, inside, thick).problems.map(({ kind }) => kind)).toEqual(['vent-role-missing', 'place-missing', 'height-missing']);
    expect(ventPosition(ventOf(), undefined)).toEqual({ vent: ventOf(), isBehindHeater: false });
});

test('an intake in the heater\'s wall belongs to the heater; an exhaust and an intake elsewhere do not', () => {
    expect(ventThing(ventOf(), stove).belongsTo).toBe('stove');
    expect(ventThing(exhaust({}), stove).belongsTo).toBeUndefined();
    expect(ventThing(ventOf({ wall: 'left' }), stove).belongsTo).toBeUndefined();
});

test('near the top of the door: up to 12" from the head of the clear opening, which is 74" up', () => {
    const at = (bottom: number, wall: Wall = 'front') => exhaustPlace(exhaust({ wall, place: { from: neighbours[wall].left, distance: w(5), to: 'near_edge' }, height: { bottom: ticks(bottom) } }), stove, [doorOf()], inside).nearTopOfDoor;
    expect(at(w(72))).toEqual({ isOnDoorWall: true, fromDoorTop: 0, isMet: true });
    expect(at(w(58))).toEqual({ isOnDoorWall: true, fromDoorTop: w(12), isMet: true });
    expect(at(w(58) - 1)).toEqual({ isOnDoorWall: true, fromDoorTop: w(12) + 1, isMet: false });
    expect(at(w(72), 'left')).toEqual({ isOnDoorWall: false, isMet: false });
});

test('across the room: half the diagonal from the heater, low, on another wall', () => {
    const square = { width: mm(3000), depth: mm(4000), height: mm(2100) }; // diagonal 5 m
    const heater = heaterAt('right', 'front', mm(0), { ...tarn, offWall: zero, depth: mm(500), body: { width: mm(400), height: mm(600) } }, square);
    const at = (fromFront: number, bottom = mm(200)) => {
        const { vent } = placeVent({ ...low, name: 'exhaust', role: 'exhaust', wall: 'left', size: { width: mm(200), height: mm(100) }, place: { from: 'front', distance: ticks(fromFront), to: 'near_edge' }, height: { bottom } }, square, thick);
        return exhaustPlace(vent!, heater, [], square).acrossTheRoom;
    };
    // The casing's inner face is 2500 mm from the left lining: level with the heater it is exactly half the diagonal away.
    expect(at(mm(0))).toMatchObject({ isAcross: true, isLow: true, isMet: true });
    expect(at(mm(1900))).toMatchObject({ planDistanceSquared: BigInt(mm(1500)) ** 2n + BigInt(mm(2500)) ** 2n, isMet: true });
    expect(at(mm(0), mm(1000))).toMatchObject({ isLow: true, isMet: true }); // its middle is at half the height
    expect(at(mm(0), ticks(mm(1000) + 1))).toMatchObject({ isAcross: true, isLow: false, isMet: false });
    const nearer = heaterAt('right', 'front', mm(0), { ...tarn, offWall: zero, depth: ticks(mm(500) + 1), body: { width: mm(400), height: mm(600) } }, square);
    const vent = placeVent({ ...low, wall: 'left', size: { width: mm(200), height: mm(100) }, place: { from: 'front', distance: zero, to: 'near_edge' }, height: { bottom: zero } }, square, thick).vent!;
    expect(exhaustPlace(vent, nearer, [], square).acrossTheRoom.isAcross).toBe(false);
    expect(exhaustPlace(exhaust({}), stove, [], inside).acrossTheRoom.isAcross).toBe(false);
});

test('short circuits: one wall and near, both high, both low', () => {
    const why = (change: Partial<VentInput>) => shortCircuits([ventOf(), exhaust(change)], inside).map(found => [found.why, found.apart]);
    const place = (distance: number): WallPlace => ({ from: 'front', distance: ticks(distance), to: 'near_edge' });
    expect(why({ place: place(w(40)), height: { bottom: w(2) } })).toEqual([['too_near', w(8)]]);
    expect(why({ place: place(w(24)), height: { bottom: ticks(w(30) - 1) } })).toEqual([['too_near', w(24) - 1]]);
    expect(why({ place: place(w(24)), height: { bottom: w(37) } })).toEqual([['both_low', w(31)]]); // its middle is exactly at half the height
    expect(why({ place: place(w(24)), height: { bottom: ticks(w(37) + 1) } })).toEqual([]);
    expect(why({ place: place(w(24)), height: { bottom: w(60) } })).toEqual([]);
    expect(why({ place: place(w(56)), height: { bottom: w(2) } })).toEqual([['both_low', w(24)]]);
    expect(why({ wall: 'left', place: place(w(24)), height: { bottom: w(2) } })).toEqual([]);
    expect(shortCircuits([ventOf({ place: place(w(0)), height: { bottom: w(60) } }), exhaust({ place: place(w(40)), height: { bottom: w(60) } })], inside).map(found => found.why)).toEqual(['both_high']);
});

test('areas by role, the gap under the door beside them', () => {
    const paths = airPaths([ventOf({ freePercent: 50 }), exhaust({ wall: 'front', place: { from: 'left', distance: w(2), to: 'near_edge' }, freePercent: 75 })], [doorOf()]);
    expect([inSquareInches(paths.gross.intake), inSquareInches(paths.free.intake), inSquareInches(paths.free.exhaust)]).toEqual([32, 16, 24]);
    expect(paths).toMatchObject({ isExhaustNoSmaller: true, lacks: [], unknownSources: [] });
    expect(paths.underDoors).toEqual([{ door: 'entry', area: area(w(24), w(0, 1, 2)) }]); // 12 in2
    expect(inSquareInches(paths.underDoorsTotal)).toBe(12);
    expect(airPaths([ventOf(), exhaust({})], []).isExhaustNoSmaller).toBe(true); // equal passes
    expect(airPaths([ventOf(), exhaust({ freePercent: 99.999999 })], []).isExhaustNoSmaller).toBe(false);
    expect(airPaths([ventOf({ air: 'unknown' })], [])).toMatchObject({ lacks: ['exhaust'], unknownSources: [{ name: 'intake' }] });
    expect(airPaths([ventOf()], []).isExhaustNoSmaller).toBeUndefined();
});

test('millimetres and inches make the same vent', () => {
    expect(ventOf({ size: { width: mm(203.2), height: mm(101.6) }, place: { from: 'front', distance: mm(609.6), to: 'near_edge' }, height: { bottom: mm(50.8) } })).toEqual(ventOf());
});

test('mirroring the room changes no distance, area or judgement', () => {
    const anyWall = fc.constantFrom<Wall[]>('front', 'left', 'back', 'right');
    const any = fc.record({ wall: anyWall, distance: fc.integer({ min: 0, max: 50 }), bottom: fc.integer({ min: 0, max: 74 }), isLeft: fc.boolean() });
    fc.assert(fc.property(any, any, anyWall, (a, b, heaterWall) => {
        const read = (turn: (wall: Wall) => Wall) => {
            const heater = heaterAt(turn(heaterWall), turn(neighbours[heaterWall].left), w(10));
            const door = doorOf({ hinge: turn('left'), place: { from: turn('left'), distance: w(23, 1, 4), to: 'near_edge' } });
            const [intake, out] = ([[a, 'intake'], [b, 'exhaust']] as const).map(([{ wall, distance, bottom, isLeft }, role]) => ventOf({
                name: role, role, wall: turn(wall), place: { from: turn(isLeft ? neighbours[wall].left : neighbours[wall].right), distance: w(distance) as Length, to: 'near_edge' }, height: { bottom: w(bottom) },
            })) as [Vent, Vent];
            const place = exhaustPlace(out, heater, [door], inside);
            return [ventToHeater(intake, heater), place.nearTopOfDoor, { ...place.acrossTheRoom, wall: undefined }, shortCircuits([intake, out], inside).map(({ apart, why }) => [apart, why])];
        };
        expect(read(mirrorWall)).toEqual(read(wall => wall));
    }));
    expect(negate(zero)).toBe(0);
});
