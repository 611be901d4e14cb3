import { test } from 'vitest';
import { doorGapMissing as rule } from '../../../language/src/rules/opening/door-gap-missing.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports a leaf that stands on the floor', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; bottom_gap 0" }
    door entry on front {
        model     Trial
    //            ^^^^^ warning: The leaf of door entry has a gap of 0" at the bottom; some is needed (common practice, no source). Mend the gap in the door model.
        from      left 23 7/8"
        hinge     left
    }
`));

test('reports a leaf that fills its frame', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; gap 0" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    //                          ^^^^^ warning: The leaf of door entry has a gap of 0" at the top and the sides; some is needed (common practice, no source). Mend the gap in the door model.
`));

test('accepts a small gap', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; gap 1/16"; bottom_gap 1/16" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('stays silent while the gap is being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller
        bottom_gap
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
