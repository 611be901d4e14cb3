import { test } from 'vitest';
import { benchFigureNotAboveZero as rule } from '../../../language/src/rules/bench/bench-figure-not-above-zero.js';
import { checkFindings } from '../../support/check.js';

test('reports a depth that comes out as zero', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     16" - 16"
    //            ^^^^^^^^^ error: The depth of bench lower is 0"; it has to be above zero. Write the depth the bench has.
        in_front_of upper
    }
`));

test('reports a figure of the bench build at the bench', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 0" }
    bench upper on back { build Trial; top 37"; depth 20" }
    //                          ^^^^^ error: The leg spacing in the bench build of upper is 0"; it has to be above zero. Mend the bench build in the catalogue.
`));

test('accepts a calculation that is above zero', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 32" - 16"; in_front_of upper }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     16" -
        in_front_of upper
    }
`));
