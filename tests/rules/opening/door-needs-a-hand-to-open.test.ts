import { test } from 'vitest';
import { doorNeedsAHandToOpen as rule } from '../../../language/src/rules/opening/door-needs-a-hand-to-open.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports a latch', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch latch; frame_width 1 1/2" }
    door entry on front {
        model     Trial
    //            ^^^^^ error: Door entry is held by a latch; a catch that opens by a push is needed (common practice, no source). Choose a door with a roller or magnetic catch.
        from      left 23 7/8"
        hinge     left
    }
`));

test('reports a lock', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch lock; frame_width 1 1/2" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    //                          ^^^^^ error: Door entry is held by a lock; a catch that opens by a push is needed (common practice, no source). Choose a door with a roller or magnetic catch.
`));

test('accepts a roller and a magnetic catch', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch magnetic; frame_width 1 1/2" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    door second on right { model Leaf24; from back 23 7/8"; hinge back }
`));

test('stays silent while the catch is being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; clear 22 3/4" x 75"; section 30"
        catch
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
