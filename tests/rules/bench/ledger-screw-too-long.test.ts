import { test } from 'vitest';
import { ledgerScrewTooLong as rule } from '../../../language/src/rules/bench/ledger-screw-too-long.js';
import { checkFindings } from '../../support/check.js';

// Ledger 1 1/2" and 3 1/4" of wall before the facing are 4 3/4".
test('reports the bench build and names the screws that fit', () => checkFindings(rule, `
    screw long_screw { length 5"; penetration 1 1/4" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw long_screw }
    bench upper on back {
        build     Trial
    //            ^^^^^ error: Screw long_screw in the ledgers of bench upper is 5" long; 4 3/4" at most is needed to stay behind the facing. Name a screw of 3 1/2" to 4 3/4" in the bench build.
        top       37"
        depth     20"
    }
`));

test('accepts a screw that ends at the facing', () => checkFindings(rule, `
    screw right_screw { length 4 3/4"; penetration 1 1/4" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw right_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
`));

test('stays silent while the screw is being typed', () => checkFindings(rule, `
    screw long_screw {
        length
    }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw long_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
`));
