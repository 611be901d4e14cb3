import { test } from 'vitest';
import { doorClearWidthTooSmall as rule } from '../../../language/src/rules/opening/door-clear-width-too-small.js';
import { checkFindings } from '../../support/check.js';

// 32": ADA Standards 2010, 404.2.3 (from memory). 600 mm is common practice, no source.
test('reports the model of a door that has to be accessible', () => checkFindings(rule, `
    rules us_accessible
    door entry on front {
        model     Leaf24
    //            ^^^^^^ error: The clear width of door entry is 22 3/4"; 32" is needed (ADA Standards 2010, 404.2.3). Choose a wider door.
        from      left 23 7/8"
        hinge     left
    }
`));

test('only informs where practice alone speaks', () => checkFindings(rule, `
    rules us_dwelling
    door entry on front { model Leaf24; from left 23 7/8"; hinge left }
    //                          ^^^^^^ info: The clear width of door entry is 22 3/4"; 600 mm (≈23 5/8") is usual (common practice, no source). Choose a wider door.
`));

test('accepts exactly 32" clear, however wide the leaf', () => checkFindings(rule, `
    door_model Trial { leaf 34" x 76"; clear 32" x 75"; section 42"; catch roller; frame_width 1 1/2" }
    rules us_accessible
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('accepts exactly 600 mm', () => checkFindings(rule, `
    door_model Trial { leaf 26" x 76"; clear 600 mm x 75"; section 36"; catch roller; frame_width 1 1/2" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('stays silent while the model is being typed', () => checkFindings(rule, `
    rules us_accessible
    door entry on front {
        model
        from      left 23 7/8"
        hinge     left
    }
`));
