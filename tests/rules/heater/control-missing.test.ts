import { test } from 'vitest';
import { controlMissing as rule } from '../../../language/src/rules/heater/control-missing.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the heater', () => checkFindings(rule, `
    // without control
    heater stove on right {
    //@ 1-13 💡 error: Heater stove has no control; its manual puts one outside the room (Tarn 60 installation sheet, demo edition 2). Write a block such as control on front { stands outside; height …; timer … }.
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('a control on the heater comes with it', () => checkFindings(rule, `
    // without control
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       on_heater
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the control is being typed', () => checkFindings(rule, `
    control on front {
        stands
        height    54"
        timer     60 min
    }
`));

test('a fix adds it', () => checkFix(rule, `
    // without control
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
        control on front { stands outside }
`));
