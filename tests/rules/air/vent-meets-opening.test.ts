import { test } from 'vitest';
import { ventMeetsOpening as rule } from '../../../language/src/rules/air/vent-meets-opening.js';
import { checkFindings } from '../../support/check.js';

// The door: a leaf of 24" with gaps of 1/8" on both sides.
test('reports the place with the stretch the door takes', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 30"
        //        ^^^^^^^^ error: Vent exhaust lies in door entry, which takes the front wall from 22 3/8" to 46 5/8", measured from the left wall. Move it clear of that.
        bottom    40"
        air       room
    }
`));

test('accepts one that touches the frame opening', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 14 3/8"
        bottom    40"
        air       room
    }
`));

test('accepts one over the door', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 2"
        from      left 30"
        below_ceiling 0"
        air       room
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from
        bottom    40"
        air       room
    }
`));
