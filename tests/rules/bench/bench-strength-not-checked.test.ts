import { test } from 'vitest';
import { benchStrengthNotChecked as rule } from '../../../language/src/rules/bench/bench-strength-not-checked.js';
import { checkFindings } from '../../support/check.js';

const build = (rail: string, screw = 'bench_screw'): string =>
    `bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 20"; rail ${rail}; ledger alder_2x4; leg alder_2x4; leg_spacing 36"; ledger_screw ${screw}; ledger_screw_rows 3; ledger_screw_spacing 5" }`;

test('reports a stock without a timber once, with all that is made of it', () => checkFindings(rule, `
    stock plain_2x4 { section 1 1/2" x 3 1/2"; lengths 8' }
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 20"; rail plain_2x4; ledger alder_2x4; leg plain_2x4; leg_spacing 36"; ledger_screw bench_screw; ledger_screw_rows 3 }
    bench upper on back { build Trial; top 37"; depth 20" }
    //                          ^^^^^ info: The strength of the rails and legs of bench upper is not checked: stock plain_2x4 names no timber with design values. State what a published table gives, or have it checked by someone who may.
`));
test('reports the values a timber lacks, and checks the rest', () => checkFindings(rule, `
    timber thin { source "test"; bending 1000 psi; elasticity 1000000 psi }
    stock thin_2x4 { section 1 1/2" x 3 1/2"; lengths 8'; timber thin }
    ${build('thin_2x4')}
    bench upper on back { build Trial; top 37"; depth 20" }
    //                          ^^^^^ info: The strength of the rails of bench upper is not checked: timber thin states no shear and compression perpendicular. State what a published table gives, or have it checked by someone who may.
`));
test('reports a screw whose root nobody knows', () => checkFindings(rule, `
    screw odd_screw { length 3 3/4"; diameter 0.242" }
    ${build('alder_2x4', 'odd_screw')}
    bench upper on back { build Trial; top 37"; depth 20" }
    //                          ^^^^^ info: The strength of the ledger screws of bench upper is not checked: screw odd_screw states neither the diameter at its root nor a gauge that tells it. State what a published table gives, or have it checked by someone who may.
`));
test('accepts a build whose every part has its values', () => checkFindings(rule, `
    ${build('alder_2x4')}
    bench upper on back { build Trial; top 37"; depth 20" }
`));
test('stays silent while a value is being typed', () => checkFindings(rule, `
    timber thin {
        source "test"; bending 1000 psi; elasticity 1000000 psi; compression_perpendicular 300 psi
        shear
    }
    stock thin_2x4 { section 1 1/2" x 3 1/2"; lengths 8'; timber thin }
    ${build('thin_2x4')}
    bench upper on back { build Trial; top 37"; depth 20" }
`));
