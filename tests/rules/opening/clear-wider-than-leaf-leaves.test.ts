import { test } from 'vitest';
import { clearWiderThanLeafLeaves as rule } from '../../../language/src/rules/opening/clear-wider-than-leaf-leaves.js';
import { checkFindings } from '../../support/check.js';

// 24" of leaf and two gaps of 1/8" less 1 1/2" of open leaf leave 22 3/4".
test('reports the model', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 23" x 75"; section 30"; catch roller; frame_width 1 1/2" }
    door entry on front {
        model     Trial
    //            ^^^^^ error: The clear width of door entry is stated as 23"; the leaf and its two gaps less the thickness of the open leaf leave 22 3/4". Mend the clear opening or the leaf of the door model.
        from      left 23 7/8"
        hinge     left
    }
`));

test('accepts exactly what the leaf leaves', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('stays silent while the clear opening is being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; section 30"; catch roller
        clear
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
