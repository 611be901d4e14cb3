import { test } from 'vitest';
import { feetBelowStones as rule } from '../../../language/src/rules/heater/feet-below-stones.js';
import { checkFindings } from '../../support/check.js';

// 8" over the floor and 22" of casing.
test('reports the tier the feet stand on', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        //        ^^^ info: Feet on bench upper are 18" over the floor and the stones of heater stove end at 30"; feet no lower than the stones sit warmer (common practice, no source).
        depth     16"
        in_front_of upper
    }
`));

test('is silent where there is no tier to step on', () => checkFindings(rule, `
    // without bench lower
    bench upper on back {
        build     Slatted
        top       20"
        depth     20"
    }
`));

test('accepts feet level with the stones', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 10"
        depth         11"
        off_wall      2"
        off_floor     8"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    bench lower on back {
        build     Slatted
        top       18"
        depth     16"
        in_front_of upper
    }
`));

test('stays silent while the top is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       
        depth     16"
        in_front_of upper
    }
`));
