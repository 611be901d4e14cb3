import { test } from 'vitest';
import { limiterMissing as rule } from '../../../language/src/rules/heater/limiter-missing.js';
import { checkFindings } from '../../support/check.js';

// UL 875 scope: temperature control, manually reset limit and timer.
test('reports a heater without a limiter, by the listing standard', () => checkFindings(rule, `
    heater_model Bare {
        manual        "Bare sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        limiter       none
    }
    heater stove on right {
        model     Bare
        //        ^^^^ error: Heater stove has no safety limiter (Bare sheet (fictional)); a limiter that is reset by hand is needed (UL 875 ed. 9 (2009), §1). Choose a heater that has one.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('reports a manual that does not say, by common practice where no standard speaks', () => checkFindings(rule, `
    rules iec
    heater_model Bare {
        manual        "Bare sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Bare
        //        ^^^^ error: Bare sheet (fictional) does not state a safety limiter for heater stove; a limiter that is reset by hand is needed (common practice, no source). Ask the maker of the heater and write limiter in its entry, or choose another heater.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts a limiter that is reset by hand', () => checkFindings(rule, `
    heater_model Safe {
        manual        "Safe sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        limiter       manual_reset
    }
    heater stove on right {
        model     Safe
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the limiter is being typed', () => checkFindings(rule, `
    heater_model Safe {
        manual        "Safe sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        limiter
    }
    heater stove on right {
        model     Safe
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
