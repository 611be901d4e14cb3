import { test } from 'vitest';
import { benchOutsideRoom as rule } from '../../../language/src/rules/bench/bench-outside-room.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The standard room is 76 1/2" x 72" x 80 1/4" between its linings: 84" x 79 1/2" x 84" less 3 3/4" of wall on each side and of ceiling.
test('reports the length and names the longest that fits', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        from      left 0"
        length    80"
    //            ^^^ 💡 error: Bench upper runs 3 1/2" past the lining of the right wall. The length is 76 1/2" at most here.
    }
`));

test('reports the depth of a bench that crosses the room', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 74" }
    //                                                  ^^^ error: Bench upper runs 2" past the lining of the front wall. The depth is 72" at most here.
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }
`));

test('reports a top above the ceiling', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 81"; depth 20" }
    //                                       ^^^ error: Bench upper runs 3/4" past the lining of the ceiling. The top is 80 1/4" at most here.
`));

test('accepts a bench from lining to lining', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; from left 0"; length 76 1/2" }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        from      left 0"
        length
    }
`));

test('a fix shortens the bench to the room', () => checkFix(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; from left 0"; length 80" }
`, `
    bench upper on back { build Slatted; top 37"; depth 20"; from left 0"; length 76 1/2" }
`));
