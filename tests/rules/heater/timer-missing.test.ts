import { test } from 'vitest';
import { timerMissing as rule } from '../../../language/src/rules/heater/timer-missing.js';
import { checkFindings } from '../../support/check.js';

test('warns where common practice alone wants one', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       outside
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
    //@ 1-8 warning: No timer is stated for heater stove, neither at a control nor by Odd sheet (fictional); one is needed (common practice, no source). Write timer and its longest time at the control, such as timer 60 min.
        stands    outside
        height    54"
    }
`));

// CSA C22.1 rule 62-222: a timed cut-off of one hour at most.
test('a code that wants one makes it an error', () => checkFindings(rule, `
    rules ca_electrical
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       outside
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
    //@ 1-8 error: No timer is stated for heater stove, neither at a control nor by Odd sheet (fictional); one is needed (CSA C22.1 2021, 62-222 4)). Write timer and its longest time at the control, such as timer 60 min.
        stands    outside
        height    54"
    }
`));

test('accepts the timer of the heater itself', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       outside
        timer         60 min
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
        stands    outside
        height    54"
    }
`));

test('stays silent while the time is being typed', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       outside
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
        stands    outside
        height    54"
        timer
    }
`));
