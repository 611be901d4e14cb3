import { test } from 'vitest';
import { benchAcrossDoor as rule } from '../../../language/src/rules/bench/bench-across-door.js';
import { checkFindings } from '../../support/check.js';

// The clear opening of the door begins 23 7/8" from the left wall.
test('reports the bench and how far the door would have to move', () => checkFindings(rule, `
    bench lower on left {
    //@ 1-12 error: Bench lower covers 3 1/8" of the width and 18" of the height of door entry. Move the door 3 1/8" toward the right wall, or make the bench shallower or shorter.
        build     Slatted
        top       18"
        depth     27"
    }
`));

test('accepts a bench that ends at the clear opening', () => checkFindings(rule, `
    bench lower on left { build Slatted; top 18"; depth 23 7/8" }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    bench lower on left {
        build     Slatted
        top       18"
        depth
    }
`));
