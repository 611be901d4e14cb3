import { test } from 'vitest';
import { headClearanceGenerous as rule } from '../../../language/src/rules/bench/head-clearance-generous.js';
import { checkFindings } from '../../support/check.js';

// The ceiling lining is 80 1/4" over the floor. 47" is common practice, no source.
test('hints at a top that could be higher', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       32"
    //            ^^^ hint: Head clearance over bench upper is 48 1/4"; 47" at most is usual (common practice, no source). A top at 33 1/4" or higher sits in warmer air, and a lower room heats sooner.
        depth     20"
    }
`));

test('accepts exactly 47"', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 33 1/4"; depth 20" }
`));

test('leaves an accessible bench alone', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 18"; depth 20"; is_accessible yes }
    // without bench lower
`));

test('stays silent while the upper bench is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top
        depth     20"
    }
`));
