import { inMm } from '../../language/src/core/length.js';
import { findRuleSet, showFigure, strictest, type ClauseKey, type RuleSetId } from '../../language/src/rule-sets/index.js';
import type { PublishedRow } from './table.js';

/** What governs when the sets apply, as text; lengths in the unit the document prints first. */
function governing(key: ClauseKey, ...ids: readonly RuleSetId[]): string {
    const found = strictest(ids.flatMap(id => findRuleSet(id) ?? []), key);
    return found ? showFigure(found.figure, ids.includes('iec') ? 'mm' : 'in') : 'nothing';
}
type Item = readonly [set: RuleSetId, source: string, clause: string, key: ClauseKey, published: string, fromMemory?: true];
const items: readonly Item[] = [
    ['us_dwelling', 'IRC', 'M1902.4', 'thermostat.air-temperature', '194 °F (90 °C)'],
    ['us_commercial', 'IMC', '914.4', 'thermostat.air-temperature', '194 °F (90 °C)'],
    ['us_dwelling', 'IRC', 'M1902.4', 'sensor.below-ceiling', '6"'],
    ['us_commercial', 'IMC', '914.4', 'sensor.below-ceiling', '6"'],
    ['us_dwelling', 'IRC', 'G2440.5.1', 'timer.duration', '1 h'],
    ['us_commercial', 'IMC', '914.4.1', 'timer.duration', '1 h'],
    ['us_commercial', 'IMC', '914.4.1', 'timer.place', 'outside the room'],
    ['us_dwelling', 'IRC', 'G2440.6', 'vent.opening-size', '4" x 8"'],
    ['us_commercial', 'IMC', '914.5', 'vent.opening-size', '4" x 8"'],
    ['us_commercial', 'IMC', '914.5', 'vent.opening-place', 'near top of door'],
    ['us_commercial', 'IMC', '914.5', 'vent.opening-area', '32 in2'],
    ['us_dwelling', 'IRC', 'G2440.2', 'heater.accidental-contact', 'yes'],
    ['us_dwelling', 'IRC', 'G2440.2.1', 'heater.guard-low-conductivity', 'yes'],
    ['us_dwelling', 'IRC', 'G2440.3', 'heater.service-panels-free', 'yes'],
    ['us_dwelling', 'IRC', 'G2440.4', 'heater.combustion-air-place', 'outside the room'],
    ['us_commercial', 'IMC', '914.5.1', 'notice.required', 'yes', true],
    ['us_commercial', 'IMC', '914.5.1', 'notice.letter-height', '1/4"', true],
    ['us_commercial', 'IMC', '914.5.1', 'notice.stay', '30 min', true],
    ['us_dwelling', 'IMC', '914.5.1, exception', 'notice.required', 'no', true],
    ['us_dwelling', 'UL 875', '§1', 'climate.humidity-minimum', '10 %'],
    ['us_dwelling', 'UL 875', '§1', 'climate.humidity-maximum', '25 %'],
    ['us_dwelling', 'UL 875', '§1', 'limiter.manual-reset', 'yes'],
    ['us_dwelling', 'NEC', '424.4(B)', 'circuit.continuous-factor', '125 %', true],
    ['us_dwelling', 'NEC', '424.22(B)', 'circuit.element-set', '48 A', true],
    ['us_dwelling', 'NEC', '424.22(B)', 'circuit.element-set-device', '60 A', true],
    ['us_dwelling', 'NEC', '424.19', 'circuit.disconnect', 'within sight or lockable'],
    ['us_dwelling', 'NEC', '210.19(A) note', 'circuit.voltage-drop', '3 %'],
    ['us_dwelling', 'NEC', '210.19(A) note', 'circuit.voltage-drop-total', '5 %', true],
    ['ca_electrical', 'CSA C22.1:21', '62-222 4)', 'timer.duration', '1 h'],
    ['ca_electrical', 'CSA C22.1:21', '62-222 4)', 'timer.override', 'no'],
    ['ca_electrical', 'CSA C22.1:21', '62-222 4)', 'timer.place', 'outside the room'],
    ['ca_electrical', 'CSA C22.1:21', '62-222 4)', 'timer.opens-all-ungrounded', 'yes'],
    ['ca_electrical', 'CSA C22.1:21', '62-222 1) to 3)', 'heater.below-water', 'no'],
    ['ca_electrical', 'CSA C22.1:21', '62-222 1) to 3)', 'heater.room-to-nameplate', 'yes'],
    ['iec', 'IEC 60335-2-53:2011', '1', 'heater.power-in-scope', '20 kW'],
    ['iec', 'IEC 60335-2-53:2011', '1', 'heater.voltage-single-in-scope', '250 V'],
    ['iec', 'IEC 60335-2-53:2011', '1', 'heater.voltage-in-scope', '480 V'],
    ['iec', 'IEC 60364-7-703', '703.411.3.3', 'circuit.residual-current', '30 mA', true],
];
export const codeItemRows: readonly PublishedRow[] = [
    ...items.map(([set, source, clause, key, published, fromMemory]): PublishedRow => ({
        source, clause, what: `${key} in ${set}`, published, ours: () => governing(key, set), tolerance: 0, toleranceReason: 'a printed figure', checks: 'strictest',
        ...(fromMemory ? { fromMemory } : {}),
    })),
    {
        source: 'IRC', clause: 'M1902.4', what: 'sensing element, the metric figure in brackets', published: 152, tolerance: 0.5, toleranceReason: 'the code prints whole millimetres', checks: 'strictest',
        ours: () => {
            const figure = strictest([findRuleSet('us_dwelling')].flatMap(set => set ?? []), 'sensor.below-ceiling')?.figure;
            return figure ? inMm(figure.value) : Number.NaN;
        },
    },
];
