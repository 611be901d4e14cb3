import { test } from 'vitest';
import { floorNotWaterproof as rule } from '../../../language/src/rules/site/floor-not-waterproof.js';
import { checkFindings } from '../../support/check.js';

test('reports carpet', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     carpet
        //        ^^^^^^ warning: The floor is carpet; tile, concrete, vinyl or another waterproof floor is needed (common practice, no source). Lay one before the room is built.
        free      front, right
    }
`));

test('accepts any waterproof floor', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor other_waterproof; free front, right }
`));

test('stays silent while the floor is being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling 7'6"
        floor
    }
`));
