import { test } from 'vitest';
import { accessibleSeatHeightWrong as rule } from '../../../language/src/rules/bench/accessible-seat-height-wrong.js';
import { checkFindings, checkFix } from '../../support/check.js';

// 17" to 19": ADA Standards 2010, 903.5.
test('reports a seat too high', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left {
        build     Slatted
        top       20"
    //            ^^^ 💡 error: The seat of accessible bench lower is 20" over the floor; 19" at most is needed (ADA Standards 2010, 903.5). Set the top between 17" and 19".
        depth     20"
        is_accessible yes
    }
`));

test('reports a seat too low', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 16 7/8"; depth 20"; is_accessible yes }
    //                                       ^^^^^^^ 💡 error: The seat of accessible bench lower is 16 7/8" over the floor; 17" at least is needed (ADA Standards 2010, 903.5). Set the top between 17" and 19".
`));

test('accepts exactly 17"', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 17"; depth 20"; is_accessible yes }
`));

test('accepts exactly 19"', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 19"; depth 20"; is_accessible yes }
`));

test('stays silent while the top is being typed', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left {
        build     Slatted
        top
        depth     20"
        is_accessible yes
    }
`));

test('a fix sets the limit that was passed', () => checkFix(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 20"; depth 20"; is_accessible yes }
`, `
    rules us_accessible
    bench lower on left { build Slatted; top 19"; depth 20"; is_accessible yes }
`));
