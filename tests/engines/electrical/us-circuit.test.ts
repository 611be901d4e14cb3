import fc from 'fast-check';
import { expect, test } from 'vitest';
import { feet } from '../../../language/src/core/length.js';
import {
    awg, awgSizes, compareConductors, mm2, showConductor, usCircuit, type CircuitResult, type HeaterSupply, type RunSegment, type UsCircuitInput,
} from '../../../language/src/engines/electrical/index.js';
import { grownGround, nextStandardDevice } from '../../../language/src/engines/electrical/us-tables.js';

const heaterOf = (watts: number, more: Partial<HeaterSupply> = {}): HeaterSupply =>
    ({ manual: 'Test heater manual', ratings: [{ watts, volts: 240, phases: 'single' }], maximumDeviceA: 1000, elementSets: 1, ...more });
const panel: RunSegment = { name: 'panel to room', length: feet(20), ambientC: 30 };
const circuit = (watts: number, more: Partial<UsCircuitInput> = {}): CircuitResult =>
    usCircuit({ heater: heaterOf(watts), supply: { volts: 240, phases: 'single' }, run: [panel], disconnect: 'within_sight', ...more });
const kinds = ({ problems }: CircuitResult): readonly string[] => problems.map(({ kind }) => kind);
const size = ({ conductor }: CircuitResult): string => conductor ? showConductor(conductor.size) : 'none';
const ground = ({ protectiveConductor }: CircuitResult): string => protectiveConductor ? showConductor(protectiveConductor) : 'none';

// Worked by hand from Table 310.16 (60 °C), 240.4(D), 240.6(A) and Table 250.122, 30 °C all the way.
test.each([
    [2160, 15, '14 AWG', '14 AWG'], // 9 A, 11.25 A
    [2880, 15, '14 AWG', '14 AWG'], // 12 A, exactly 15 A
    [3000, 20, '12 AWG', '12 AWG'], // 12.5 A, 15.63 A
    [3840, 20, '12 AWG', '12 AWG'], // 16 A, exactly 20 A
    [4500, 25, '10 AWG', '10 AWG'], // 18.75 A, 23.44 A: 12 AWG stops at 20 A
    [5760, 30, '10 AWG', '10 AWG'], // 24 A, exactly 30 A
    [6000, 35, '8 AWG', '10 AWG'],
    [8000, 45, '6 AWG', '10 AWG'], // 41.67 A is above the 40 A of 8 AWG
    [10_500, 60, '6 AWG', '10 AWG'], // 54.69 A within 55 A, 60 A by the next size up
])('%i W at 240 V: %i A device, %s, ground %s', (watts, deviceA, wire, earth) => {
    const result = circuit(watts);
    expect([result.deviceA, size(result), ground(result)]).toEqual([deviceA, wire, earth]);
    expect(result.problems).toEqual([]);
    expect(result.lacks).toEqual([]);
});

test('terminals marked 75 °C with 75 °C wire take the thinner conductor; with 60 °C wire they do not', () => {
    expect(size(circuit(8000, { terminalsC: 75, insulationC: 75 }))).toBe('8 AWG');
    expect(size(circuit(8000, { terminalsC: 75, insulationC: 60 }))).toBe('6 AWG');
});

test('90 °C insulation is used for correction only, never above the terminals', () => {
    const result = circuit(6000, { insulationC: 90 });
    expect(size(result)).toBe('8 AWG');
    expect(result.conductor?.ampacityA).toBe(40);
});

test('the hottest segment governs the run', () => {
    const hot: RunSegment = { name: 'over the room', length: feet(8), ambientC: 50 };
    // 10 AWG of 90 °C: 40 × 0.82 = 32.8 A carries 24 A and a 30 A device; of 60 °C: 30 × 0.58 = 17.4 A does not.
    expect(size(circuit(5760, { run: [panel, hot], insulationC: 90 }))).toBe('10 AWG');
    expect(size(circuit(5760, { run: [panel, hot] }))).toBe('6 AWG');
    expect(circuit(5760, { run: [panel, hot] }).conductor?.ampacityA).toBeCloseTo(55 * 0.58, 9);
});

test('a temperature just over a band belongs to the next one', () => {
    const at = (ambientC: number): number => circuit(5760, { run: [{ ...panel, ambientC }], insulationC: 90, terminalsC: 75 }).steps.find(({ key }) => key === 'ambient-correction')!.value!;
    expect([at(30), at(30.1), at(35), at(35.1)]).toEqual([1, 0.96, 0.96, 0.91]);
});

test('no ambient temperature, no conductor: the result says what it lacks and still gives current and device', () => {
    const result = circuit(6000, { run: [{ name: 'wall chase', length: feet(10) }] });
    expect(result.conductor).toBeUndefined();
    expect(result.lacks).toEqual(['ambient temperature of wall chase']);
    expect([result.currentA, result.deviceA]).toEqual([25, 35]);
    expect(result.problems).toEqual([]);
});

test('no run, no length, no disconnect, no maximum device: each is named', () => {
    const result = usCircuit({ heater: { manual: 'Test heater manual', ratings: [{ watts: 6000, volts: 240, phases: 'single' }] }, supply: { volts: 240, phases: 'single' }, run: [] });
    expect(result.lacks).toEqual([
        'largest overcurrent device the Test heater manual allows',
        'the run from the panel to the heater, with the ambient temperature of each segment',
        'length of the run, for the voltage drop',
        'where the disconnecting means is',
    ]);
});

test('a heater without a rating leaves everything open', () => {
    const result = usCircuit({ heater: { manual: 'Test heater manual', ratings: [] }, supply: { volts: 240, phases: 'single' }, run: [panel] });
    expect(result).toMatchObject({ steps: [], problems: [], lacks: ['rated power, voltage and phases of the heater in the Test heater manual'] });
});

test('ambient beyond the table of the insulation', () => {
    const hot: RunSegment = { name: 'in the hot wall', length: feet(3), ambientC: 56 };
    expect(circuit(6000, { run: [hot] }).problems).toMatchObject([{ kind: 'ambient-beyond-table', segment: 'in the hot wall', ambientC: 56, conductorC: 60 }]);
    expect(kinds(circuit(6000, { run: [{ ...hot, ambientC: 55 }] }))).toEqual([]);
    expect(kinds(circuit(6000, { run: [hot], insulationC: 90 }))).toEqual([]);
});

test('a 240 V heater on 208 V: a problem, and what it gives there', () => {
    const result = circuit(6000, { supply: { volts: 208, phases: 'single' } });
    expect(result.problems).toMatchObject([{ kind: 'wrong-voltage', suppliedVolts: 208, ratedVolts: [240], ratedWatts: 6000 }]);
    expect(result.wattsAtSupply).toBeCloseTo(4506.67, 2);
    expect(result.currentA).toBeCloseTo(21.667, 3);
});

test('a heater rated for both takes the rating of the supply', () => {
    const heater = heaterOf(6000, { ratings: [{ watts: 6000, volts: 240, phases: 'single' }, { watts: 4500, volts: 208, phases: 'single' }] });
    const result = circuit(0, { heater, supply: { volts: 208, phases: 'single' } });
    expect(result.problems).toEqual([]);
    expect(result.wattsAtSupply).toBe(4500);
});

test('a three-phase heater on a single-phase supply: one problem, no cascade', () => {
    const heater = heaterOf(12_000, { ratings: [{ watts: 12_000, volts: 208, phases: 'three' }] });
    const result = circuit(0, { heater, supply: { volts: 240, phases: 'single', capacityA: 10 }, existing: { deviceA: 15, conductor: awg('14') } });
    expect(kinds(result)).toEqual(['wrong-phase']);
    expect(result.currentA).toBeCloseTo(33.31, 2);
});

test('a single-phase heater between two lines of a three-phase supply, and from a line to neutral', () => {
    const on208 = circuit(0, { heater: heaterOf(0, { ratings: [{ watts: 6000, volts: 208, phases: 'single' }] }), supply: { volts: 208, phases: 'three' } });
    expect([kinds(on208), on208.conductor?.loaded]).toEqual([[], 2]);
    const on120 = circuit(0, { heater: heaterOf(0, { ratings: [{ watts: 1500, volts: 120, phases: 'single' }] }), supply: { volts: 208, phases: 'three' } });
    expect([kinds(on120), on120.currentA]).toEqual([[], 12.5]);
});

test('three-phase circuits have three loaded conductors', () => {
    const heater = heaterOf(0, { ratings: [{ watts: 12_000, volts: 208, phases: 'three' }] });
    const result = circuit(0, { heater, supply: { volts: 208, phases: 'three' } });
    expect([result.conductor?.loaded, size(result), result.deviceA]).toEqual([3, '6 AWG', 45]);
});

test('capacity: equal passes, less does not', () => {
    expect(kinds(circuit(6000, { supply: { volts: 240, phases: 'single', capacityA: 31.25 } }))).toEqual([]);
    expect(circuit(6000, { supply: { volts: 240, phases: 'single', capacityA: 31 } }).problems).toMatchObject([{ kind: 'capacity-too-small', neededA: 31.25, availableA: 31 }]);
});

test('the manual\'s maximum device: equal passes', () => {
    expect(kinds(circuit(6000, { heater: heaterOf(6000, { maximumDeviceA: 35 }) }))).toEqual([]);
    expect(circuit(6000, { heater: heaterOf(6000, { maximumDeviceA: 30 }) }).problems).toMatchObject([{ kind: 'manual-device-exceeded', neededA: 35, allowedA: 30 }]);
});

test('the manual\'s minimum conductor governs when it is thicker, and the ground grows with it', () => {
    const result = circuit(4500, { heater: heaterOf(4500, { minimumConductor: awg('8') }) });
    expect([size(result), ground(result), result.conductor?.isSetByManual]).toEqual(['8 AWG', '8 AWG', true]);
    expect(size(circuit(6000, { heater: heaterOf(6000, { minimumConductor: awg('10') }) }))).toBe('8 AWG');
    expect(circuit(6000, { heater: heaterOf(6000, { minimumConductor: mm2(10) }) }).lacks).toEqual(['minimum conductor of the Test heater manual as a gauge; it gives 10 mm2']);
});

// 250.122(B): 10 AWG of 10 380 circular mils grown by 26 240 / 16 510 is 16 497, so 8 AWG; never above the circuit conductor.
test('a ground grown with its conductors', () => {
    expect(grownGround('10', '8', '8')).toBe('10');
    expect(grownGround('10', '8', '6')).toBe('8');
    expect(grownGround('14', '14', '12')).toBe('12');
    expect(grownGround('8', '8', '4/0')).toBe('4/0');
});

test('48 A exactly needs no subdivision; above it the sets are asked for', () => {
    expect(kinds(circuit(48 * 240, { heater: heaterOf(48 * 240) }))).toEqual([]);
    expect(circuit(12_000, { heater: heaterOf(12_000) }).problems).toMatchObject([{ kind: 'not-subdivided', currentA: 50, sets: 1, setA: 50, limitA: 48 }]);
    const two = circuit(23_040, { heater: heaterOf(23_040, { elementSets: 2 }) });
    expect(kinds(two)).toEqual([]);
    expect(two.elementSets).toEqual({ sets: 2, setA: 48, deviceA: 60 });
    const { elementSets, ...silent } = heaterOf(12_000);
    expect(elementSets).toBe(1);
    const open = circuit(12_000, { heater: silent });
    expect(kinds(open)).toEqual([]);
    expect(open.lacks).toEqual(['in how many sets the elements are divided in the Test heater manual; 50 A is above 48 A']);
});

test('the disconnecting means', () => {
    expect(kinds(circuit(6000, { disconnect: 'lockable' }))).toEqual([]);
    expect(kinds(circuit(6000, { disconnect: 'neither' }))).toEqual(['disconnect-not-in-sight']);
});

test.each([
    ['right', { deviceA: 35, conductor: awg('8') }, []],
    ['device below 125 %', { deviceA: 30, conductor: awg('8') }, ['existing-device-too-small']],
    ['device equal to what the conductor allows', { deviceA: 40, conductor: awg('8') }, []],
    ['device above what the conductor allows', { deviceA: 45, conductor: awg('8') }, ['existing-device-too-large']],
    ['device above the elements\' 60 A', { deviceA: 70, conductor: awg('3') }, ['existing-device-too-large']],
    ['conductor too thin, its device right for the load', { deviceA: 35, conductor: awg('10') }, ['existing-device-too-large', 'existing-conductor-too-small']],
    ['both too small', { deviceA: 30, conductor: awg('10') }, ['existing-device-too-small', 'existing-conductor-too-small']],
] as const)('existing circuit for 6 kW, %s', (_what, existing, expected) => {
    expect(kinds(circuit(6000, { existing }))).toEqual(expected);
});

test('an existing device above the manual\'s maximum names the manual', () => {
    const heater = heaterOf(6000, { maximumDeviceA: 40 });
    expect(kinds(circuit(6000, { heater, existing: { deviceA: 40, conductor: awg('6') } }))).toEqual([]);
    expect(circuit(6000, { heater, existing: { deviceA: 45, conductor: awg('6') } }).problems).toMatchObject([
        { kind: 'existing-device-too-large', because: 'manual', deviceA: 45, allowedA: 40, citation: { kind: 'manual' } },
    ]);
});

test('an existing circuit half described', () => {
    expect(circuit(6000, { existing: {} }).lacks).toEqual(['overcurrent device of the existing circuit', 'conductor of the existing circuit']);
    expect(circuit(6000, { existing: { deviceA: 35, conductor: mm2(10) } }).lacks).toEqual(['conductor of the existing circuit as a gauge; it is given as 10 mm2']);
});

// 2 × 25 A × 0.778 Ω/1000 ft × [1 + 0.00323 × (60 − 75)] × 100 ft = 3.70 V, 1.54 % of 240 V.
test('voltage drop over 100 ft of 8 AWG', () => {
    const { voltageDrop } = circuit(6000, { run: [{ ...panel, length: feet(60) }, { ...panel, name: 'crawl space', length: feet(40) }] });
    expect(voltageDrop?.volts).toBeCloseTo(3.7015, 4);
    expect(voltageDrop?.share).toBeCloseTo(0.015423, 6);
});

test('voltage drop over 3 % is for information only', () => {
    const result = circuit(6000, { run: [{ ...panel, length: feet(200) }] });
    expect(result.problems).toMatchObject([{ kind: 'voltage-drop-high', weight: 'info', limit: 0.03 }]);
});

test('older printings are named where the current table has less', () => {
    expect(circuit(2880).steps.find(({ key }) => key === 'conductor')?.note).toContain('20 A');
    expect(circuit(6000).steps.find(({ key }) => key === 'conductor')?.note).toBeUndefined();
});

const anyInput = fc.record({
    watts: fc.integer({ min: 500, max: 30_000 }), ambientC: fc.integer({ min: -20, max: 55 }), terminalsC: fc.constantFrom(60 as const, 75 as const),
    insulationC: fc.constantFrom(60 as const, 75 as const, 90 as const), length: fc.integer({ min: 1, max: 300 }),
});
type AnyInput = typeof anyInput extends fc.Arbitrary<infer T> ? T : never;
const build = ({ watts, ambientC, terminalsC, insulationC, length }: AnyInput): CircuitResult =>
    circuit(watts, { run: [{ name: 'run', length: feet(length), ambientC }], terminalsC, insulationC });
const rank = ({ conductor }: CircuitResult): number => conductor ? awgSizes.findIndex(each => compareConductors(awg(each), conductor.size) === 0) : Infinity;

test('more power never gives a thinner conductor, a smaller device or less current', () => {
    fc.assert(fc.property(anyInput, fc.integer({ min: 0, max: 20_000 }), (input, more) => {
        const [small, big] = [build(input), build({ ...input, watts: input.watts + more })];
        expect(rank(big)).toBeGreaterThanOrEqual(rank(small));
        expect(big.deviceA!).toBeGreaterThanOrEqual(small.deviceA!);
        expect(big.currentA!).toBeGreaterThanOrEqual(small.currentA!);
    }));
});

test('a hotter run never gives a thinner conductor', () => {
    fc.assert(fc.property(anyInput, fc.integer({ min: 0, max: 60 }), (input, more) => {
        expect(rank(build({ ...input, ambientC: input.ambientC + more }))).toBeGreaterThanOrEqual(rank(build(input)));
    }));
});

test('the chosen circuit holds: conductor carries 125 %, device protects it, and as an existing circuit it passes', () => {
    fc.assert(fc.property(anyInput, input => {
        const result = build(input);
        if (!result.conductor || result.currentA! > 48) return;
        expect(result.conductor.ampacityA).toBeGreaterThanOrEqual(result.currentA! - 1e-9);
        expect(result.deviceA!).toBeLessThanOrEqual(nextStandardDevice(result.conductor.ampacityA)!);
        const again = circuit(input.watts, {
            run: [{ name: 'run', length: feet(input.length), ambientC: input.ambientC }], terminalsC: input.terminalsC, insulationC: input.insulationC,
            existing: { deviceA: result.deviceA!, conductor: result.conductor.size },
        });
        expect(again.problems.filter(({ weight }) => weight === 'problem')).toEqual([]);
    }));
});

test('equal inputs give equal bytes', () => {
    fc.assert(fc.property(anyInput, input => { expect(JSON.stringify(build(input))).toBe(JSON.stringify(build({ ...input }))); }));
});
