import { test } from 'vitest';
import { accessibleBenchDepthWrong as rule } from '../../../language/src/rules/bench/accessible-bench-depth-wrong.js';
import { checkFindings, checkFix } from '../../support/check.js';

// 20" to 24": ADA Standards 2010, 903.3.
test('reports a bench too shallow', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left {
        build     Slatted
        top       18"
        depth     19 7/8"
    //            ^^^^^^^ 💡 error: Accessible bench lower is 19 7/8" deep; 20" at least is needed (ADA Standards 2010, 903.3). Set the depth between 20" and 24".
        is_accessible yes
    }
`));

test('reports a bench too deep', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 24 1/8"; is_accessible yes }
    //                                                  ^^^^^^^ 💡 error: Accessible bench lower is 24 1/8" deep; 24" at most is needed (ADA Standards 2010, 903.3). Set the depth between 20" and 24".
`));

test('accepts exactly 20"', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 20"; is_accessible yes }
`));

test('accepts exactly 24"', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 24"; is_accessible yes }
`));

test('leaves practice for other benches to its own rule', () => checkFindings(rule, `
    rules us_accessible, good_practice
    bench upper on back { build Slatted; top 37"; depth 16" }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left {
        build     Slatted
        top       18"
        depth
        is_accessible yes
    }
`));

test('a fix sets the limit that was passed', () => checkFix(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 26"; is_accessible yes }
`, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 24"; is_accessible yes }
`));
