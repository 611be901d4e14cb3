import { test } from 'vitest';
import { seatDeeperThanThighs as rule } from '../../../language/src/rules/bench/seat-deeper-than-thighs.js';
import { checkFindings } from '../../support/check.js';

// Body measures: ANSUR II 2012, public data set.
test('reports the depth', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p5_woman }
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        //        ^^^ info: Bench upper is 20" deep; 441 mm (≈17 11/32") (buttock–popliteal length of a 5th percentile woman, ANSUR II 2012) is the most with which they lean back. Make it less deep, add a back rest before the wall, or leave it so where people lie.
    }
`));
test('accepts exactly the thigh', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p5_woman }
    bench upper on back { build Slatted; top 37"; depth 441 mm }
`));
test('a tenth of a millimetre more is told', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p5_woman }
    bench upper on back { build Slatted; top 37"; depth 441.1 mm }
    //                                                  ^^^^^^^^ info: Bench upper is …
`));
test('stays silent while it is being typed', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p95_man, p5_woman }
    bench upper on back {
        build     Slatted
        top       37"
        depth
    }
`));
test('nobody is asked of when the room names nobody', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right;  }
`));
test('people that are being typed are nobody', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits }
`));
