import { test } from 'vitest';
import { deviceAboveManual as rule } from '../../../language/src/rules/electrical/device-above-manual.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 240.6(A): the standard rating above 31.25 A is 35 A.
test('reports the model: 31.25 A needs the 35 A device', () => checkFindings(rule, `
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
        //        ^^^^^^^^ error: Heater stove needs a 35 A device; 30 A is the most its manual allows (Narrow 60 sheet, demo, maximum overcurrent device). Compare the entry with the manual, ask its maker how it is fed, or choose another heater. A licensed electrician confirms it and does the work.
        from      front 8"
        guard     yes
    }
`));

test('accepts a manual that allows the next standard size', () => checkFindings(rule, `
    heater_model Narrow60 {
        manual    "Narrow 60 sheet, demo"
        power     6 kW
        supply    240 V single_phase
        body      16" x 22"
        depth     11"
        max_device 35 A
    }
    heater stove on right {
        model     Narrow60
        from      front 8"
        guard     yes
    }
`));

test('stays silent while the figure of the manual is being typed', () => checkFindings(rule, `
    heater_model Narrow60 {
        manual    "Narrow 60 sheet, demo"
        power     6 kW
        supply    240 V single_phase
        body      16" x 22"
        depth     11"
        max_device 
    }
    heater stove on right {
        model     Narrow60
        from      front 8"
        guard     yes
    }
`));
