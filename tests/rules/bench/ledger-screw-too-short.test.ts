import { test } from 'vitest';
import { ledgerScrewTooShort as rule } from '../../../language/src/rules/bench/ledger-screw-too-short.js';
import { checkFindings } from '../../support/check.js';

// Ledger 1 1/2", lining 3/4" and 1 1/4" of penetration are 3 1/2". 1" where the screw states none is common practice, no source.
test('reports the bench build and adds up what is needed', () => checkFindings(rule, `
    screw short_screw { length 3 3/8"; penetration 1 1/4" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw short_screw }
    bench upper on back {
        build     Trial
    //            ^^^^^ error: Screw short_screw in the ledgers of bench upper is 3 3/8" long; 3 1/2" is needed: 1 1/2" of ledger, 3/4" of lining, 1 1/4" in the frame (the least penetration of the screw). Name a screw of 3 1/2" to 4 3/4" in the bench build.
        top       37"
        depth     20"
    }
`));

test('says it once for benches of one build', () => checkFindings(rule, `
    screw short_screw { length 3" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw short_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
    //                          ^^^^^ error: Screw short_screw in the ledgers of benches upper and lower is 3" long; 3 1/4" is needed: 1 1/2" of ledger, 3/4" of lining, 1" in the frame (common practice, no source). Name a screw of 3 1/4" to 4 3/4" in the bench build.
    bench lower on back { build Trial; top 18"; depth 16"; in_front_of upper }
`));

test('says when no screw fits', () => checkFindings(rule, `
    screw long_screw { length 5"; penetration 3" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw long_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
    //                          ^^^^^ error: Screw long_screw in the ledgers of bench upper is 5" long; 5 1/4" is needed: 1 1/2" of ledger, 3/4" of lining, 3" in the frame (the least penetration of the screw). No length holds in this wall and stays behind its facing: carry the bench on legs, or build it on another wall.
`));

test('accepts exactly what is needed', () => checkFindings(rule, `
    screw right_screw { length 3 1/2"; penetration 1 1/4" }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw right_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
`));

test('stays silent while the screw is being typed', () => checkFindings(rule, `
    screw short_screw {
        length
    }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw short_screw }
    bench upper on back { build Trial; top 37"; depth 20" }
`));
