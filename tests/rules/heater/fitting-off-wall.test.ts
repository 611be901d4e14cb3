import { test } from 'vitest';
import { fittingOffWall as rule } from '../../../language/src/rules/heater/fitting-off-wall.js';
import { checkFindings } from '../../support/check.js';

// The lamp is 6" wide, the wall 72" long.
test('reports how far it reaches past the end of the wall', () => checkFindings(rule, `
    light lamp on left {
        model     Ember
        from      front 68"
        //        ^^^^^^^^^ error: Light lamp reaches 2" into the back wall. Move it 2" or more.
        height    62"
    }
`));

// The lamp is 8" high, the room 80 1/4".
test('reports how far it reaches into the ceiling', () => checkFindings(rule, `
    light lamp on left {
        model     Ember
        from      front 8"
        height    74"
        //        ^^^ error: Light lamp reaches 1 3/4" into the ceiling. Move it 1 3/4" or more.
    }
`));

test('accepts a lamp that ends with the wall and under the ceiling', () => checkFindings(rule, `
    light lamp on left {
        model     Ember
        from      front 66"
        height    72 1/4"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    light lamp on left {
        model     Ember
        from
        height    62"
    }
`));
