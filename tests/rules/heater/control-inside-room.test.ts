import { test } from 'vitest';
import { controlInsideRoom as rule } from '../../../language/src/rules/heater/control-inside-room.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('warns where neither manual nor code speaks', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
        stands    inside
        //        ^^^^^^ 💡 warning: The control stands inside the room; outside is needed (common practice, no source). Put it outside, or ask the maker of the heater.
        height    54"
        timer     60 min
    }
`));

// IEC 60364-7-703, from memory: switchgear not built into the heater is outside.
test('a rule set that forbids it makes it an error', () => checkFindings(rule, `
    rules iec
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
        stands    inside
        //        ^^^^^^ 💡 error: The control stands inside the room; outside is needed (IEC 60364-7-703 ed. 2.0 (2004), 703.537.5). Put it outside, or ask the maker of the heater.
        height    54"
        timer     60 min
    }
`));

test('leaves it to the manual where that says', () => checkFindings(rule, `
    control on front {
        stands    inside
        height    54"
        timer     60 min
    }
`));

test('accepts a control outside', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
        stands
        height    54"
        timer     60 min
    }
`));

test('a fix puts it outside', () => checkFix(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
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
