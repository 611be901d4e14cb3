import { test } from 'vitest';
import { windowAboveOrBelowWall as rule } from '../../../language/src/rules/opening/window-above-or-below-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The ceiling lining is 80 1/4" over the floor and the glass 24" high.
test('reports a sill too high', () => checkFindings(rule, `
    window view on left {
        model     View18
        from      front 26"
        sill      60"
    //            ^^^ 💡 error: The glass of window view runs 3 3/4" above the ceiling lining. Set the sill to 56 1/4" or lower.
    }
`));

test('reports a sill below the floor', () => checkFindings(rule, `
    window view on left { model View18; from front 26"; sill 2" - 4" }
    //                                                       ^^^^^^^ 💡 error: The glass of window view runs 2" below the floor. Set the sill to 0" or higher.
`));

test('reports glass higher than the wall', () => checkFindings(rule, `
    window_model Pane { glass_size 18" x 90"; section 24"; glass safety }
    window view on left { model Pane; from front 26"; sill 4" }
    //                                                     ^^ error: The glass of window view runs 13 3/4" above the ceiling lining. Choose a window that is less high.
`));

test('accepts glass that ends at the ceiling lining', () => checkFindings(rule, `
    window view on left { model View18; from front 26"; sill 56 1/4" }
`));

test('stays silent while the sill is being typed', () => checkFindings(rule, `
    window view on left {
        model     View18
        from      front 26"
        sill
    }
`));

test('a fix lowers the sill', () => checkFix(rule, `
    window view on left { model View18; from front 26"; sill 60" }
`, `
    window view on left { model View18; from front 26"; sill 56 1/4" }
`));
