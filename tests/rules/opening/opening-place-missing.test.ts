import { test } from 'vitest';
import { openingPlaceMissing as rule } from '../../../language/src/rules/opening/opening-place-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports a door without its place', () => checkFindings(rule, `
    door entry on front { model Leaf24; hinge left }
    //@ 1-11 error: Nothing says where along the front wall door entry is. Add from right or from left with the distance to its clear opening, or centre from right.
`));

test('reports a window without its place', () => checkFindings(rule, `
    window view on left { model View18; sill 40" }
    //@ 1-12 error: Nothing says where along the left wall window view is. Add from front or from back with the distance to its clear glass, or centre from front.
`));

test('accepts a place to the middle', () => checkFindings(rule, `
    door entry on front { model Leaf24; hinge left; centre from left 38 1/4" }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        hinge     left
        from
    }
`));
