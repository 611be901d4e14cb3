import { test } from 'vitest';
import { tiersInACircle as rule } from '../../../language/src/rules/bench/tiers-in-a-circle.js';
import { checkFindings } from '../../support/check.js';

test('reports the circle once, at the bench written first', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        in_front_of lower
    //              ^^^^^ error: Benches upper and lower stand in front of each other in a circle: upper in front of lower, lower in front of upper. Leave in_front_of out at the highest of them.
    }
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }
`));

test('reports a bench in front of itself', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of lower }
    //                                                                   ^^^^^ error: Bench lower is said to stand in front of itself. Name the higher tier behind it, or leave in_front_of out.
`));

test('accepts a chain of tiers', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20" }
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }
    bench step on back { build Slatted; top 9"; depth 12"; in_front_of lower }
`));

test('stays silent while a name is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        in_front_of
    }
`));
