import { test } from 'vitest';
import { noAirUnderDoor as rule } from '../../../language/src/rules/air/no-air-under-door.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports the door', () => checkFindings(rule, `
    door_model Tight24 { leaf 24" x 76"; clear 22 1/4" x 74 3/4"; section 30"; catch roller; bottom_gap 0" }
    door entry on front {
        model     Tight24
        //        ^^^^^^^ info: Nothing is open under door entry; the free exhaust is 48 in2 and the free intake 32 in2, and what is missing comes in under the door (common practice, no source). Leave a gap under the leaf, or enlarge the intake.
        from      left 23 7/8"
        hinge     left
    }
    vent exhaust on front {
        size      8" x 6"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('accepts a gap under the leaf', () => checkFindings(rule, `
    door_model Tight24 { leaf 24" x 76"; clear 22 1/4" x 74 3/4"; section 30"; catch roller; bottom_gap 1/8" }
    door entry on front {
        model     Tight24
        from      left 23 7/8"
        hinge     left
    }
    vent exhaust on front {
        size      8" x 6"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('accepts an intake as large as the exhaust', () => checkFindings(rule, `
    door_model Tight24 { leaf 24" x 76"; clear 22 1/4" x 74 3/4"; section 30"; catch roller; bottom_gap 0" }
    door entry on front {
        model     Tight24
        from      left 23 7/8"
        hinge     left
    }
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the exhaust is being typed', () => checkFindings(rule, `
    door_model Tight24 { leaf 24" x 76"; clear 22 1/4" x 74 3/4"; section 30"; catch roller; bottom_gap 0" }
    door entry on front {
        model     Tight24
        from      left 23 7/8"
        hinge     left
    }
    vent exhaust on front {
        size      8" x
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));
