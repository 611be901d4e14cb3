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
    bench lower on back { build Slatted; top 19"; depth 16"; in_front_of upper }
`));

// The climb from bench lower, 18", may be 20": 38". Common practice, no source.
test('names a top that serves the climb as well', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       60"
    //            ^^^ 💡 warning: Head clearance over bench upper is 20 1/4"; 42" is needed (common practice, no source). Set the top to 38" or lower for the heads and the climb together.
        depth     20"
    }
`));
test('says that a step is needed where heads are clear and the climb is not', () => checkFindings(rule, `
    // without bench lower
    bench upper on back {
        build     Slatted
        top       60"
    //            ^^^ 💡 warning: Head clearance over bench upper is 20 1/4"; 42" is needed (common practice, no source). Set the top to 38 1/4" or lower and put a step before it, as the climb may be 20" at most.
        depth     20"
    }
`));
test('a fix serves the climb as well', () => checkFix(rule, `
    bench upper on back { build Slatted; top 60"; depth 20" }
`, `
    bench upper on back { build Slatted; top 38"; depth 20" }
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
    bench lower on back { build Slatted; top 19"; depth 16"; in_front_of upper }
`, `
    bench upper on back { build Slatted; top 38 1/4"; depth 20" }
`));
