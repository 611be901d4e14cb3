import { test } from 'vitest';
import { accessibleBenchFloorNotClear as rule } from '../../../language/src/rules/bench/accessible-bench-floor-not-clear.js';
import { checkFindings } from '../../support/check.js';

// 30" x 48" at the end of the bench: ADA Standards 2010, 903.2 and 305.3. The left wall is 72" long between linings.
test('reports a bench from wall to wall', () => checkFindings(rule, `
    rules us_accessible
    // without bench upper
    bench lower on left { build Slatted; top 18"; depth 20"; is_accessible yes }
    //@ 1-12 error: Accessible bench lower has no clear floor of 30" x 48" beside an end: at its left end 30" is missing to the wall; at its right end 30" is missing to the wall. One is needed (ADA Standards 2010, 903.2 and 305.3). Shorten the bench, or move what stands there.
`));

test('names what stands in the floor', () => checkFindings(rule, `
    rules us_accessible
    // without bench upper
    bench lower on left { build Slatted; top 18"; depth 20"; length 42"; from front 0"; is_accessible yes }
    //                                                              ^^^ error: Accessible bench lower has no clear floor of 30" x 48" beside an end: at its left end 30" is missing to the wall; at its right end bench step stands in it. One is needed (ADA Standards 2010, 903.2 and 305.3). Shorten the bench, or move what stands there.
    bench step on back { build Slatted; top 9"; depth 12" }
`));

test('accepts exactly 30" at one end', () => checkFindings(rule, `
    rules us_accessible
    // without bench upper
    bench lower on left { build Slatted; top 18"; depth 20"; length 42"; from back 0"; is_accessible yes }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    rules us_accessible
    // without bench upper
    bench lower on left {
        build     Slatted
        top       18"
        depth     20"
        from      back 0"
        length
        is_accessible yes
    }
`));
