import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { beforeAll, describe, expect, test } from 'vitest';
import { airState, dewPoint, humidityRatio, ladle, moistAirEnthalpy, moistAirVolume, saturationPressure, standardPressurePa, vapourPressure, vapourPressureOf } from '../../../language/src/engines/climate/psychrometrics.js';

const within = (ours: number, theirs: number, share: number): void => { expect(Math.abs(ours - theirs), `${ours} against ${theirs}`).toBeLessThanOrEqual(share * Math.abs(theirs) + 1e-12); };
const celsius = fc.double({ min: -30, max: 120, noNaN: true });
const humidity = fc.double({ min: 0.02, max: 1, noNaN: true });

// The referee is the npm package psychrolib, which follows the same chapter of the ASHRAE Handbook; the same equations differ by rounding of constants only.
describe('beside psychrolib', () => {
    beforeAll(() => psychrolib.SetUnitSystem(psychrolib.SI));
    test('saturation pressure', () => fc.assert(fc.property(celsius, t => { within(saturationPressure(t), psychrolib.GetSatVapPres(t), 1e-9); })));
    test('dew point', () => fc.assert(fc.property(celsius, humidity, (t, h) => {
        const p = vapourPressure(t, h);
        const ours = dewPoint(p);
        // The referee stops at 0.001 K.
        if (p < 90_000) expect(Math.abs((ours ?? NaN) - psychrolib.GetTDewPointFromVapPres(t, p))).toBeLessThan(0.002);
    })));
    test('humidity ratio, enthalpy and volume', () => fc.assert(fc.property(celsius, humidity, (t, h) => {
        const p = Math.min(vapourPressure(t, h), 60_000);
        const w = humidityRatio(p) ?? NaN;
        within(w, Math.max(1e-7, psychrolib.GetHumRatioFromVapPres(p, standardPressurePa)), w < 1e-6 ? 1 : 1e-9);
        within(moistAirEnthalpy(t, w) + 1e5, psychrolib.GetMoistAirEnthalpy(t, w) + 1e5, 1e-6);
        within(moistAirVolume(t, w), psychrolib.GetMoistAirVolume(t, w, standardPressurePa), 1e-6);
        within(airState(t, p).density ?? NaN, psychrolib.GetMoistAirDensity(t, w, standardPressurePa), 1e-6);
    })));
});

describe('near and above boiling', () => {
    test('there is a vapour pressure and a relative humidity, and no humidity ratio where there is no dry air left', () => {
        expect(airState(110, vapourPressure(110, 0.05)).humidity).toBeCloseTo(0.05, 12);
        expect(airState(110, vapourPressure(110, 0.05)).ratio).toBeGreaterThan(0);
        expect(humidityRatio(saturationPressure(100))).toBeUndefined();
    });
    test('beyond the published stretch it says so', () => { expect(() => saturationPressure(200.1)).toThrow(/200.1/); expect(() => saturationPressure(NaN)).toThrow(); });
});

test('vapour pressure and humidity ratio are inverse', () => fc.assert(fc.property(fc.double({ min: 1, max: 100_000, noNaN: true }), p => { within(vapourPressureOf(humidityRatio(p) ?? NaN), p, 1e-9); })));
test('more water never makes the air drier, and a larger room never wetter', () => fc.assert(fc.property(fc.double({ min: 0.01, max: 2, noNaN: true }), fc.double({ min: 2, max: 40, noNaN: true }), (kg, volume) => {
    const before = airState(80, vapourPressure(20, 0.5));
    const humidityAfter = (water: number, room: number): number => ladle(water, room, before, 20).after.humidity;
    expect(humidityAfter(kg * 1.1, volume)).toBeGreaterThanOrEqual(humidityAfter(kg, volume) - 1e-12);
    expect(humidityAfter(kg, volume * 1.1)).toBeLessThanOrEqual(humidityAfter(kg, volume) + 1e-12);
    expect(humidityAfter(kg, volume)).toBeLessThanOrEqual(1 + 1e-12);
})));
test('a ladle too large for the room leaves the rest as water', () => {
    const steam = ladle(5, 8, airState(80, vapourPressure(80, 0.1)), 20);
    expect(steam.after.humidity).toBeCloseTo(1, 12);
    // 2.327 kg saturate 8 m3 at 80 degC; a tenth of it was there.
    expect(steam.condensedKg).toBeCloseTo(5 - 0.9 * 2.327, 2);
});
