import { test } from 'vitest';
import { heaterCannotPassDoor as rule } from '../../../language/src/rules/heater/heater-cannot-pass-door.js';
import { checkFindings } from '../../support/check.js';

test('reports the model with both openings', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          24" x 26"
        depth         23"
    }
    heater stove on right {
        model     Odd
        //        ^^^ error: The two smaller sizes of heater stove are 23" x 24"; the door is 22 3/4" x 75" clear. Choose a wider door or a smaller heater.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts one that just passes, turned', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          24" x 26"
        depth         22 3/4"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the body is being typed', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          24" x
        depth         11"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
