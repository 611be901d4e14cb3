import { test } from 'vitest';
import { windowTrimDoesNotFit as rule } from '../../../language/src/rules/opening/window-trim-does-not-fit.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The trim is 2 1/2" wide, the glass 18" x 24"; the left wall is 72" long and 80 1/4" high.
test('reports the sill', () => checkFindings(rule, `
    window view on left {
        model     View18
        from      front 26"
        sill      1"
    //            ^^ 💡 warning: The trim of window view runs 1 1/2" past the floor. Set the sill to 2 1/2" or higher.
    }
`));

test('reports the place', () => checkFindings(rule, `
    window view on left { model View18; from front 53"; sill 40" }
    //                                       ^^^^^^^^^ 💡 warning: The trim of window view runs 1 1/2" past the back wall. Set it 51 1/2" or less from the front wall.
`));

test('reports a window under the ceiling', () => checkFindings(rule, `
    window view on left { model View18; from front 26"; sill 54" }
    //                                                       ^^^ 💡 warning: The trim of window view runs 1/4" past the ceiling. Set the sill to 53 3/4" or lower.
`));

test('accepts trim that ends at floor and wall', () => checkFindings(rule, `
    window view on left { model View18; from front 2 1/2"; sill 2 1/2" }
`));

test('stays silent while the sill is being typed', () => checkFindings(rule, `
    window view on left {
        model     View18
        from      front 26"
        sill
    }
`));

test('a fix raises the sill', () => checkFix(rule, `
    window view on left { model View18; from front 26"; sill 1" }
`, `
    window view on left { model View18; from front 26"; sill 2 1/2" }
`));

test('a fix moves the window', () => checkFix(rule, `
    window view on left { model View18; from front 53"; sill 40" }
`, `
    window view on left { model View18; from front 51 1/2"; sill 40" }
`));
