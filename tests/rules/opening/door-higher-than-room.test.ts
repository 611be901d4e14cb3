import { test } from 'vitest';
import { doorHigherThanRoom as rule } from '../../../language/src/rules/opening/door-higher-than-room.js';
import { checkFindings } from '../../support/check.js';

// The ceiling lining is 80 1/4" over the floor; leaf, gaps and a head of 1 1/2" are 2 1/8" more than the leaf.
test('reports the model and names the room it needs', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 79"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2" }
    door entry on front {
        model     Trial
    //            ^^^^^ error: The frame of door entry reaches 81 1/8" over the floor; the ceiling lining is at 80 1/4". Choose a lower door, or set the height of the room to 84 7/8" or more.
        from      left 23 7/8"
        hinge     left
    }
`));

test('accepts a head at the ceiling lining', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 78 1/8"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('stays silent while the leaf is being typed', () => checkFindings(rule, `
    door_model Trial {
        clear 22 3/4" x 75"; section 30"; catch roller
        leaf
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
