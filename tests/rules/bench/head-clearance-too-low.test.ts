import { test } from 'vitest';
import { headClearanceTooLow as rule } from '../../../language/src/rules/bench/head-clearance-too-low.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The ceiling lining is 80 1/4" over the floor. 42" is common practice, no source.
test('reports the top and names the highest that leaves enough', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       39"
    //            ^^^ 💡 warning: Head clearance over bench upper is 41 1/4"; 42" is needed (common practice, no source). Set the top to 38 1/4" or lower, or the height of the room to 84 3/4" or more.
        depth     20"
    }
`));

test('accepts exactly 42"', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 38 1/4"; depth 20" }
`));

test('stays silent while the top is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top
        depth     20"
    }
`));

test('a fix lowers the top', () => checkFix(rule, `
    bench upper on back { build Slatted; top 39"; depth 20" }
`, `
    bench upper on back { build Slatted; top 38 1/4"; depth 20" }
`));
