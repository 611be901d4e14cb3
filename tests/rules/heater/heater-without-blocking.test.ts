import { test } from 'vitest';
import { heaterWithoutBlocking as rule } from '../../../language/src/rules/heater/heater-without-blocking.js';
import { checkFindings } from '../../support/check.js';

// 8" over the floor and 18" up the casing.
test('reports the heater with the height of its screws', () => checkFindings(rule, `
    heater stove on right {
    //@ 1-13 error: Heater stove hangs on screws 26" over the floor with no blocking behind the lining; solid wood at least 1 1/4" thick is needed (the least penetration of the screw). Write backing and the thickness of the wood.
        model     Tarn60
        from      front 8"
        guard     yes
    }
`));

test('a thickness of nothing is none', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   0"
        //        ^^ error: Heater stove hangs on screws 26" over the floor with no blocking behind the lining; solid wood at least 1 1/4" thick is needed …
    }
`));

test('accepts any blocking; whether it is enough is said by heater-screw-too-short', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1/2"
    }
`));

test('stays silent while the blocking is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing
    }
`));
