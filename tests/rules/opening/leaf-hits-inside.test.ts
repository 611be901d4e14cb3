import { test } from 'vitest';
import { leafHitsInside as rule } from '../../../language/src/rules/opening/leaf-hits-inside.js';
import { checkFindings } from '../../support/check.js';

// The leaf is hinged 22 1/2" from the left wall and turns 24" into the room.
test('reports the swing and names what is hit', () => checkFindings(rule, `
    bench lower on left { build Slatted; top 18"; depth 24" }
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge     left
        swing     inward
    //            ^^^^^^ error: The leaf of door entry opens inward and hits bench lower; its whole sweep has to be free. Let it open outward, hinge it on the other side, or move that away.
    }
`));

test('names the heater and its guard', () => checkFindings(rule, `
    door entry on front { model Leaf24; from right 10"; hinge right; swing inward }
    //                                                                     ^^^^^^ error: The leaf of door entry opens inward and hits heater stove and stove guard; its whole sweep has to be free. Let it open outward, hinge it on the other side, or move these away.
`));

test('accepts a bench that touches the open leaf', () => checkFindings(rule, `
    bench lower on left { build Slatted; top 18"; depth 22 1/2" }
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing inward }
`));

test('an outward leaf hits nothing inside', () => checkFindings(rule, `
    bench lower on left { build Slatted; top 18"; depth 24" }
`));

test('stays silent while the swing is being typed', () => checkFindings(rule, `
    bench lower on left { build Slatted; top 18"; depth 24" }
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge     left
        swing
    }
`));
