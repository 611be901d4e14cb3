import { test } from 'vitest';
import { hingeNotOnANeighbour as rule } from '../../../language/src/rules/opening/hinge-not-on-a-neighbour.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the hinge and offers both sides', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge     back
    //            ^^^^ 💡 error: Door entry on the front wall is hinged toward the back wall; the front wall ends at the right and left walls. Hinge it toward one of these.
    }
`));

test('accepts either neighbour', () => checkFindings(rule, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge right }
`));

test('stays silent while the hinge is being typed', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        hinge
    }
`));

test('a fix hinges the door on a side', () => checkFix(rule, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge back }
`, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge right }
`));
