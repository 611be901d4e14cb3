import { test } from 'vitest';
import { paneLargerThanLeaf as rule } from '../../../language/src/rules/opening/pane-larger-than-leaf.js';
import { checkFindings } from '../../support/check.js';

test('reports the model', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; glass safety; pane 60" x 16" }
    door entry on front {
        model     Trial
    //            ^^^^^ error: The pane of door entry is 60" x 16" and its leaf 24" x 76", so the pane does not fit into it. Mend the pane in the door model; width comes first.
        from      left 23 7/8"
        hinge     left
    }
`));

test('accepts a pane as large as the leaf', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; glass safety; pane 24" x 76" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('stays silent while the pane is being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller
        pane
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
