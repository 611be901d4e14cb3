import { test } from 'vitest';
import { madeToMeasureAvoidable as rule } from '../../../language/src/rules/shell/made-to-measure-avoidable.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the place of the door that would save one', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left 22"
        //        ^^^^^^^^ 💡 hint: The front wall needs 2 panels made to measure (FRONT-2 13 7/8", FRONT-4 22 1/8"); one fewer is needed with entry from left 17 7/8" or entry from left 23 7/8" (common practice, no source).
        hinge     left
    }
`));

test('accepts a wall of modules', () => checkFindings(rule, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge left }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left
        hinge     left
    }
`));

test('a fix moves the door', () => checkFix(rule, `
    door entry on front { model Leaf24; from left 22"; hinge left }
`, `
    door entry on front { model Leaf24; from left 23 7/8"; hinge left }
`, 'Move door entry to left 23 7/8"'));

test('speaks of the middle of an opening that is written with its middle', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        centre    from left 33 3/8"
        //        ^^^^^^^^^^^^^^^^^ 💡 hint: The front wall needs 2 panels made to measure (FRONT-2 13 7/8", FRONT-4 22 1/8"); one fewer is needed with entry centre from left 29 1/4" or entry centre from left 35 1/4" (common practice, no source).
        hinge     left
    }
`));
test('a fix moves it by its middle', () => checkFix(rule, `
    door entry on front { model Leaf24; centre from left 33 3/8"; hinge left }
`, `
    door entry on front { model Leaf24; centre from left 35 1/4"; hinge left }
`, 'Move door entry to centre from left 35 1/4"'));

// A bench along the left wall takes the first 20" of the front wall; the place nearer that wall would lie behind it.
test('offers no place behind a bench', () => checkFindings(rule, `
    bench upper on left { build Slatted; top 37"; depth 20" }
    // without bench lower
    door entry on front {
        model     Leaf24
        from      left 22"
        //        ^^^^^^^^ 💡 hint: The front wall needs 2 panels made to measure (FRONT-2 13 7/8", FRONT-4 22 1/8"); one fewer is needed with entry from left 23 7/8" (common practice, no source).
        hinge     left
    }
`));
