import { test } from 'vitest';
import { openingsOverlap as rule } from '../../../language/src/rules/shell/openings-overlap.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the later of the two, with the place that closes', () => checkFindings(rule, `
    window view on front { model View18; from left 40"; sill 40" }
    door entry on front {
        model     Leaf24
        from      left 23 7/8"
        //        ^^^^^^^^^^^^ 💡 error: The sections of window view and door entry overlap by 13 1/4" on the front wall; they may touch and no more. The wall closes with entry from left 10 5/8".
        hinge     left
    }
`));

test('accepts sections that touch', () => checkFindings(rule, `
    window view on front { model View18; from left 53 1/4"; sill 40" }
`));

test('stays silent while a place is being typed', () => checkFindings(rule, `
    window view on front {
        model View18
        from
        sill 40"
    }
`));

test('accepts them on two walls', () => checkFindings(rule, `
    window view on left { model View18; from front 27"; sill 44" }
`));

test('a fix moves one of them to where the wall closes', () => checkFix(rule, `
    window view on front { model View18; from left 40"; sill 40" }
    door entry on front { model Leaf24; from left 23 7/8"; hinge left }
`, `
    door entry on front { model Leaf24; from left 10 5/8"; hinge left }
`));
