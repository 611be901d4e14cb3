import { test } from 'vitest';
import { ventNotOnNeighbour as rule } from '../../../language/src/rules/air/vent-not-on-neighbour.js';
import { checkFindings } from '../../support/check.js';

test('reports the place', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      back 8"
        //        ^^^^^^^ error: Vent exhaust is on the front wall and measured from the back wall; the front wall meets the right and left walls. Measure from one of them.
        below_ceiling 3"
        air       room
    }
`));

test('reports a middle as well', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        centre    from front 8"
        //        ^^^^^^^^^^^^^ error: Vent exhaust is on the front wall and measured from the front wall…
        below_ceiling 3"
        air       room
    }
`));

test('accepts both neighbours', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      right 40"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      back
        below_ceiling 3"
        air       room
    }
`));
