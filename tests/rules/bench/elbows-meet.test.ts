import { test } from 'vitest';
import { elbowsMeet as rule } from '../../../language/src/rules/bench/elbows-meet.js';
import { checkFindings } from '../../support/check.js';

// Body measures: ANSUR II 2012, public data set.
test('reports the seats', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p95_man }
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        from      left 0"
        length    72"
        //        ^^^ info: Bench upper counts 3 seats; 2 people sit on it without touching when each takes 666.95 mm (≈26 9/32") (forearm–forearm breadth of a 95th percentile man, ANSUR II 2012). Count on 2, or make it longer.
    }
    bench lower on back { build Slatted; top 18"; depth 16"; length 47"; from left 0"; in_front_of upper }
`));
// Twice 666.95 mm.
test('accepts exactly two breadths for two', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p95_man }
    bench upper on back { build Slatted; top 37"; depth 20"; length 1333.9 mm; from left 0" }
    bench lower on back { build Slatted; top 18"; depth 16"; length 1333.9 mm; from left 0"; in_front_of upper }
`));
test('a tenth of a millimetre less is told', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p95_man }
    bench upper on back { build Slatted; top 37"; depth 20"; length 1333.8 mm; from left 0" }
    //                                                              ^^^^^^^^^ info: Bench upper counts 2 seats; 1 …
    bench lower on back { build Slatted; top 18"; depth 16"; length 1333.9 mm; from left 0"; in_front_of upper }
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
