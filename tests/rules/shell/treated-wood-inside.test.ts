import { test } from 'vitest';
import { treatedWoodInside as rule } from '../../../language/src/rules/shell/treated-wood-inside.js';
import { checkFindings } from '../../support/check.js';

test('reports the bench that uses it', () => checkFindings(rule, `
    stock dipped_slat { section 3/4" x 3 1/2"; lengths 8'; treated treated }
    bench_build Dipped { slat dipped_slat; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
    bench upper on back {
        build     Dipped
        //        ^^^^^^ error: Bench slats are cut from dipped_slat, which is treated; no treated face may be exposed to the hot room (common practice, no source). Name untreated stock.
        top       37"
        depth     20"
    }
`));

test('accepts wood that is durable by nature', () => checkFindings(rule, `
    stock dipped_slat { section 3/4" x 3 1/2"; lengths 8'; treated durable }
    bench_build Dipped { slat dipped_slat; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
    bench upper on back { build Dipped; top 37"; depth 20" }
`));

test('stays silent while the treatment is being typed', () => checkFindings(rule, `
    stock dipped_slat { section 3/4" x 3 1/2"; lengths 8'; treated  }
    bench_build Dipped { slat dipped_slat; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
    bench upper on back { build Dipped; top 37"; depth 20" }
`));
