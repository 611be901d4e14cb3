import { test } from 'vitest';
import { tiersOverlap as rule } from '../../../language/src/rules/bench/tiers-overlap.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The rails of the upper bench reach from 31 1/4" (37" less 3/4" of slat, 1 1/2" of bearer and 3 1/2" of rail) to 37".
test('reports the overlap that brings two tiers into one space', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       34"
        depth     16"
        in_front_of upper
        overlap   4"
    //            ^^ 💡 error: Benches lower and upper both fill a space of 76 1/2" x 4" x 2 3/4" (along the front x to the back x up). Take the overlap away, or set the top of lower to 31 1/4" or lower, where the rails of upper begin.
    }
`));

test('reports benches of two walls in one corner', () => checkFindings(rule, `
    bench lower on right { build Slatted; top 35"; depth 20" }
    //@ 1-12 error: Benches lower and upper both fill a space of 20" x 20" x 3 3/4" (along the front x to the back x up). Set the top of lower to 31 1/4" or lower, where the rails of upper begin.
`));

test('accepts a lower tier that ends where the rails of the upper begin', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 31 1/4"; depth 16"; in_front_of upper; overlap 4" }
`));

test('stays silent while the overlap is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       34"
        depth     16"
        in_front_of upper
        overlap
    }
`));

test('a fix takes the overlap away', () => checkFix(rule, `
    bench lower on back { build Slatted; top 34"; depth 16"; in_front_of upper; overlap 4" }
`, `
    bench lower on back { build Slatted; top 34"; depth 16"; in_front_of upper; overlap 0" }
`));
