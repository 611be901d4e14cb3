import { test } from 'vitest';
import { windowTrimInBench as rule } from '../../../language/src/rules/opening/window-trim-in-bench.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The trim of View18 is 3/4" thick; the upper bench runs from lining to lining, 37" high and 20" deep.
test('reports the window whose trim the end of a bench runs into', () => checkFindings(rule, `
    window view on left {
    //@ 1-12 💡 warning: The trim of window view stands 3/4" proud of the left wall, and bench upper runs 3/4" into it. Set the sill to 39 1/2" or higher, or move the window 19 1/2" toward the front wall, or use a bench build whose wall_gap is 3/4" or more, or choose a window without trim.
        model     View18
        from      back 3"
        sill      30"
    }
`));

test('accepts trim that ends at the top of the bench, or before its front edge', async () => {
    await checkFindings(rule, 'window view on left { model View18; from back 3"; sill 39 1/2" }');
    await checkFindings(rule, 'window view on left { model View18; from back 22 1/2"; sill 40" }');
});

test('accepts a bench that keeps the thickness of the trim off the lining', () => checkFindings(rule, `
    bench_build Clear { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; wall_gap 3/4" }
    bench upper on back { build Clear; top 37"; depth 20" }
    window view on left { model View18; from back 3"; sill 30" }
`));

test('stays silent while the sill is being typed', () => checkFindings(rule, `
    window view on left {
        model     View18
        from      back 3"
        sill
    }
`));

test('stays silent while the gap of the bench build is being typed', () => checkFindings(rule, `
    bench_build Clear { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; wall_gap }
    bench upper on back { build Clear; top 37"; depth 20" }
    window view on left { model View18; from back 3"; sill 30" }
`));

test('a fix lifts the trim over the bench', () => checkFix(rule, `
    window view on left { model View18; from back 3"; sill 30" }
`, `
    window view on left { model View18; from back 3"; sill 39 1/2" }
`));
