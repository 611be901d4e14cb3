import { test } from 'vitest';
import { headroomTight as rule } from '../../../language/src/rules/site/headroom-tight.js';
import { checkFindings } from '../../support/check.js';

test('reports a shortfall under 1/16"', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   86 13/16"
        //        ^^^^^^^^^ info: The place is 86 13/16" high and ≈86 7/8" is needed to put the room up, because the leaves of CEILING-1 and CEILING-2 rise while their joint is interlocked; the shortfall is under 1/16" (common practice, no source). Tell the crew to keep shims low.
        floor     tile
        free      front, right
    }
`));

test('accepts the height that is needed, and leaves a real shortfall to its own rule', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 86 7/8"; floor tile; free front, right }
`));

test('is silent at a shortfall of more than 1/16"', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 86 3/4"; floor tile; free front, right }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling 86 13/
        floor tile
        free front
    }
`));
