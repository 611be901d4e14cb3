import { test } from 'vitest';
import { controlInWrongPlace as rule } from '../../../language/src/rules/heater/control-in-wrong-place.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports where it stands', () => checkFindings(rule, `
    control on front {
        stands    inside
        //        ^^^^^^ 💡 error: The control of heater stove stands inside the room; outside the room is needed (Tarn 60 installation sheet, demo edition 2).
        height    54"
        timer     60 min
    }
`));

test('a manual that leaves the choice still keeps it out of the room', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       either
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
        stands    inside
        //        ^^^^^^ 💡 error: The control of heater stove stands inside the room; outside the room or on the heater is needed (Odd sheet (fictional)).
        height    54"
        timer     60 min
    }
`));

test('accepts what the manual leaves open', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       either
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
        stands    on_heater
        height    54"
        timer     60 min
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    control on front {
        stands
        height    54"
        timer     60 min
    }
`));

test('a fix puts it outside', () => checkFix(rule, `
    control on front {
        stands    inside
        height    54"
        timer     60 min
    }
`, `
    control on front {
        stands    outside
        height    54"
        timer     60 min
    }
`));
