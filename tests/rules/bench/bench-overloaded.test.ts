import { test } from 'vitest';
import { benchOverloaded as rule } from '../../../language/src/rules/bench/bench-overloaded.js';
import { checkFindings } from '../../support/check.js';

const trial = (bearers: string, more = ''): string =>
    `bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing ${bearers}; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 36"; ledger_screw bench_screw; ledger_screw_rows 3; ledger_screw_spacing 5"${more} }`;

test('reports slats that span too far, with the spacing that cures it', () => checkFindings(rule, `
    ${trial('40"')}
    bench upper on back {
        build     Trial
    //            ^^^^^ error: The slats of bench upper …
        top       37"
        depth     16"
    }
`));
test('accepts a load that takes all but no more of what is there', () => checkFindings(rule, `
    ${trial('20"')}
    bench upper on back { build Trial; top 37"; depth 20" }
`));
test('says once what several benches of a build have in common', () => checkFindings(rule, `
    ${trial('40"')}
    bench upper on back { build Trial; top 37"; depth 16" }
    //                          ^^^^^ error: The slats of bench upper reach 1973 psi in bending; 1200 psi at most is allowed at 90 °C under one person standing on one foot (common practice, no source). Set the cross-bearers at most 24" apart (bearer_spacing of the bench build); 74 % is taken then. The same in bench lower.
    bench lower on back { build Trial; top 18"; depth 16"; in_front_of upper }
`));
test('asks the accessible load of the accessible bench alone', () => checkFindings(rule, `
    rules us_dwelling, us_accessible
    bench upper on back {
        build     Slatted
    //            ^^^^^^^ error: The slats of bench upper …
        top       18"
        depth     20"
        is_accessible yes
    }
    // without bench lower
`));
test('judges nothing that lacks its design values', () => checkFindings(rule, `
    stock plain_1x4 { section 3/4" x 3 1/2"; lengths 8' }
    bench_build Plain { slat plain_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 40"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 36"; ledger_screw bench_screw; ledger_screw_rows 3; ledger_screw_spacing 5" }
    bench upper on back { build Plain; top 37"; depth 16" }
`));
test('stays silent while the spacing is being typed', () => checkFindings(rule, `
    bench_build Trial {
        slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 36"
        bearer_spacing
    }
    bench upper on back { build Trial; top 37"; depth 20" }
`));
