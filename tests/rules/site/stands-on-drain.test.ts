import { test } from 'vitest';
import { standsOnDrain as rule } from '../../../language/src/rules/site/stands-on-drain.js';
import { checkFindings } from '../../support/check.js';

test('reports the plate over the drain', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
        drain_from_left 3"
        //              ^^ warning: BASE-LEFT would stand on the floor drain, taken as 4" wide; plate and legs have to miss it (common practice, no source). Move the room or the bench.
        drain_from_front 60"
    }
`));

test('accepts a drain whose edge touches the plate', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right; drain_from_left 6 5/8"; drain_from_front 60" }
`));

test('stays silent while the drain is being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling 7'6"
        floor tile
        drain_from_left
        drain_from_front 60"
    }
`));
