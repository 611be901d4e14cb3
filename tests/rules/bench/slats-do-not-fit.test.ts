import { test } from 'vitest';
import { slatsDoNotFit as rule } from '../../../language/src/rules/bench/slats-do-not-fit.js';
import { checkFindings, checkFix } from '../../support/check.js';

// Four slats of 3 1/2" are 14"; three leave gaps of 1 1/2", over the 3/4" the build allows.
test('reports the depth and names the nearest that do', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     13 1/2"
        //        ^^^^^^^ 💡 error: Bench lower is 13 1/2" deep, and no number of slats fills that with equal gaps of 1/4" to 3/4" (the gap limits of its bench build). The nearest depths that do are 12" and 14 3/4".
        in_front_of upper
    }
`));

test('accepts the smallest gap: four slats and three gaps of 1/4" are 14 3/4"', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 14 3/4"; in_front_of upper }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth
    }
`));

test('a fix sets the depth to the nearest that fits', () => checkFix(rule, `
    bench lower on back { build Slatted; top 18"; depth 13 1/2"; in_front_of upper }
`, `
    bench lower on back { build Slatted; top 18"; depth 14 3/4"; in_front_of upper }
`, 'Set the depth to 14 3/4"'));
