import { test } from 'vitest';
import { clearHigherThanFrame as rule } from '../../../language/src/rules/opening/clear-higher-than-frame.js';
import { checkFindings } from '../../support/check.js';

// 76" of leaf, 1/2" below and 1/8" above make 76 5/8".
test('reports the model', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 76 3/4"; section 30"; catch roller; frame_width 1 1/2" }
    door entry on front {
        model     Trial
    //            ^^^^^ error: The clear height of door entry is stated as 76 3/4"; leaf and gaps make a frame 76 5/8" high. Mend the clear opening or the leaf of the door model.
        from      left 23 7/8"
        hinge     left
    }
`));

test('accepts exactly the height of the frame', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 76 5/8"; section 30"; catch roller; frame_width 1 1/2" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('stays silent while the clear opening is being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; section 30"; catch roller
        clear
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
