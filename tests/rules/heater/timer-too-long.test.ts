import { test } from 'vitest';
import { timerTooLong as rule } from '../../../language/src/rules/heater/timer-too-long.js';
import { checkFindings, checkFix } from '../../support/check.js';

// IMC 914.4.1: one hour at most.
test('reports the time of the control', () => checkFindings(rule, `
    rules us_commercial
    control on front {
        stands    outside
        height    54"
        timer     90 min
        //        ^^^^^^ 💡 error: The timer of heater stove runs 90 min; 60 min is the most (IMC 2018, 914.4.1). Choose a shorter one.
    }
`));

test('reports the model when the timer is its own', () => checkFindings(rule, `
    rules ca_electrical
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        control       outside
        timer         2 h
    }
    heater stove on right {
        model     Odd
        //        ^^^ error: The timer of heater stove runs 2 h; 60 min is the most (CSA C22.1 2021, 62-222 4)). Write a control with a shorter timer.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    control on front {
        stands    outside
        height    54"
    }
`));

test('a limit remembered without certainty is only shown', () => checkFindings(rule, `
    rules iec
    control on front {
        stands    outside
        height    54"
        timer     8 h
        //        ^^^ info: The timer of heater stove runs 8 h; 6 h is the most (IEC 60335-2-53 ed. 4 (2011), 22). Compare this with a copy of the standard.
    }
`));

test('a code for gas heaters does not speak of electric ones', () => checkFindings(rule, `
    control on front {
        stands    outside
        height    54"
        timer     90 min
    }
`));

test('accepts exactly an hour', () => checkFindings(rule, `
    rules us_commercial
    control on front {
        stands    outside
        height    54"
        timer     60 min
    }
`));

test('stays silent while the time is being typed', () => checkFindings(rule, `
    rules us_commercial
    control on front {
        stands    outside
        height    54"
        timer
    }
`));

test('a fix sets the most there may be', () => checkFix(rule, `
    rules us_commercial
    control on front {
        stands    outside
        height    54"
        timer     90 min
    }
`, `
    control on front {
        stands    outside
        height    54"
        timer     60 min
    }
`));
