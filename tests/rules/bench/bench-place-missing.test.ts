import { test } from 'vitest';
import { benchPlaceMissing as rule } from '../../../language/src/rules/bench/bench-place-missing.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the length and offers both sides', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        length    60"
    //            ^^^ 💡 error: Bench upper is 60" long and leaves 16 1/2" of the back wall over, but nothing says on which side. Add from left 0" or from right 0".
    }
`));

test('accepts a length of the whole wall without a place', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; length 76 1/2" }
`));

test('accepts an L, which starts in its corner', () => checkFindings(rule, `
    bench lower on back, left { build Slatted; top 18"; depth 16"; in_front_of upper; length 60" }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        length    60"
        from
    }
`));

test('a fix starts the bench at a wall', () => checkFix(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; length 60" }
`, `
    bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from left 0" }
`));
