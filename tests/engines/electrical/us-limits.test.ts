import { expect, test } from 'vitest';
import { feet } from '../../../language/src/core/length.js';
import { awg, matchSupply, showConductor, usCircuit, type CircuitResult, type HeaterSupply, type RunSegment, type UsCircuitInput } from '../../../language/src/engines/electrical/index.js';
import { largestDeviceFor } from '../../../language/src/engines/electrical/us-tables.js';

const heaterOf = (watts: number, more: Partial<HeaterSupply> = {}): HeaterSupply =>
    ({ manual: 'Test heater manual', ratings: [{ watts, volts: 240, phases: 'single' }], maximumDeviceA: 1000, ...more });
const circuit = (watts: number, run: readonly RunSegment[], more: Partial<UsCircuitInput> = {}): CircuitResult =>
    usCircuit({ heater: heaterOf(watts), supply: { volts: 240, phases: 'single' }, run, disconnect: 'within_sight', ...more });
const size = ({ conductor }: CircuitResult): string => conductor ? showConductor(conductor.size) : 'none';
const cool: RunSegment = { name: 'cool', length: feet(10), ambientC: 30 };

// 8 AWG of 90 °C at 85 °C: 55 × 0.29 = 15.95 A. A 20 A device would still protect it by the next size up, but it does not carry 16 A.
test('the corrected ampacity carries the load itself', () => {
    expect(size(circuit(3840, [{ ...cool, ambientC: 85 }], { insulationC: 90 }))).toBe('6 AWG');
});

test('the hottest segment governs wherever it stands in the run', () => {
    const hot: RunSegment = { name: 'hot', length: feet(5), ambientC: 50 };
    for (const run of [[cool, hot], [hot, cool], [cool, hot, cool]]) expect(size(circuit(5760, run))).toBe('6 AWG');
});

test('the next size up ends at 800 A', () => {
    expect(largestDeviceFor('4/0', 701)).toBe(800);
    expect(largestDeviceFor('4/0', 800)).toBe(800);
    expect(largestDeviceFor('4/0', 801)).toBe(801);
});

test('insulation rated below the terminals holds the terminals\' column down', () => {
    const result = circuit(8000, [{ ...cool, ambientC: 10 }], { terminalsC: 75, insulationC: 60 });
    // 41.67 A is above the 40 A of 8 AWG at 60 °C, however cool the run; at 75 °C it would be within 50 A.
    expect([size(result), result.conductor?.ampacityA]).toEqual(['6 AWG', 55]);
});

test('the voltage drop is that of the conductor that is there', () => {
    const existing = { deviceA: 40, conductor: awg('6') };
    const [laid, fresh] = [circuit(6000, [cool], { existing }), circuit(6000, [cool])];
    expect(laid.voltageDrop!.volts / fresh.voltageDrop!.volts).toBeCloseTo(0.491 / 0.778, 9);
});

test('the 60 A of undivided elements is no limit for a heater divided in sets', () => {
    const existing = { deviceA: 70, conductor: awg('3') };
    expect(circuit(6000, [cool], { existing, heater: heaterOf(6000, { elementSets: 2 }) }).problems).toEqual([]);
    expect(circuit(6000, [cool], { existing }).problems).toMatchObject([{ kind: 'existing-device-too-large', because: 'elements', allowedA: 60 }]);
});

test('without the ambient temperature an existing circuit is held to its terminals alone', () => {
    const run: readonly RunSegment[] = [{ name: 'wall', length: feet(10) }];
    const kinds = (deviceA: number, wire: '10' | '8'): readonly string[] => circuit(6000, run, { existing: { deviceA, conductor: awg(wire) } }).problems.map(({ kind }) => kind);
    expect(kinds(40, '8')).toEqual([]);
    expect(kinds(45, '8')).toEqual(['existing-device-too-large']);
    expect(kinds(35, '10')).toEqual(['existing-device-too-large', 'existing-conductor-too-small']);
});

test('of several ratings the one nearest to the supply is derated', () => {
    const heater = heaterOf(0, { ratings: [{ watts: 9000, volts: 480, phases: 'single' }, { watts: 6000, volts: 240, phases: 'single' }] });
    const match = matchSupply(heater, { volts: 208, phases: 'single' });
    expect(match).toMatchObject({ fit: 'wrong-voltage', rating: { volts: 240 } });
    expect(match?.watts).toBeCloseTo(6000 * 0.7511, 0);
});

test.each([
    [208, 120, 'line_to_neutral'], [480, 277, 'line_to_neutral'], [400, 230, 'line_to_neutral'], [415, 240, 'line_to_neutral'], [208, 208, 'line_to_line'],
])('of a %i V three-phase supply a %i V single-phase heater is connected %s', (volts, heaterVolts, connection) => {
    expect(matchSupply(heaterOf(0, { ratings: [{ watts: 1000, volts: heaterVolts, phases: 'single' }] }), { volts, phases: 'three' })).toMatchObject({ fit: 'right', connection });
});

test('how a single-phase heater hangs on a three-phase supply stands in the power step', () => {
    const note = (volts: number): string | undefined => circuit(0, [cool], {
        heater: heaterOf(0, { ratings: [{ watts: 1000, volts, phases: 'single' }] }), supply: { volts: 208, phases: 'three' },
    }).steps.find(({ key }) => key === 'power')?.note;
    expect([note(120), note(208)]).toEqual(['Connected from one line to neutral.', 'Connected between two lines of the three.']);
});

// 14.4 kW at 240 V: 60 A, in two sets of 30 A. 37.5 A by the continuous factor: a 40 A device on 8 AWG, whose 60 °C column is 40 A.
test('each set of a divided heater has its own device and conductors', () => {
    const divided = circuit(14_400, [cool], { heater: heaterOf(14_400, { elementSets: 2 }) });
    expect(divided.elementSets).toEqual({ sets: 2, setA: 30, deviceA: 40 });
    expect(divided.steps.find(({ key }) => key === 'element-set-conductor')?.text).toBe('2 × 8 AWG copper, ground 10 AWG');
});
