import { test } from 'vitest';
import { tierBehindOnAnotherWall as rule } from '../../../language/src/rules/bench/tier-behind-on-another-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the name and offers the bench on the same wall', () => checkFindings(rule, `
    bench side on left { build Slatted; top 30"; depth 16"; from front 0"; length 20" }
    bench lower on back {
        build     Slatted
        top       18"
        depth     16"
        in_front_of side
    //              ^^^^ 💡 error: Bench side stands on the left wall and bench lower, said to stand in front of it, on the back wall; a tier behind on the same wall is needed. Name upper, which is higher on the same wall.
    }
`));

test('accepts an L that shares one wall', () => checkFindings(rule, `
    bench lower on left, back { build Slatted; top 18"; depth 16"; in_front_of upper }
`));

test('stays silent while the name is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     16"
        in_front_of
    }
`));

test('a fix names the bench on the same wall', () => checkFix(rule, `
    bench side on left { build Slatted; top 30"; depth 16"; from front 0"; length 20" }
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of side }
`, `
    bench side on left { build Slatted; top 30"; depth 16"; from front 0"; length 20" }
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }
`));
