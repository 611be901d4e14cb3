import { test } from 'vitest';
import { noWallBehindBench as rule } from '../../../language/src/rules/bench/no-wall-behind-bench.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the load path of a bench in front of another', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     16"
        in_front_of upper
        load_path back_ledger_and_legs
    //            ^^^^^^^^^^^^^^^^^^^^ 💡 error: Bench lower stands 20" off the back wall; a back ledger has to be screwed to the wall behind it. Carry it on end ledgers.
    }
`));

test('reports a back rest in front of another bench', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper; back_rest 12" }
    //                                                                                    ^^^ error: Bench lower stands 20" off the back wall; a back rest has to be screwed to the wall behind it. Leave its back rest out; the tier behind is its back.
`));

test('reports the load path of the bench build at the bench', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; load_path back_ledger_and_legs }
    bench lower on back { build Trial; top 18"; depth 16"; in_front_of upper }
    //                          ^^^^^ 💡 error: Bench lower stands 20" off the back wall; a back ledger has to be screwed to the wall behind it. Carry it on end ledgers.
`));

test('accepts a back ledger at the wall', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; load_path back_ledger_and_legs; back_rest 12" }
`));

test('stays silent while the load path is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     16"
        in_front_of upper
        load_path
    }
`));

test('a fix carries the bench on end ledgers', () => checkFix(rule, `
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper; load_path back_ledger_and_legs }
`, `
    bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper; load_path end_ledgers }
`));

test('a fix adds the load path where the bench build states another', () => checkFix(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; load_path back_ledger_and_legs }
    bench lower on back { build Trial; top 18"; depth 16"; in_front_of upper }
`, `
    bench lower on back { build Trial; load_path end_ledgers; top 18"; depth 16"; in_front_of upper }
`));
