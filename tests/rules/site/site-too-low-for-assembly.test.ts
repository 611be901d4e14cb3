import { test } from 'vitest';
import { siteTooLowForAssembly as rule } from '../../../language/src/rules/site/site-too-low-for-assembly.js';
import { checkFindings } from '../../support/check.js';

test('reports the lowest measure with what decides it', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'1", 7'6"
        //        ^^^^^^^^^^ error: The place is 85" high; ≈86 7/8" is needed to put the room up, because the leaves of CEILING-1 and CEILING-2 rise while their joint is interlocked (panels need height while they are put up). Make the room lower, or its ceiling of other panels.
        floor     tile
        free      front, right
    }
`));

test('accepts 7\'3" for a room of 7\'0"', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'3"; floor tile; free front, right }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling
        floor tile
        free front
    }
`));
