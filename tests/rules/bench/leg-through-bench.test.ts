import { test } from 'vitest';
import { legThroughBench as rule } from '../../../language/src/rules/bench/leg-through-bench.js';
import { checkFindings } from '../../support/check.js';

// The upper bench ends 16 1/2" off the right wall, where the lower one, 20" deep, stands.
test('reports the legs together, at their bench', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from left 0" }
    //@ 1-12 error: Legs UPPER-LEG-2 and UPPER-LEG-4 of bench upper would pass through bench lower. End one bench at the other, or carry upper to the wall on a ledger.
    bench lower on right { build Slatted; top 18"; depth 20" }
`));

test('accepts legs beside the lower bench', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; length 56 1/2"; from left 0" }
    bench lower on right { build Slatted; top 18"; depth 20" }
`));

test('accepts legs notched for the tier in front', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 20"; in_front_of upper; overlap 2" }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        from      left 0"
        length
    }
    bench lower on right { build Slatted; top 18"; depth 20" }
`));
