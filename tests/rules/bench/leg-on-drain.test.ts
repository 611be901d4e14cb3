import { test } from 'vitest';
import { legOnDrain as rule } from '../../../language/src/rules/bench/leg-on-drain.js';
import { checkFindings } from '../../support/check.js';

// The room stands free on two sides, so its corner is 1" from the left and back of the place.
test('reports the leg at its bench', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        free      front, right
        drain_from_left 43"
        drain_from_front 87"
    }
    bench upper on back { build Slatted; top 37"; depth 20" }
    //@ 1-12 warning: Leg UPPER-LEG-2 of bench upper would stand on the drain, 43" from the left and 87" from the front of the place; floor is needed under each leg (common practice, no source). Move the room or the drain, or change the length of the bench so that its legs move.
`));

test('accepts a drain in the walkway', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; free front, right; drain_from_left 43"; drain_from_front 60" }
`));

test('stays silent while the place of the drain is being typed', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        free      front, right
        drain_from_left 43"
        drain_from_front
    }
`));
