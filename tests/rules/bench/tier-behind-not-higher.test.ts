import { test } from 'vitest';
import { tierBehindNotHigher as rule } from '../../../language/src/rules/bench/tier-behind-not-higher.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the name and offers the higher bench', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     16"
        in_front_of step
    //              ^^^^ 💡 error: Bench step is 9" high and bench lower, said to stand in front of it, 18"; a higher tier is needed behind. Name upper, which is higher on the same wall.
    }
    bench step on back { build Slatted; top 9"; depth 12" }
`));

test('reports tiers of equal height', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 37"; depth 16"; in_front_of upper }
    //                                                                   ^^^^^ error: Bench upper is 37" high and bench lower, said to stand in front of it, 37"; a higher tier is needed behind. No bench on its wall is higher, so leave in_front_of out.
`));

test('accepts a tier that is higher by 1/8"', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 36 7/8"; depth 16"; in_front_of upper }
`));

test('stays silent while the top is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top
        depth     16"
        in_front_of upper
    }
`));

test('a fix names the higher bench', () => checkFix(rule, `
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of step }
    bench step on back { build Slatted; top 9"; depth 12" }
`, `
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }
    bench step on back { build Slatted; top 9"; depth 12" }
`));
