import { test } from 'vitest';
import { openingRunsOffWall as rule } from '../../../language/src/rules/opening/opening-runs-off-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The front wall is 76 1/2" long between linings, the left wall 72"; the clear opening is 22 3/4" wide and the glass 18".
test('reports the place and names the last that fits', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        hinge     left
        from      left 60"
    //            ^^^^^^^^ 💡 error: The clear opening of door entry runs 6 1/4" past the lining of the right wall. Its near edge lies 53 3/4" at most from the left wall.
    }
`));

test('reports a middle too near the wall it is measured from', () => checkFindings(rule, `
    window view on left { model View18; centre from front 8"; sill 40" }
    //                                         ^^^^^^^^^^^^^ 💡 error: The glass of window view runs 1" past the lining of the front wall. Its middle lies 9" at least from the front wall.
`));

test('reports an opening wider than its wall', () => checkFindings(rule, `
    window_model Pane { glass_size 75" x 24"; section 80"; glass safety }
    window view on left { model Pane; from front 0"; sill 40" }
    //                          ^^^^ error: The glass of window view is 75" wide; the left wall has 72" between its linings. Choose a narrower model or a wider room.
`));

test('accepts an opening that ends at the lining', () => checkFindings(rule, `
    door entry on front { model Leaf24; hinge left; from left 53 3/4" }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        hinge     left
        from      left
    }
`));

test('a fix sets the last place that fits', () => checkFix(rule, `
    door entry on front { model Leaf24; hinge left; from left 60" }
`, `
    door entry on front { model Leaf24; hinge left; from left 53 3/4" }
`));

test('a fix moves the middle', () => checkFix(rule, `
    window view on left { model View18; centre from front 8"; sill 40" }
`, `
    window view on left { model View18; centre from front 9"; sill 40" }
`));
