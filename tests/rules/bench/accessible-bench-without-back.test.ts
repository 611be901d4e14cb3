import { test } from 'vitest';
import { accessibleBenchWithoutBack as rule } from '../../../language/src/rules/bench/accessible-bench-without-back.js';
import { checkFindings } from '../../support/check.js';

// 2 1/2": ADA Standards 2010, 903.4.
test('reports the bench that stands in front of another', () => checkFindings(rule, `
    rules us_accessible
    bench lower on back {
        build     Slatted
        top       18"
        depth     20"
        in_front_of upper
    //              ^^^^^ error: The rear edge of accessible bench lower is 20" off the back wall; a back or a wall within 2 1/2" of it is needed (ADA Standards 2010, 903.4). Set the bench against a wall.
        is_accessible yes
    }
`));

test('accepts a bench 2 1/2" off the wall', () => checkFindings(rule, `
    rules us_accessible
    bench_build Trial { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger larch_2x4; leg alder_2x4; wall_gap 2 1/2" }
    bench lower on left { build Trial; top 18"; depth 20"; is_accessible yes }
`));

test('stays silent while the fact is being typed', () => checkFindings(rule, `
    rules us_accessible
    bench lower on back {
        build     Slatted
        top       18"
        depth     20"
        in_front_of upper
        is_accessible
    }
`));
