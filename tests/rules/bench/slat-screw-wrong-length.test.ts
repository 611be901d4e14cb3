import { test } from 'vitest';
import { slatScrewWrongLength as rule } from '../../../language/src/rules/bench/slat-screw-wrong-length.js';
import { checkFindings } from '../../support/check.js';

// Bearer 1 1/2" and slat 3/4" are 2 1/4".
test('reports a screw that comes out of the seat', () => checkFindings(rule, `
    screw long_screw { length 2 3/8" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; slat_screw long_screw }
    bench upper on back {
        build     Trial
    //            ^^^^^ error: Screw long_screw in the slats of bench upper is 2 3/8" long and comes out of the seat; more than 1 1/2" of bearer and 2 1/4" at most, where the slat ends, is needed. Name another screw in the bench build.
        top       37"
        depth     20"
    }
`));

test('reports a screw that ends in the bearer', () => checkFindings(rule, `
    screw short_screw { length 1 1/2" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; slat_screw short_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
    //                          ^^^^^ error: Screw short_screw in the slats of bench upper is 1 1/2" long and ends in the bearer; more than 1 1/2" of bearer and 2 1/4" at most, where the slat ends, is needed. Name another screw in the bench build.
`));

test('accepts a screw that ends in the slat', () => checkFindings(rule, `
    screw right_screw { length 2 1/4" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; slat_screw right_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
`));

test('stays silent while the screw is being typed', () => checkFindings(rule, `
    screw long_screw {
        length
    }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; slat_screw long_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
`));
