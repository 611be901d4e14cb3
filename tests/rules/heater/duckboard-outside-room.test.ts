import { test } from 'vitest';
import { duckboardOutsideRoom as rule } from '../../../language/src/rules/heater/duckboard-outside-room.js';
import { checkFindings } from '../../support/check.js';

// 4" and 70" in a room 72" deep.
test('reports how far it reaches', () => checkFindings(rule, `
    duckboard mat {
    //@ 1-14 error: Duckboard mat reaches 2" into a wall. Move or shorten it by 2" or more.
        from_left 10"
        from_front 4"
        width     24"
        depth     70"
        slat      alder_1x4
    }
`));

test('accepts one that ends at the lining', () => checkFindings(rule, `
    duckboard mat {
        from_left 10"
        from_front 4"
        width     24"
        depth     68"
        slat      alder_1x4
    }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    duckboard mat {
        from_left 10"
        from_front 4"
        width     24"
        depth     
        slat      alder_1x4
    }
`));
