import { test } from 'vitest';
import { benchRunTooShort as rule } from '../../../language/src/rules/bench/bench-run-too-short.js';
import { checkFindings } from '../../support/check.js';

// A bearer of 3 1/2" and a ledger of 1 1/2" at each end are 10".
test('reports the length', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        from      left 0"
        length    9 7/8"
    //            ^^^^^^ error: Bench upper is 9 7/8" long on the back wall; 10" is needed for a bearer and a ledger at each end. Make it longer, or leave this run out.
    }
`));

test('accepts exactly 10"', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; from left 0"; length 10" }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        from      left 0"
        length
    }
`));
