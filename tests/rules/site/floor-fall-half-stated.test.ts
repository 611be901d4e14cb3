import { test } from 'vitest';
import { floorFallHalfStated as rule } from '../../../language/src/rules/site/floor-fall-half-stated.js';
import { checkFindings } from '../../support/check.js';

test('reports a fall without its side', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
        floor_fall 1/2"
        //         ^^^^ warning: The floor falls, and the site does not say to which side (a fall has a height and a direction). Write falls_to and the side; until then the floor counts as level.
    }
`));

test('reports a side without its fall', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
        falls_to  front
        //        ^^^^^ warning: The floor falls to one side, and the site does not say by how much (a fall has a height and a direction). Write floor_fall and the length; until then the floor counts as level.
    }
`));

test('accepts both', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right; floor_fall 1/2"; falls_to front }
`));

test('stays silent while the side is being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling 7'6"
        floor tile
        floor_fall 1/2"
        falls_to
    }
`));
