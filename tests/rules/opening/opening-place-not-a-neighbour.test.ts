import { test } from 'vitest';
import { openingPlaceNotANeighbour as rule } from '../../../language/src/rules/opening/opening-place-not-a-neighbour.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the place and offers the neighbours', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        hinge     left
        from      back 23 7/8"
    //            ^^^^^^^^^^^^ 💡 error: Door entry on the front wall is measured from the back wall; the front wall ends at the right and left walls. Measure from one of these.
    }
`));

test('reports a middle measured from another wall', () => checkFindings(rule, `
    window view on left { model View18; centre from right 35"; sill 40" }
    //                                         ^^^^^^^^^^^^^^ 💡 error: Window view on the left wall is measured from the right wall; the left wall ends at the front and back walls. Measure from one of these.
`));

test('accepts either neighbour', () => checkFindings(rule, `
    door entry on front { model Leaf24; hinge left; from right 29 7/8" }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        hinge     left
        from      back
    }
`));

test('a fix measures from a neighbour', () => checkFix(rule, `
    door entry on front { model Leaf24; hinge left; from back 23 7/8" }
`, `
    door entry on front { model Leaf24; hinge left; from right 23 7/8" }
`));

test('a fix keeps the middle', () => checkFix(rule, `
    window view on left { model View18; centre from right 35"; sill 40" }
`, `
    window view on left { model View18; centre from front 35"; sill 40" }
`));
