import { test } from 'vitest';
import { thresholdTooHigh as rule } from '../../../language/src/rules/opening/threshold-too-high.js';
import { checkFindings, checkFix } from '../../support/check.js';

// 1/2": ADA Standards 2010, 404.2.5 (from memory).
test('reports the threshold of the door', () => checkFindings(rule, `
    rules us_accessible
    door entry on front {
        model     Wide36
        from      left 21"
        hinge     left
        threshold 5/8"
    //            ^^^^ 💡 error: The threshold of door entry is 5/8" high; 1/2" at most is needed (ADA Standards 2010, 404.2.5). Lower it, or cut the base plate out under the door.
    }
`));

test('reports the threshold of the model at the model', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; threshold 1 1/2" }
    rules us_accessible
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    //                          ^^^^^ error: The threshold of door entry is 1 1/2" high; 1/2" at most is needed (ADA Standards 2010, 404.2.5). Lower it, or cut the base plate out under the door.
`));

test('accepts exactly 1/2"', () => checkFindings(rule, `
    rules us_accessible
    door entry on front { model Wide36; from left 21"; hinge left; threshold 1/2" }
`));

test('asks nothing where no rule set speaks of it', () => checkFindings(rule, `
    rules us_dwelling
    door entry on front { model Leaf24; from left 23 7/8"; hinge left; threshold 1 1/2" }
`));

test('stays silent while the threshold is being typed', () => checkFindings(rule, `
    rules us_accessible
    door entry on front {
        model     Wide36
        from      left 21"
        hinge     left
        threshold
    }
`));

test('a fix lowers the threshold', () => checkFix(rule, `
    rules us_accessible
    door entry on front { model Wide36; from left 21"; hinge left; threshold 5/8" }
`, `
    rules us_accessible
    door entry on front { model Wide36; from left 21"; hinge left; threshold 1/2" }
`));
