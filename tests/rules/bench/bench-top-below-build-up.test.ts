import { test } from 'vitest';
import { benchTopBelowBuildUp as rule } from '../../../language/src/rules/bench/bench-top-below-build-up.js';
import { checkFindings, checkFix } from '../../support/check.js';

// 3/4" of slat, 1 1/2" of bearer and 3 1/2" of rail are 5 3/4".
test('reports the top and names the build-up', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       5"
    //            ^^ 💡 error: The top of bench lower is 5" over the floor; slat, cross-bearer and rail need 5 3/4". Set the top to 5 3/4" or higher.
        depth     16"
        in_front_of upper
    }
`));

test('accepts rails that lie on the floor', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 5 3/4"; depth 16"; in_front_of upper }
`));

test('stays silent while the top is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top
        depth     16"
        in_front_of upper
    }
`));

test('a fix sets the top to the build-up', () => checkFix(rule, `
    bench lower on back { build Slatted; top 5"; depth 16"; in_front_of upper }
`, `
    bench lower on back { build Slatted; top 5 3/4"; depth 16"; in_front_of upper }
`));
