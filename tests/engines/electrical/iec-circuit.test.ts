import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../../../language/src/core/length.js';
import {
    awg, iecCircuit, installationMethods, mm2, showConductor, type CircuitResult, type HeaterSupply, type IecCircuitInput, type IecRunSegment,
} from '../../../language/src/engines/electrical/index.js';

const heaterOf = (watts: number, more: Partial<HeaterSupply> = {}): HeaterSupply =>
    ({ manual: 'Test heater manual', ratings: [{ watts, volts: 400, phases: 'three' }], maximumDeviceA: 100, ...more });
const wall: IecRunSegment = { name: 'board to room', length: mm(12_000), ambientC: 30, method: 'B2' };
const circuit = (watts: number, more: Partial<IecCircuitInput> = {}): CircuitResult =>
    iecCircuit({ heater: heaterOf(watts), supply: { volts: 400, phases: 'three' }, run: [wall], insulation: 'pvc', ...more });
const kinds = ({ problems }: CircuitResult): readonly string[] => problems.map(({ kind }) => kind);
const size = ({ conductor }: CircuitResult): string => conductor ? showConductor(conductor.size) : 'none';
const earth = ({ protectiveConductor }: CircuitResult): string => protectiveConductor ? showConductor(protectiveConductor) : 'none';

// Worked by hand: I = P / (√3 × 400 V), next preferred device, method B2 with three loaded conductors at 30 °C.
test.each([
    [4500, 10, '1.5 mm2'], // 6.50 A
    [9000, 13, '1.5 mm2'], // 12.99 A
    [10_000, 16, '2.5 mm2'], // 14.43 A: 16 A is above the 15 A of 1.5 mm2
    [12_000, 20, '2.5 mm2'], // 17.32 A, 20 A equal to 2.5 mm2
    [15_000, 25, '4 mm2'], // 21.65 A
    [20_000, 32, '6 mm2'], // 28.87 A
])('%i W at 400 V three-phase: %i A device, %s', (watts, deviceA, wire) => {
    const result = circuit(watts);
    expect([result.deviceA, size(result), earth(result), result.conductor?.loaded]).toEqual([deviceA, wire, wire, 3]);
    expect(result.problems).toEqual([]);
    expect(result.lacks).toEqual([]);
});

test('a 230 V heater on 400/230 V runs from a line to neutral with two loaded conductors', () => {
    const result = circuit(0, { heater: heaterOf(0, { ratings: [{ watts: 3600, volts: 230, phases: 'single' }] }) });
    expect(result.currentA).toBeCloseTo(15.652, 3);
    expect([kinds(result), result.conductor?.loaded, size(result)]).toEqual([[], 2, '1.5 mm2']);
});

test('by installation method: the same 20 A in an insulating wall takes the next size', () => {
    const by = (method: IecRunSegment['method']): string => size(circuit(12_000, { run: [{ ...wall, ...(method ? { method } : {}) }] }));
    expect(installationMethods.map(by)).toEqual(['4 mm2', '4 mm2', '2.5 mm2', '2.5 mm2', '2.5 mm2']);
});

test('the weakest segment governs', () => {
    const roof: IecRunSegment = { name: 'roof space', length: mm(3000), ambientC: 50, method: 'C' };
    // Method C 2.5 mm2: 24 × 0.71 = 17.04 A < 20 A; 4 mm2: 32 × 0.71 = 22.72 A.
    const result = circuit(12_000, { run: [wall, roof] });
    expect(size(result)).toBe('4 mm2');
    expect(result.conductor?.ampacityA).toBeCloseTo(22.72, 9);
    expect(size(circuit(12_000, { run: [wall, roof], insulation: 'xlpe' }))).toBe('2.5 mm2');
});

test('ambient beyond the table of the insulation', () => {
    expect(circuit(9000, { run: [{ ...wall, ambientC: 61 }] }).problems).toMatchObject([{ kind: 'ambient-beyond-table', ambientC: 61, conductorC: 70 }]);
    expect(kinds(circuit(9000, { run: [{ ...wall, ambientC: 60 }] }))).toEqual([]);
    expect(kinds(circuit(9000, { run: [{ ...wall, ambientC: 80 }], insulation: 'xlpe' }))).toEqual([]);
    expect(kinds(circuit(9000, { run: [{ ...wall, ambientC: 81 }], insulation: 'xlpe' }))).toEqual(['ambient-beyond-table']);
});

test('a segment without method or ambient leaves the conductor open and says so', () => {
    const result = circuit(9000, { run: [{ name: 'duct', length: mm(1000) }] });
    expect([result.conductor, result.deviceA]).toEqual([undefined, 13]);
    expect(result.lacks).toEqual(['installation method of duct', 'ambient temperature of duct']);
});

test('insulation not stated counts as PVC and the step says so', () => {
    const { insulation, ...silent } = { heater: heaterOf(9000), supply: { volts: 400, phases: 'three' }, run: [wall], insulation: 'pvc' } as const;
    expect(size(iecCircuit(silent))).toBe(size(iecCircuit({ ...silent, insulation })));
    expect(iecCircuit(silent).steps.find(({ key }) => key === 'ambient-correction')?.note).toContain('PVC');
});

test('capacity, maximum device, wrong phase, product standard', () => {
    expect(kinds(circuit(9000, { supply: { volts: 400, phases: 'three', capacityA: 13 } }))).toEqual([]);
    expect(kinds(circuit(9000, { supply: { volts: 400, phases: 'three', capacityA: 12 } }))).toEqual(['capacity-too-small']);
    expect(kinds(circuit(9000, { heater: heaterOf(9000, { maximumDeviceA: 13 }) }))).toEqual([]);
    expect(kinds(circuit(9000, { heater: heaterOf(9000, { maximumDeviceA: 10 }) }))).toEqual(['manual-device-exceeded']);
    expect(kinds(circuit(9000, { supply: { volts: 230, phases: 'single', capacityA: 1 } }))).toEqual(['wrong-phase']);
    expect(kinds(circuit(20_000))).toEqual([]);
    const at500 = circuit(0, { heater: heaterOf(0, { ratings: [{ watts: 9000, volts: 500, phases: 'three' }] }), supply: { volts: 500, phases: 'three' } });
    expect(at500.problems).toMatchObject([{ kind: 'outside-heater-standard', what: 'voltage', value: 500, limit: 480 }]);
    expect(circuit(20_001).problems).toMatchObject([{ kind: 'outside-heater-standard', weight: 'info', what: 'power', limit: 20_000 }]);
});

test.each([
    ['right', { deviceA: 16, conductor: mm2(2.5) }, []],
    ['device equal to the conductor\'s 20 A', { deviceA: 20, conductor: mm2(2.5) }, []],
    ['device above the conductor', { deviceA: 25, conductor: mm2(2.5) }, ['existing-device-too-large']],
    ['device below the load', { deviceA: 10, conductor: mm2(2.5) }, ['existing-device-too-small']],
] as const)('existing circuit for 9 kW, %s', (_what, existing, expected) => {
    expect(kinds(circuit(9000, { existing }))).toEqual(expected);
});

test('an existing conductor below the manual\'s or below the load is too small; a gauge is not guessed at', () => {
    const heater = heaterOf(9000, { minimumConductor: mm2(2.5) });
    expect(circuit(9000, { heater, existing: { deviceA: 13, conductor: mm2(1.5) } }).problems).toMatchObject([{ kind: 'existing-conductor-too-small', citation: { kind: 'manual' }, needed: mm2(2.5) }]);
    expect(kinds(circuit(12_000, { existing: { deviceA: 20, conductor: mm2(1.5) } }))).toEqual(['existing-device-too-large', 'existing-conductor-too-small']);
    expect(circuit(9000, { existing: { deviceA: 13, conductor: awg('12') } }).lacks).toEqual(['conductor of the existing circuit in mm2; it is given as 12 AWG']);
});

// √3 × 12.990 A × 0.0225 Ω·mm²/m × 12 m / 1.5 mm² = 4.05 V, 1.0125 % of 400 V: the √3 cancel and leave P·ρ·L / (S·V²).
test('voltage drop over 12 m', () => {
    const { voltageDrop } = circuit(9000);
    expect(voltageDrop?.volts).toBeCloseTo(4.05, 9);
    expect(voltageDrop?.share).toBeCloseTo(0.010125, 12);
    expect(kinds(circuit(9000, { run: [{ ...wall, length: mm(60_000) }] }))).toEqual(['voltage-drop-high']);
});

test('the voltage drop is that of the conductor that is there', () => {
    expect(circuit(9000, { existing: { deviceA: 16, conductor: mm2(6) } }).voltageDrop?.volts).toBeCloseTo(4.05 / 4, 9);
});

test('the residual current device is for the other circuits unless the manual recommends one', () => {
    const text = (heater: HeaterSupply): string => circuit(0, { heater }).steps.find(({ key }) => key === 'residual-current')!.text;
    expect(text(heaterOf(9000))).toBe('30 mA on every other circuit of the room');
    expect(text(heaterOf(9000, { residualCurrentDevice: 'recommended' }))).toBe('30 mA, as the Test heater manual recommends');
});

test('more power or heat never gives a thinner conductor, and the chosen circuit passes as an existing one', () => {
    const area = ({ conductor }: CircuitResult): number => conductor?.size.system === 'mm2' ? conductor.size.mm2 : Infinity;
    fc.assert(fc.property(
        fc.integer({ min: 1000, max: 60_000 }), fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: -10, max: 60 }), fc.integer({ min: 0, max: 30 }),
        fc.constantFrom(...installationMethods), fc.constantFrom('pvc' as const, 'xlpe' as const),
        (watts, more, ambientC, hotter, method, insulation) => {
            const at = (power: number, ambient: number): CircuitResult => circuit(power, { insulation, run: [{ ...wall, method, ambientC: ambient }] });
            const base = at(watts, ambientC);
            expect(area(at(watts + more, ambientC))).toBeGreaterThanOrEqual(area(base));
            expect(area(at(watts, ambientC + hotter))).toBeGreaterThanOrEqual(area(base));
            if (!base.conductor) return;
            expect(base.deviceA!).toBeLessThanOrEqual(base.conductor.ampacityA + 1e-9);
            const again = circuit(watts, { insulation, run: [{ ...wall, method, ambientC }], existing: { deviceA: base.deviceA!, conductor: base.conductor.size } });
            expect(again.problems.filter(({ weight }) => weight === 'problem')).toEqual([]);
        },
    ));
});
