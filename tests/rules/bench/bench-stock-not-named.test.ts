import { test } from 'vitest';
import { benchStockNotNamed as rule } from '../../../language/src/rules/bench/bench-stock-not-named.js';
import { checkFindings } from '../../support/check.js';

test('reports a fascia without stock', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
    bench upper on back {
        build     Trial
        top       37"
        depth     20"
        fascia    yes
    //            ^^^ error: Bench upper has a fascia, and its bench build Trial names no stock for one. Choose a bench build that does, or leave the fascia out.
    }
`));

test('reports a back rest without stock', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
    bench upper on back { build Trial; top 37"; depth 20"; back_rest 12" }
    //                                                               ^^^ error: Bench upper has a back rest, and its bench build Trial names no stock for one. Choose a bench build that does, or leave the back rest out.
`));

test('accepts a bench build that names both', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; fascia yes; back_rest 12" }
`));

test('stays silent while the stock is being typed', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4
        fascia
    }
    bench upper on back { build Trial; top 37"; depth 20"; fascia yes }
`));
