import { test } from 'vitest';
import { doorSwingsIntoBenchFloor as rule } from '../../../language/src/rules/opening/door-swings-into-bench-floor.js';
import { checkFindings } from '../../support/check.js';

// ADA Standards 2010, 612.2. The clear floor lies 30" before the bench end, 48" from the left lining.
test('reports the swing of the door', () => checkFindings(rule, `
    rules us_accessible
    // without bench upper
    bench lower on left { build Slatted; top 18"; depth 20"; length 42"; from back 0"; is_accessible yes }
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge     left
        swing     inward
    //            ^^^^^^ error: Door entry swings into the clear floor at the end of accessible bench lower; that has to stay free of the door (ADA Standards 2010, 612.2). Let the door open outward, or keep the floor at the other end clear.
    }
`));

test('accepts a leaf that turns beside the floor', () => checkFindings(rule, `
    rules us_accessible
    // without bench upper
    bench lower on left { build Slatted; top 18"; depth 20"; length 42"; from back 0"; is_accessible yes }
    door entry on front { model Leaf24; from right 3"; hinge right; swing inward }
`));

test('accepts a leaf that opens outward', () => checkFindings(rule, `
    rules us_accessible
    // without bench upper
    bench lower on left { build Slatted; top 18"; depth 20"; length 42"; from back 0"; is_accessible yes }
`));

test('stays silent while the swing is being typed', () => checkFindings(rule, `
    rules us_accessible
    // without bench upper
    bench lower on left { build Slatted; top 18"; depth 20"; length 42"; from back 0"; is_accessible yes }
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge     left
        swing
    }
`));
