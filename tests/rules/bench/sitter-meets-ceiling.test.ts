import { test } from 'vitest';
import { sitterMeetsCeiling as rule } from '../../../language/src/rules/bench/sitter-meets-ceiling.js';
import { checkFindings } from '../../support/check.js';

// Body measures: ANSUR II 2012, public data set.
test('reports the clearance', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 6'6"; ceiling spans_left_to_right; fits p5_woman, p95_man }
    bench upper on back {
        build     Slatted
        top       37"
        //        ^^^ info: Over bench upper there are 37 1/4" to the ceiling; 977 mm (≈38 15/32") (sitting height of a 95th percentile man, ANSUR II 2012) is needed to sit upright. Lower the bench, or make the room higher.
        depth     20"
    }
`));
// 977 mm under a ceiling 74 1/4" (1885.95 mm) high leave a bench at 908.95 mm.
test('accepts exactly the sitting height', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 6'6"; ceiling spans_left_to_right; fits p95_man }
    bench upper on back { build Slatted; top 908.95 mm; depth 20" }
`));
test('a tenth of a millimetre less is told', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 6'6"; ceiling spans_left_to_right; fits p95_man }
    bench upper on back { build Slatted; top 908.96 mm; depth 20" }
    //                                       ^^^^^^^^^ info: Over bench upper there are …
`));
test('smaller people sit upright there', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 6'6"; ceiling spans_left_to_right; fits p5_woman, p50_man }
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
