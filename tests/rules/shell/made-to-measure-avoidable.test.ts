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
