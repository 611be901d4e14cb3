import { test } from 'vitest';
import { bearersCloserThanWide as rule } from '../../../language/src/rules/bench/bearers-closer-than-wide.js';
import { checkFindings } from '../../support/check.js';

// A 2x4 laid flat is 3 1/2" wide.
test('reports the bench build at the bench', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 3"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
    bench upper on back {
        build     Trial
    //            ^^^^^ error: The cross-bearers of bench upper stand 3" apart between centres and are 3 1/2" wide; 3 1/2" at least is needed. Choose another bench build, or mend its bearer_spacing.
        top       37"
        depth     20"
    }
`));

test('accepts bearers that touch', () => checkFindings(rule, `
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 3 1/2"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }
    bench upper on back { build Trial; top 37"; depth 20" }
`));

test('stays silent while the spacing is being typed', () => checkFindings(rule, `
    bench_build Trial {
        slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; rail alder_2x4; ledger alder_2x4; leg alder_2x4
        bearer_spacing
    }
    bench upper on back { build Trial; top 37"; depth 20" }
`));
