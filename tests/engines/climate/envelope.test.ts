import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { envelopeLoss, frameShare, type EnvelopeElement } from '../../../language/src/engines/climate/envelope.js';
import { thermalMaterial } from '../../../language/src/engines/climate/materials.js';
import { airLayerResistance, combinedResistance, plainLayer } from '../../../language/src/engines/climate/resistance.js';
import { stackAir } from '../../../language/src/engines/climate/stack-flow.js';

const known = <T>(value: T | undefined): T => { if (value === undefined) throw new Error('a material without figures'); return value; };
const wood = known(thermalMaterial({ name: 'lining', kind: 'wood', species: 'aspen' }));
const wool = known(thermalMaterial({ name: 'wool', kind: 'insulation', conductivity: 0.037 }));
const wall = (coreM: number, share = 0.15, areaM2 = 4, outsideC = 20): EnvelopeElement => ({
    name: 'back', kind: 'wall', areaM2, outsideC, isInTheOpen: false,
    layers: [{ kind: 'solid', role: 'lining', thicknessM: 0.019, material: wood }, { kind: 'bridged', role: 'core', thicknessM: coreM, material: wool, frame: wood, share }],
});
const loss = (element: EnvelopeElement, bathingC = 80): number => envelopeLoss([element], bathingC)[0]?.lossW ?? NaN;
const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 0.005, max, noNaN: true });

describe('loss through the shell', () => {
    test('thicker insulation never raises it', () => fc.assert(fc.property(positive(0.3), positive(0.1), positive(0.9), (core, more, share) => { expect(loss(wall(core + more, share))).toBeLessThan(loss(wall(core, share))); })));
    test('more frame never lowers it', () => fc.assert(fc.property(positive(0.3), positive(0.4), positive(0.4), (core, share, more) => { expect(loss(wall(core, share + more))).toBeGreaterThanOrEqual(loss(wall(core, share)) - 1e-9); })));
    test('a hotter room and a colder place never lower it', () => fc.assert(fc.property(positive(0.3), fc.double({ min: 0.5, max: 30, noNaN: true }), (core, more) => {
        expect(loss(wall(core), 80 + more)).toBeGreaterThan(loss(wall(core), 80));
        expect(loss(wall(core, 0.15, 4, 20 - more))).toBeGreaterThan(loss(wall(core)));
    })));
    test('the limits enclose the mean, and are one without a bridge', () => fc.assert(fc.property(positive(1), positive(4), positive(0.9), (a, b, share) => {
        const bridged = combinedResistance([plainLayer('board', a), { name: 'core', parts: [{ share: 1 - share, resistance: b }, { share, resistance: a }] }], 0.13, 0.04);
        expect(bridged.upper).toBeGreaterThanOrEqual(bridged.lower - 1e-12);
        const plain = combinedResistance([plainLayer('board', a)], 0.13, 0.04);
        expect(plain.upper).toBeCloseTo(plain.lower, 12);
    })));
    test('a frame of 38 mm round a panel of 610 x 2000 mm', () => expect(frameShare(0.61, 2, 0.038)).toBeCloseTo(1 - 0.534 * 1.924 / (0.61 * 2), 12));
});

test('a thicker layer of air never resists less', () => fc.assert(fc.property(positive(0.4), positive(0.1), fc.constantFrom('horizontal' as const, 'down' as const), (thickness, more, flow) => {
    expect(airLayerResistance(thickness + more, flow)).toBeGreaterThanOrEqual(airLayerResistance(thickness, flow) - 1e-12);
})));
test('insulation without a conductivity is not invented', () => expect(thermalMaterial({ name: 'wool', kind: 'insulation', densityKgPerM3: 30 })).toBeUndefined());

describe('air driven by warmth', () => {
    const opening = (name: string, bottomM: number, areaM2 = 0.02): Parameters<typeof stackAir>[0][number] => ({ name, areaM2, bottomM, topM: bottomM + 0.1 });
    test('what comes in leaves again', () => fc.assert(fc.property(positive(0.05), positive(0.05), fc.double({ min: 0, max: 1.8, noNaN: true }), fc.double({ min: -20, max: 60, noNaN: true }), (a, b, height, outside) => {
        const air = known(stackAir([opening('a', 0.1, a), opening('b', 0.1 + height, b)], 80, outside));
        expect(Math.abs(air.through.reduce((sum, { flowM3PerS }) => sum + flowM3PerS, 0))).toBeLessThan(1e-9 + 1e-6 * air.flowM3PerS);
    })));
    test('a larger opening and a hotter room never lower it', () => fc.assert(fc.property(positive(0.05), positive(0.05), (area, more) => {
        const flow = (a: number, inside: number): number => stackAir([opening('a', 0.1, a), opening('b', 1.8)], inside, 20)?.flowM3PerS ?? NaN;
        expect(flow(area + more, 80)).toBeGreaterThanOrEqual(flow(area, 80));
        expect(flow(area, 80 + 1000 * more)).toBeGreaterThanOrEqual(flow(area, 80) - 1e-12);
    })));
    test('two openings on one level change far less air than one over the other, and equal temperatures move none', () => {
        const level = known(stackAir([opening('a', 0.1), opening('b', 0.1)], 80, 20)).flowM3PerS;
        const stacked = known(stackAir([opening('a', 0.1), opening('b', 1.9)], 80, 20)).flowM3PerS;
        expect(level).toBeLessThan(stacked / 4);
        expect(stackAir([opening('a', 0.1), opening('b', 1.9)], 20, 20)?.flowM3PerS).toBe(0);
        expect(stackAir([], 80, 20)).toBeUndefined();
    });
});
