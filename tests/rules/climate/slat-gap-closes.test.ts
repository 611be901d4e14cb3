import { test } from 'vitest';
import { slatGapCloses as rule } from '../../../language/src/rules/climate/slat-gap-closes.js';
import { checkFindings } from '../../support/check.js';

const tight = 'bench_build Tight { slat alder_1x4; slat_gap 1/32" to 1/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }';
// Wood Handbook, table 13-5: red alder 0.256 % for each per cent along the rings; 3 1/2" x 0.00256 x 11.3 = 0.101".
test('gaps of a sixteenth', () => checkFindings(rule, `
    ${tight}
    bench upper on back {
        build Tight
        top   37"
        depth 17 3/4"
        //    ^^^^^^^ warning: Bench upper has gaps of 1.59 mm; washed down its slats swell by 2.56 mm, from 9.3 to 20.5 % (Wood Handbook, FPL-GTR-282 2021, table 13-5). Choose a depth with wider gaps, or narrower slats.
    }
`));
test('accepts an eighth', () => checkFindings(rule, `
    ${tight}
    bench upper on back { build Tight; top 37"; depth 18" }
`));
test('stays silent while the depth is being typed', () => checkFindings(rule, `
    ${tight}
    bench upper on back { build Tight; top 37"; depth 17 3/ }
`));
