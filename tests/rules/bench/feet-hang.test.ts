import { test } from 'vitest';
import { feetHang as rule } from '../../../language/src/rules/bench/feet-hang.js';
import { checkFindings } from '../../support/check.js';

// Body measures: ANSUR II 2012, public data set.
test('reports the seat and the tier before it', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p5_woman }
    bench upper on back {
        build     Slatted
        top       37"
        //        ^^^ info: Bench upper is 19" above bench lower; feet reach down 350 mm (≈13 3/4") (popliteal height of a 5th percentile woman, ANSUR II 2012). Set something for feet before it, or lower the bench.
        depth     20"
    }
    bench lower on back {
        build     Slatted
        top       18"
        //        ^^^ info: Bench lower is 18" above the floor; feet reach down 350 mm…
        depth     16"
        in_front_of upper
    }
`));
test('accepts exactly the popliteal height', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p50_man }
    bench upper on back { build Slatted; top 860 mm; depth 20" }
    bench lower on back { build Slatted; top 430 mm; depth 16"; in_front_of upper }
`));
test('a tenth of a millimetre more is told', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p50_man }
    bench upper on back { build Slatted; top 860 mm; depth 20" }
    bench lower on back { build Slatted; top 430.1 mm; depth 16"; in_front_of upper }
    //                                       ^^^^^^^^ info: Bench lower is …
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
test('an accessible seat is not to be lowered', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; fits p5_woman }
    bench lower on back { build Slatted; top 18"; depth 16"; is_accessible yes }
    //                                       ^^^ info: Bench lower is 18" above the floor; feet reach down 350 mm (≈13 3/4") (popliteal height of a 5th percentile woman, ANSUR II 2012). Set something for feet before it; the height of an accessible seat stays.
    // without bench upper
`));
