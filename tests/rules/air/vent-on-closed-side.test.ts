import { test } from 'vitest';
import { ventOnClosedSide as rule } from '../../../language/src/rules/air/vent-on-closed-side.js';
import { checkFindings } from '../../support/check.js';

test('reports the air', () => checkFindings(rule, `
    vent exhaust on back {
        size      8" x 4"
        from      left 8"
        bottom    4"
        air       room
        //        ^^^^ warning: Vent exhaust is on the back wall, which stands against the building; air of the room around has no way to it there. Move it to a side that stands free (front and right), or lead it outdoors through the building and write air outdoors.
    }
`));

test('accepts one that leads outdoors through the building', () => checkFindings(rule, `
    vent exhaust on back {
        size      8" x 4"
        from      left 8"
        bottom    4"
        air       outdoors
    }
`));

test('accepts a side that stands free', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the free sides are being typed', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free
    }
    vent exhaust on back {
        size      8" x 4"
        from      left 8"
        bottom    4"
        air       room
    }
`));
