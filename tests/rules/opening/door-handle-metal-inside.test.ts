import { test } from 'vitest';
import { doorHandleMetalInside as rule } from '../../../language/src/rules/opening/door-handle-metal-inside.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports the model', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; handle_inside metal }
    door entry on front {
        model     Trial
    //            ^^^^^ warning: The inside handle of door entry is metal; wood is needed where it is touched (common practice, no source). Choose a door with a wooden handle.
        from      left 23 7/8"
        hinge     left
    }
`));

test('accepts wood and no handle at all', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; handle_inside none }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    door second on right { model Leaf24; from back 23 7/8"; hinge back }
`));

test('stays silent while the handle is being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller
        handle_inside
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
