import { test } from 'vitest';
import { climbTooHigh as rule } from '../../../language/src/rules/bench/climb-too-high.js';
import { checkFindings } from '../../support/check.js';

// 20" is common practice, no source.
test('reports a bench without a step', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
    //            ^^^ warning: The climb to bench upper is 37" from the floor; 20" at most is needed (common practice, no source). Set the top to 20" or lower, or put a step before it, its top between 17" and 20" over the floor.
        depth     20"
    }
    // without bench lower
`));

test('reports a tier too far over the one below', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 39 1/8"; depth 20" }
    //                                       ^^^^^^^ warning: The climb to bench upper is 20 1/8" from bench lower; 20" at most is needed (common practice, no source). Set the top to 39" or lower, or that of bench lower to 19 1/8" or higher.
    bench lower on back { build Slatted; top 19"; depth 16"; in_front_of upper }
`));

test('accepts a climb of exactly 20"', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 17"; depth 16"; in_front_of upper }
`));

test('stays silent while the step is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top
        depth     16"
    }
`));
