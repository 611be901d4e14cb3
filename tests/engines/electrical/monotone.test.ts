import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feet, mm, plus, ticks } from '../../../language/src/core/length.js';
import { awgSizes, iecCircuit, installationMethods, matchSupply, mm2Sizes, usCircuit, type HeaterSupply, type IecRunSegment, type RunSegment, type SiteSupply } from '../../../language/src/engines/electrical/index.js';
import { heaterCurrent } from '../../../language/src/engines/electrical/current.js';
import { capacityAt30C, nextPreferredDevice } from '../../../language/src/engines/electrical/iec-tables.js';
import { usableAmpacity } from '../../../language/src/engines/electrical/us-conductor.js';
import { ambientCorrection, largestDeviceFor, nextStandardDevice } from '../../../language/src/engines/electrical/us-tables.js';
import '../../support/seed.js';

const runs = { numRuns: 150 };
const usSupply = fc.constantFrom<SiteSupply>({ volts: 240, phases: 'single' }, { volts: 208, phases: 'single' }, { volts: 208, phases: 'three' });
const iecSupply = fc.constantFrom<SiteSupply>({ volts: 230, phases: 'single' }, { volts: 400, phases: 'three' });
const watts = fc.integer({ min: 1500, max: 18_000 });
const heater = (power: number, { volts, phases }: SiteSupply): HeaterSupply => ({ manual: 'Test manual', ratings: [{ watts: power, volts, phases }], maximumDeviceA: 1000 });
const segments: fc.Arbitrary<readonly RunSegment[]> = fc.array(fc.record({ name: fc.constant('stretch'), length: fc.integer({ min: 1, max: 200 }).map(n => feet(n)), ambientC: fc.integer({ min: -10, max: 50 }) }), { minLength: 1, maxLength: 4 });
const insulation = fc.constantFrom<60 | 75 | 90>(60, 75, 90);
const index = (size: { readonly system: string; readonly awg?: string; readonly mm2?: number } | undefined): number => !size ? Infinity : size.system === 'awg' ? awgSizes.findIndex(one => one === size.awg) : mm2Sizes.findIndex(one => one === size.mm2);
const hotter = (run: readonly RunSegment[], at: number, by: number): readonly RunSegment[] => run.map((segment, i) => i === at % run.length ? { ...segment, ambientC: (segment.ambientC ?? 0) + by } : segment);

describe('a circuit by the NEC', () => {
    const make = (power: number, supply: SiteSupply, run: readonly RunSegment[], insulationC: 60 | 75 | 90, terminalsC: 60 | 75 = 60) => usCircuit({ heater: heater(power, supply), supply, run, insulationC, terminalsC });
    test('holds together: the device carries the load, the conductor carries it too and is protected by the device', () => {
        fc.assert(fc.property(watts, usSupply, segments, insulation, (power, supply, run, insulationC) => {
            const { currentA = 0, designCurrentA = 0, deviceA = 0, conductor } = make(power, supply, run, insulationC);
            expect(designCurrentA).toBeCloseTo(1.25 * currentA, 9);
            expect(deviceA).toBeGreaterThanOrEqual(designCurrentA - 1e-9);
            if (!conductor || conductor.size.system !== 'awg') return;
            expect(conductor.ampacityA).toBeGreaterThanOrEqual(currentA - 1e-9);
            expect(largestDeviceFor(conductor.size.awg, conductor.ampacityA)).toBeGreaterThanOrEqual(deviceA);
        }), runs);
    });
    test('a hotter segment never asks for a thinner conductor and never raises an ampacity', () => {
        fc.assert(fc.property(watts, usSupply, segments, insulation, fc.nat(3), fc.integer({ min: 0, max: 20 }), (power, supply, run, insulationC, at, by) => {
            const [cool, hot] = [make(power, supply, run, insulationC), make(power, supply, hotter(run, at, by), insulationC)];
            if (cool.conductor || hot.conductor) expect(index(hot.conductor?.size)).toBeGreaterThanOrEqual(index(cool.conductor?.size));
        }), runs);
        fc.assert(fc.property(fc.constantFrom(...awgSizes), insulation, fc.constantFrom<60 | 75>(60, 75), fc.integer({ min: -20, max: 85 }), fc.integer({ min: 0, max: 40 }), (size, insulationColumn, terminalColumn, ambientC, by) => {
            const at = (temperature: number): number => { const correction = ambientCorrection(temperature, insulationColumn); return correction === undefined ? 0 : usableAmpacity(size, { terminalColumn, insulationColumn, correction }); };
            expect(at(ambientC + by)).toBeLessThanOrEqual(at(ambientC));
        }), runs);
    });
    test('more power never asks for a smaller device or a thinner conductor', () => {
        fc.assert(fc.property(watts, fc.integer({ min: 0, max: 4000 }), usSupply, segments, insulation, (power, more, supply, run, insulationC) => {
            const [small, large] = [make(power, supply, run, insulationC), make(power + more, supply, run, insulationC)];
            expect(large.deviceA ?? Infinity).toBeGreaterThanOrEqual(small.deviceA ?? 0);
            if (small.conductor || large.conductor) expect(index(large.conductor?.size)).toBeGreaterThanOrEqual(index(small.conductor?.size));
        }), runs);
    });
    test('a longer cable of the same conductor never lowers the voltage drop, and twice as long drops twice as much', () => {
        fc.assert(fc.property(watts, usSupply, segments, fc.integer({ min: 0, max: 500 }), (power, supply, run, more) => {
            const drop = (segment: readonly RunSegment[]): number => make(power, supply, segment, 90).voltageDrop?.volts ?? 0;
            const first = run[0];
            if (!first?.length) return;
            expect(drop([{ ...first, length: plus(first.length, feet(more)) }, ...run.slice(1)])).toBeGreaterThanOrEqual(drop(run));
            expect(drop(run.map(one => ({ ...one, length: ticks(2 * (one.length ?? 0)) })))).toBeCloseTo(2 * drop(run), 9);
        }), runs);
    });
    test('terminals marked 75 °C never ask for more copper than unmarked ones', () => {
        fc.assert(fc.property(watts, usSupply, segments, (power, supply, run) => {
            const [unmarked, marked] = [make(power, supply, run, 90, 60), make(power, supply, run, 90, 75)];
            if (unmarked.conductor) expect(index(marked.conductor?.size)).toBeLessThanOrEqual(index(unmarked.conductor.size));
        }), runs);
    });
    test('the next standard device is the least that is enough, and grows with the load', () => {
        fc.assert(fc.property(fc.double({ min: 0.1, max: 5900, noNaN: true }), fc.double({ min: 0, max: 100, noNaN: true }), (load, more) => {
            expect(nextStandardDevice(load + more) ?? 0).toBeGreaterThanOrEqual(nextStandardDevice(load) ?? Infinity);
            expect(nextStandardDevice(load) ?? 0).toBeGreaterThanOrEqual(load - load * 1e-9);
        }), runs);
    });
});

describe('a circuit by IEC 60364', () => {
    const method = fc.constantFrom(...installationMethods);
    const iecRun = fc.array(fc.record({ name: fc.constant('stretch'), length: fc.integer({ min: 100, max: 60_000 }).map(n => mm(n)), ambientC: fc.integer({ min: 0, max: 45 }), method }), { minLength: 1, maxLength: 3 });
    const make = (power: number, supply: SiteSupply, run: readonly IecRunSegment[], kind: 'pvc' | 'xlpe') => iecCircuit({ heater: heater(power, supply), supply, run, insulation: kind });
    const kinds = fc.constantFrom<'pvc' | 'xlpe'>('pvc', 'xlpe');
    test('holds together: current ≤ device ≤ capacity', () => {
        fc.assert(fc.property(watts, iecSupply, iecRun, kinds, (power, supply, run, kind) => {
            const { currentA = 0, deviceA = 0, conductor } = make(power, supply, run, kind);
            expect(deviceA).toBeGreaterThanOrEqual(currentA - 1e-9);
            if (conductor) expect(conductor.ampacityA).toBeGreaterThanOrEqual(deviceA - 1e-9);
        }), runs);
    });
    test('hotter air, more power or PVC in place of polyethylene never allow a thinner conductor', () => {
        fc.assert(fc.property(watts, fc.integer({ min: 0, max: 3000 }), iecSupply, iecRun, kinds, fc.nat(2), fc.integer({ min: 0, max: 15 }), (power, more, supply, run, kind, at, by) => {
            const plain = make(power, supply, run, kind).conductor;
            const harder = [make(power, supply, hotter(run, at, by) as readonly IecRunSegment[], kind).conductor, make(power + more, supply, run, kind).conductor, make(power, supply, run, 'pvc').conductor];
            for (const one of harder) if (plain || one) expect(index(one?.size)).toBeGreaterThanOrEqual(index(plain?.size));
        }), runs);
    });
    test('a longer cable never lowers the voltage drop', () => {
        fc.assert(fc.property(watts, iecSupply, iecRun, fc.integer({ min: 0, max: 30_000 }), (power, supply, run, more) => {
            const [first] = run;
            if (!first) return;
            const drop = (cable: readonly IecRunSegment[]): number => make(power, supply, cable, 'pvc').voltageDrop?.volts ?? 0;
            expect(drop([{ ...first, length: plus(first.length, mm(more)) }, ...run.slice(1)])).toBeGreaterThanOrEqual(drop(run));
        }), runs);
    });
    test('a larger section never carries less; two loaded conductors never less than three', () => {
        fc.assert(fc.property(method, kinds, fc.integer({ min: 0, max: mm2Sizes.length - 2 }), (of, kind, i) => {
            const [size, next] = [mm2Sizes[i], mm2Sizes[i + 1]];
            if (size === undefined || next === undefined) return;
            expect(capacityAt30C(next, of, 3, kind)).toBeGreaterThan(capacityAt30C(size, of, 3, kind));
            expect(capacityAt30C(size, of, 2, kind)).toBeGreaterThanOrEqual(capacityAt30C(size, of, 3, kind));
            expect(capacityAt30C(size, of, 2, 'xlpe')).toBeGreaterThan(capacityAt30C(size, of, 2, 'pvc'));
        }), runs);
    });
    test('preferred devices grow with the load', () => {
        fc.assert(fc.property(fc.double({ min: 0.1, max: 99, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (load, more) => {
            expect(nextPreferredDevice(load + more) ?? Infinity).toBeGreaterThanOrEqual(nextPreferredDevice(load) ?? Infinity);
        }), runs);
    });
});

test('on a supply of another voltage than the nameplate\'s, power goes with its square and current with itself', () => {
    fc.assert(fc.property(watts, fc.integer({ min: 180, max: 260 }), (power, volts) => {
        fc.pre(volts !== 240);
        const match = matchSupply(heater(power, { volts: 240, phases: 'single' }), { volts, phases: 'single' });
        const currentA = heaterCurrent({ watts: match?.watts ?? 0, volts, phases: 'single' });
        expect(match?.fit).toBe('wrong-voltage');
        expect(match?.watts).toBeCloseTo(power * volts ** 2 / 240 ** 2, 6);
        expect(currentA).toBeCloseTo(power / 240 * volts / 240, 9);
    }), runs);
});
