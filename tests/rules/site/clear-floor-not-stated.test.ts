import { test } from 'vitest';
import { clearFloorNotStated as rule } from '../../../language/src/rules/site/clear-floor-not-stated.js';
import { checkFindings } from '../../support/check.js';

test('reports the site', () => checkFindings(rule, `
    site {
    //@head info: The site does not say how much floor is clear before the front side; door entry needs 24" (the leaf opens to 90 degrees). Measure it and write clear front and the length.
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
    }
`));

test('accepts a stated floor', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right; clear front 30" }
`));

test('stays silent while the floor is being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling 7'6"
        floor tile
        free front
        clear
    }
`));
