import { expect, test } from 'vitest';
import { feet, mm } from '../../../language/src/core/length.js';
import {
    awg, electricalCaution, iecCircuit, parseConductor, scheduleLines, showCircuit, showConductor, usCircuit, type HeaterSupply, type SiteSupply,
} from '../../../language/src/engines/electrical/index.js';
import { zoneScopeLine } from '../../../language/src/rule-sets/index.js';

const heater: HeaterSupply = {
    manual: 'Test heater manual', ratings: [{ watts: 6000, volts: 240, phases: 'single' }], maximumDeviceA: 40, minimumConductor: awg('8'), finalConnection: 'copper, 90 °C',
};
const supply: SiteSupply = { volts: 240, phases: 'single', capacityA: 60 };
const result = usCircuit({ heater, supply, run: [{ name: 'panel to room', length: feet(20), ambientC: 20 }], disconnect: 'within_sight' });

test('the schedule in full', () => {
    const text = scheduleLines({ heater, supply, result }).map(({ label, value, note, source }) => `${label}: ${value}${note === undefined ? '' : `. ${note}`}${source ? ` [${source}]` : ''}`);
    expect(text).toEqual([
        'Supply on site: 240 V single-phase',
        'Capacity available: 60 A',
        'Heater rating: 6000 W at 240 V single-phase [Test heater manual]',
        'Maximum overcurrent device: 40 A [Test heater manual]',
        'Minimum conductor: 8 AWG [Test heater manual]',
        'Final connection: copper, 90 °C [Test heater manual]',
        'Length of the run: 20\'',
        'Power at the supply: 6000 W [Test heater manual, rating]',
        'Current: 25 A [Ohm\'s law and the definition of electrical power]',
        'Continuous load: 31.25 A [NEC 2023, 424.4(B) (from memory; compare with a copy)]',
        'Overcurrent device: 35 A. The Test heater manual allows 40 A at most. [NEC 2023, 240.6(A)]',
        'Terminal column: 60 °C. The rating of the insulation is not stated; it is taken as that of the terminals. [NEC 2023, 110.14(C)(1) (from memory; compare with a copy)]',
        'Ambient correction, panel to room: 1.15 [NEC 2023, Table 310.15(B)(1)]',
        'Circuit conductors: 2 × 8 AWG copper [NEC 2023, Table 310.16]',
        'Equipment ground: 10 AWG copper [NEC 2023, Table 250.122]',
        'Voltage drop: 0.31 %. 3 % on a branch circuit is advice, not a demand. [NEC 2023, chapter 9, Table 8 (from memory; compare with a copy)]',
        'Disconnecting means: within sight of the heater [NEC 2023, 424.19]',
        ...result.notChecked.map(item => `Not checked: ${item}`),
        `Caution: ${electricalCaution}`,
    ]);
});

test('closes with the caution whatever is missing, and what is missing stands in it', () => {
    const bare: HeaterSupply = { manual: 'Test heater manual', ratings: [] };
    const lines = scheduleLines({ heater: bare, supply, result: usCircuit({ heater: bare, supply, run: [] }) });
    expect(lines.at(-1)).toEqual({ section: 'caution', label: 'Caution', value: electricalCaution, source: '' });
    expect(electricalCaution).toContain('licensed electrician');
    expect(lines.filter(({ label }) => label === 'Not given').map(({ value }) => value)).toEqual(['rated power, voltage and phases of the heater in the Test heater manual']);
    expect(lines.filter(({ value }) => value === 'not in the Test heater manual').map(({ label }) => label)).toEqual(['Maximum overcurrent device', 'Minimum conductor', 'Final connection']);
});

test('by IEC the scope line of the zones stands on the schedule; by the NEC it does not', () => {
    const three: HeaterSupply = { manual: 'Test heater manual', ratings: [{ watts: 9000, volts: 400, phases: 'three' }] };
    const on400: SiteSupply = { volts: 400, phases: 'three' };
    const lines = scheduleLines({
        heater: three, supply: on400, unit: 'm', result: iecCircuit({ heater: three, supply: on400, run: [{ name: 'run', length: mm(12_000), ambientC: 30, method: 'B2' }] }),
    });
    expect(lines.find(({ label }) => label === 'Scope of the zones')?.value).toBe(zoneScopeLine);
    expect(lines.find(({ label }) => label === 'Length of the run')?.value).toBe('12 m');
    expect(scheduleLines({ heater, supply, result }).some(({ value }) => value === zoneScopeLine)).toBe(false);
});

test('the circuit in one line', () => {
    expect(showCircuit(result)).toBe('25 A, 35 A device, 2 × 8 AWG + 10 AWG ground, 0.31 % voltage drop');
});

test.each([
    ['10 AWG', '10 AWG'], ['AWG 10', '10 AWG'], ['#8', '8 AWG'], ['1/0 AWG', '1/0 AWG'], ['2.5 mm2', '2.5 mm2'], ['6 mm²', '6 mm2'],
    ['11 AWG', undefined], ['10', undefined], ['3 mm2', undefined], ['thick', undefined],
])('conductor written %s is %s', (text, shown) => {
    const found = parseConductor(text);
    expect(found && showConductor(found)).toBe(shown);
});
