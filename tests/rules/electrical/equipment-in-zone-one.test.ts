import { test } from 'vitest';
import { equipmentInZoneOne as rule } from '../../../language/src/rules/electrical/equipment-in-zone-one.js';
import { checkFindings } from '../../support/check.js';

// Source: IEC 60364-7-703, 703.32 (0.5 m, from memory) and 703.512.2.
test('reports the place of the light', () => checkFindings(rule, `
    rules iec
    light lamp on right {
        model     Ember
        from      front 30"
        //        ^^^^^^^^^ error: Light lamp stands in zone 1, less than 500 mm (≈19 11/16") from the heater on plan; only the heater and what belongs to it may (IEC 60364-7-703 ed. 2.0 (2004), 703.512.2). Move it 500 mm or more away from the casing. A licensed electrician confirms it and does the work.
        height    50"
    }
`));

test('accepts just 500 mm: the casing ends 24" from the front', () => checkFindings(rule, `
    rules iec
    light lamp on right { model Ember; from front 1109.6 mm; height 50" }
`));

test('accepts the sensor, which belongs to the heater', () => checkFindings(rule, `
    rules iec
    sensor on right { centre from front 16"; below_ceiling 5"; cable 9' }
`));

test('knows no zones under the US rules', () => checkFindings(rule, `
    light lamp on right { model Ember; from front 30"; height 50" }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    rules iec
    light lamp on right { model Ember; from front; height 50" }
`));
