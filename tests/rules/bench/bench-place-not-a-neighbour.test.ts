import { test } from 'vitest';
import { benchPlaceNotANeighbour as rule } from '../../../language/src/rules/bench/bench-place-not-a-neighbour.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the place and offers the neighbours', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        length    60"
        from      front 8"
    //            ^^^^^^^^ 💡 error: Bench upper on the back wall is measured from the front wall; the back wall ends at the left and right walls. Measure from one of these.
    }
`));

test('accepts either neighbour', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from right 8" }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        length    60"
        from      front
    }
`));

test('a fix measures from a neighbour', () => checkFix(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from front 8" }
`, `
    bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from left 8" }
`));
