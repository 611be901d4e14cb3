import { test } from 'vitest';
import { ventsOverlap as rule } from '../../../language/src/rules/air/vents-overlap.js';
import { checkFindings } from '../../support/check.js';

test('reports the second one', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
    vent second on front {
        role      exhaust
        size      8" x 4"
        from      left 12"
        //        ^^^^^^^^ error: Vent second overlaps vent exhaust on the front wall. Move one of the two, or write one vent of the whole size.
        below_ceiling 3"
        air       room
    }
`));

test('accepts two that touch', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
    vent second on front {
        role      exhaust
        size      8" x 4"
        from      left 16"
        below_ceiling 3"
        air       room
    }
`));

test('leaves an intake in an exhaust to the rule about short circuits', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
    vent second on front {
        role      intake
        size      8" x 4"
        from      left 12"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
    vent second on front {
        role      exhaust
        size      8" x 4"
        from
        below_ceiling 3"
        air       room
    }
`));
