import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Citation } from '../../../language/src/core/citation.js';
import { neighbours, type Wall } from '../../../language/src/core/geometry.js';
import { inches, mm, ticks, type Length } from '../../../language/src/core/length.js';
import { placeFitting } from '../../../language/src/engines/fittings/placed-fitting.js';
import type { HeaterManual } from '../../../language/src/engines/heater/casing.js';
import { sensorHeight, sensorPlace, type SensorDemands, type SensorInput } from '../../../language/src/engines/heater/sensor.js';
import { heaterAt, inside, mirrorWall, tarn } from '../fittings/demo-room.js';

const w = inches;
// IMC 914.4 and IRC M1902.4: a sensing element that is not part of the heater is within 6 in (152 mm) of the ceiling.
const code: Citation = { kind: 'standard', document: 'IMC', edition: '2018', clause: '914.4', text: 'sensing element within 6 in of the ceiling' };
const us: SensorDemands = { codes: [{ value: w(6), citation: code }] };
const with_ = (manual: Partial<HeaterManual>) => heaterAt('right', 'front', w(20), { ...tarn, ...manual });
const sensorAt = (distance: Length, belowCeiling: Length, wall: Wall = 'right', from: Wall = 'front', cable?: Length): SensorInput => ({
    name: 'sensor', wall, ...(cable !== undefined && { cable }),
    box: placeFitting({ kind: 'sensor', name: 'sensor', wall, place: { from, distance, to: 'near_edge' }, height: { belowCeiling } }, inside).thing!.box,
});
const kinds = (place: ReturnType<typeof sensorPlace>) => place.problems.map(({ kind }) => kind);

test('a manual and a code that meet give what satisfies both', () => {
    const { band, conflicts, chosen } = sensorHeight(with_({ sensorBelowCeiling: { from: w(4), to: w(10) } }), us, inside.height);
    expect(band).toEqual({ range: { from: w(4), to: w(6) }, citation: code });
    expect(conflicts).toEqual([]);
    expect(chosen).toBe(w(6)); // practice aims at 12" and yields
});

test('bands that only touch meet in one height', () => {
    expect(sensorHeight(with_({ sensorBelowCeiling: { from: w(6), to: w(12) } }), us, inside.height)).toMatchObject({ band: { range: { from: w(6), to: w(6) } }, conflicts: [] });
});

test('when they do not meet the manual prevails and both are named', () => {
    const { band, conflicts } = sensorHeight(with_({ sensorBelowCeiling: { from: w(8), to: w(12) } }), us, inside.height);
    expect(band.range).toEqual({ from: w(8), to: w(12) });
    expect(conflicts).toEqual([{
        prevails: { range: { from: w(8), to: w(12) }, citation: { kind: 'manual', text: tarn.title } },
        against: { range: { from: 0, to: w(6) }, citation: code },
    }]);
});

test('practice yields to a code when the manual is silent, and stands alone when both are', () => {
    expect(sensorHeight(with_({}), us, inside.height)).toMatchObject({ band: { range: { from: 0, to: w(6) } }, chosen: w(6), yielded: { range: { from: w(12), to: w(12) } } });
    const alone = sensorHeight(with_({}), { codes: [] }, inside.height);
    expect(alone).toMatchObject({ band: { range: { from: w(12), to: w(12) }, citation: { kind: 'practice' } }, chosen: w(12), conflicts: [] });
    expect(alone.yielded).toBeUndefined();
    expect(sensorHeight(with_({ sensorBelowCeiling: { from: w(4), to: w(16) } }), { codes: [] }, inside.height)).toMatchObject({ chosen: w(12) });
});

test.each([
    [w(32), w(6), []],
    [w(32), ticks(w(6) + 1), ['sensor-too-low']],
    [w(48), w(6), []],
    [ticks(w(48) - 1), w(6), ['sensor-too-near-heater']],
    [w(24), w(6), ['sensor-too-near-heater']],
] as const)('beside the heater, 12" from its side and within 6": at %i and %i ticks', (distance, belowCeiling, problems) => {
    // The casing is 20" to 36" from the front wall: 48" is exactly 12" beyond it; 32" is over it.
    const found = kinds(sensorPlace(with_({ sensor: 'on_side_wall' }), sensorAt(distance, belowCeiling), us, inside)).filter(kind => kind !== 'sensor-on-wrong-wall');
    expect(found).toEqual(distance === w(32) ? [...problems, 'sensor-too-near-heater'] : [...problems]);
});

test('measured height and distance to the side', () => {
    expect(sensorPlace(with_({ sensorBelowCeiling: { from: w(4), to: w(6) } }), sensorAt(w(50), w(3)), us, inside)).toMatchObject({
        isRemote: true, belowCeiling: w(3), fromSide: w(14), beside: { value: w(12), citation: { kind: 'practice' } },
    });
    expect(kinds(sensorPlace(with_({ sensor: 'on_wall_over_heater', sensorBelowCeiling: { from: w(4), to: w(6) } }), sensorAt(w(22), w(3)), us, inside))).toEqual(['sensor-too-high']);
});

test('a sensor wanted over the heater is over it, on its wall', () => {
    const heater = with_({ sensor: 'on_wall_over_heater' });
    expect(kinds(sensorPlace(heater, sensorAt(w(20), w(6)), us, inside))).toEqual([]);
    expect(kinds(sensorPlace(heater, sensorAt(ticks(w(20) - 1), w(6)), us, inside))).toEqual(['sensor-not-over-heater']);
    expect(kinds(sensorPlace(heater, sensorAt(w(20), w(6), 'back', 'right'), us, inside))).toEqual(['sensor-on-wrong-wall']);
});

test('a thermostat built into the heater is not a remote element', () => {
    const heater = with_({ sensor: 'built_in' });
    expect(sensorPlace(heater, undefined, us, inside)).toEqual({ isRemote: false, problems: [] });
    expect(kinds(sensorPlace(heater, sensorAt(w(50), w(20)), us, inside))).toEqual(['sensor-not-needed']);
});

test('a missing sensor, a silent manual and a cable that is too long', () => {
    expect(kinds(sensorPlace(with_({}), undefined, us, inside))).toEqual(['sensor-missing', 'sensor-place-missing-in-manual']);
    const heater = with_({ sensor: 'on_side_wall', sensorCable: w(120), sensorFromSide: w(2) });
    const cable = (length: Length) => kinds(sensorPlace(heater, sensorAt(w(3), w(6), 'front', 'right', length), us, inside));
    expect(cable(w(120))).toEqual([]);
    expect(cable(ticks(w(120) + 1))).toEqual(['sensor-cable-too-long']);
});

test('the candidate satisfies what is judged', () => {
    fc.assert(fc.property(fc.constantFrom(undefined, 'on_wall_over_heater' as const, 'on_side_wall' as const), fc.integer({ min: 0, max: 48 }), fc.integer({ min: 1, max: 14 }), fc.constantFrom<Wall[]>('front', 'left', 'back', 'right'), (sensor, distance, fromSide, wall) => {
        const manual: HeaterManual = { ...tarn, sensorFromSide: w(fromSide), ...(sensor && { sensor }) };
        const heater = heaterAt(wall, neighbours[wall].left, w(distance), manual);
        const { candidate } = sensorPlace(heater, undefined, us, inside);
        for (const { from, to } of candidate!.along) for (const u of [from, to]) {
            const place = sensorPlace(heater, sensorAt(u, candidate!.belowCeiling, candidate!.wall, neighbours[candidate!.wall].left), us, inside);
            expect(kinds(place).filter(kind => kind !== 'sensor-place-missing-in-manual')).toEqual([]);
        }
    }));
});

test('on a side wall the candidate is level with the depth of the casing, on the nearer wall that is far enough', () => {
    // Casing 20" from the front wall and 28 1/2" from the back wall, 2" to 12" off its own.
    const along = (fromSide: Length) => {
        const { candidate } = sensorPlace(with_({ sensor: 'on_side_wall', sensorFromSide: fromSide }), undefined, us, inside);
        return [candidate!.wall, candidate!.along];
    };
    // Facing the front wall, the right wall is at the left-hand end.
    expect(along(w(20))).toEqual(['front', [{ from: w(2), to: w(12) }]]);
    expect(along(w(21))).toEqual(['back', [{ from: w(64, 1, 2), to: w(74, 1, 2) }]]);
    expect(along(w(30))[1]).toEqual([]);
});

test('mirroring the room changes neither distances nor problems', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 64 }), fc.integer({ min: 0, max: 20 }), (distance, below) => {
        const here = sensorPlace(with_({ sensorFromSide: mm(100) }), sensorAt(w(distance), w(below)), us, inside);
        const mirrored = sensorPlace(heaterAt('left', 'front', w(20), { ...tarn, sensorFromSide: mm(100) }), sensorAt(w(distance), w(below), mirrorWall('right')), us, inside);
        expect([mirrored.belowCeiling, mirrored.fromSide, mirrored.problems]).toEqual([here.belowCeiling, here.fromSide, here.problems]);
    }));
});
