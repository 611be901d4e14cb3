import { test } from 'vitest';
import { timerInsideRoom as rule } from '../../../language/src/rules/heater/timer-inside-room.js';
import { checkFindings, checkFix } from '../../support/check.js';
import { silentManual } from '../../support/silent-manual.js';

// IMC 914.4.1: the timer control is outside the room.
test('reports a timer on the heater', () => checkFindings(rule, `
    rules us_commercial
    // without control
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       on_heater
        timer         60 min
    }
    heater stove on right {
        model     Odd
        //        ^^^ error: The timer of heater stove is on the heater; outside the room is needed (IMC 2018, 914.4.1). Put a control with the timer outside, or choose a heater made for one.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('reports a timer inside where the manual does not say', () => checkFindings(rule, `
    rules us_commercial
    ${silentManual}
    control on front {
        stands    inside
        //        ^^^^^^ 💡 error: The timer of heater stove is inside the room; outside the room is needed (IMC 2018, 914.4.1). Put a control with the timer outside, or choose a heater made for one.
        height    54"
        timer     60 min
    }
`));

test('a code that speaks of timers apart from the heater lets its own be', () => checkFindings(rule, `
    rules ca_electrical
    // without control
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       on_heater
        timer         60 min
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('leaves a control the manual wants elsewhere to that rule', () => checkFindings(rule, `
    rules us_commercial
    control on front {
        stands    inside
        height    54"
        timer     60 min
    }
`));

test('accepts a timer outside', () => checkFindings(rule, `
    rules us_commercial
    control on front {
        stands    outside
        height    54"
        timer     60 min
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    rules us_commercial
    ${silentManual}
    control on front {
        stands
        height    54"
        timer     60 min
    }
`));

test('a fix puts it outside', () => checkFix(rule, `
    rules us_commercial
    ${silentManual}
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
