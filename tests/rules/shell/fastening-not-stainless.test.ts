import { test } from 'vitest';
import { fasteningNotStainless as rule } from '../../../language/src/rules/shell/fastening-not-stainless.js';
import { checkFindings } from '../../support/check.js';

test('reports the bench that uses the screw', () => checkFindings(rule, `
    screw zinc_screw { length 2 3/4"; material zinc }
    bench_build Rusty { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw zinc_screw }
    bench upper on back {
        build     Rusty
        //        ^^^^^ warning: The ledger screw zinc_screw is zinc; stainless is needed in a hot room (common practice, no source). Name a stainless screw.
        top       37"
        depth     20"
    }
`));

test('accepts stainless', () => checkFindings(rule, `
    screw zinc_screw { length 2 3/4"; material stainless }
    bench_build Rusty { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw zinc_screw }
    bench upper on back { build Rusty; top 37"; depth 20" }
`));

test('stays silent while the material is being typed', () => checkFindings(rule, `
    screw zinc_screw { length 2 3/4"; material  }
    bench_build Rusty { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw zinc_screw }
    bench upper on back { build Rusty; top 37"; depth 20" }
`));
