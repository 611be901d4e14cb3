import { test } from 'vitest';
import { deviceBeyondTable as rule } from '../../../language/src/rules/electrical/device-beyond-table.js';
import { checkFindings } from '../../support/check.js';

// Source: IEC 60898-1, preferred ratings up to 100 A, from memory.
test('reports the model: 60 kW at 240 V is 250 A', () => checkFindings(rule, `
    rules iec
    heater_model Hall {
        manual    "Hall manual, demo"
        power     60 kW
        supply    240 V single_phase
        body      40" x 27"
        depth     20"
        circuits  8
    }
    heater stove on right {
        model     Hall
        //        ^^^^ error: Heater stove needs a device of 250 A or more; the standard ratings end at 100 A (IEC 60898-1 2015, 5.3.2). Look at the power and the supply, or have it fed by several circuits. A licensed electrician confirms it and does the work.
        from      front 8"
        guard     yes
    }
`));

test('accepts the last preferred rating: 24 kW at 240 V is 100 A', () => checkFindings(rule, `
    rules iec
    heater_model Hall {
        manual    "Hall manual, demo"
        power     24 kW
        supply    240 V single_phase
        body      40" x 27"
        depth     20"
        circuits  8
    }
    heater stove on right {
        model     Hall
        from      front 8"
        guard     yes
    }
`));

test('stays silent while the power is being typed', () => checkFindings(rule, `
    rules iec
    heater_model Hall {
        manual    "Hall manual, demo"
        power     60
        supply    240 V single_phase
        body      40" x 27"
        depth     20"
        circuits  8
    }
    heater stove on right {
        model     Hall
        from      front 8"
        guard     yes
    }
`));
