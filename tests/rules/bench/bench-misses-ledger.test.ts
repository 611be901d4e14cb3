import { test } from 'vitest';
import { benchMissesLedger as rule } from '../../../language/src/rules/bench/bench-misses-ledger.js';
import { checkFindings } from '../../support/check.js';

// The ledgers are 1 1/2" thick.
test('reports the bench build at the bench', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; wall_gap 1 1/2" }
    bench upper on back {
        build     Trial
    //            ^^^^^ error: Bench upper keeps 1 1/2" off the lining and its ledgers are 1 1/2" thick, so it misses them; a smaller gap is needed. Choose another bench build, or mend its wall_gap.
        top       37"
        depth     20"
    }
`));

test('accepts a gap that leaves some ledger', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; wall_gap 1 3/8" }
    bench upper on back { build Trial; top 37"; depth 20" }
`));

test('stays silent while the gap is being typed', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4
        wall_gap
    }
    bench upper on back { build Trial; top 37"; depth 20" }
`));
