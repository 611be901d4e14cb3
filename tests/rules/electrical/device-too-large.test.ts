import { test } from 'vitest';
import { deviceTooLarge as rule } from '../../../language/src/rules/electrical/device-too-large.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the device', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device    45 A
        //        ^^^^ 💡 error: The device of circuit stove_feed is 45 A; 40 A is the most the heater's manual allows (Tarn 60 installation sheet, demo edition 2, maximum overcurrent device). 35 A is enough for the load. A licensed electrician confirms it and does the work.
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts the largest device of the manual', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device    40 A
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('leaves a load that is itself too large to the rule about that', () => checkFindings(rule, `
    heater_model Narrow60 {
        manual    "Narrow 60 sheet, demo"
        power     6 kW
        supply    240 V single_phase
        body      16" x 22"
        depth     11"
        max_device 30 A
    }
    heater stove on right {
        model     Narrow60
        from      front 8"
        guard     yes
    }
    circuit stove_feed {
        feeds     stove
        device    50 A
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the device is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('a fix sets the next standard size over the load', () => checkFix(rule, `
    circuit stove_feed {
        feeds     stove
        device    60 A
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`, `
    circuit stove_feed {
        feeds     stove
        device    35 A
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));
