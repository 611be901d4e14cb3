import { test } from 'vitest';
import { frameWiderThanSection as rule } from '../../../language/src/rules/opening/frame-wider-than-section.js';
import { checkFindings } from '../../support/check.js';

// The jamb on the hinge side ends 1 1/2" of leaf and 1 1/2" of jamb beside the clear 22 3/4": the section, centred on it, takes 28 3/4".
test('reports the model and the section it needs', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 28"; catch roller; frame_width 1 1/2" }
    door entry on front {
        model     Trial
    //            ^^^^^ error: The frame of door entry stands 3/8" past its section toward the left wall; a section of 28 3/4" is needed. Mend the section or the frame of the door model.
        from      left 23 7/8"
        hinge     left
    }
`));

test('names both sides', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 25"; catch roller; frame_width 1 1/2" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    //                          ^^^^^ error: The frame of door entry stands 3/8" past its section toward the right wall and 1 7/8" past its section toward the left wall; a section of 28 3/4" is needed. Mend the section or the frame of the door model.
`));

test('accepts a section as wide as the frame', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 28 3/4"; catch roller; frame_width 1 1/2" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('stays silent while the section is being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; clear 22 3/4" x 75"; catch roller
        section
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
