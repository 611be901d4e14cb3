import { test } from 'vitest';
import { siteOutOfSquare as rule } from '../../../language/src/rules/site/site-out-of-square.js';
import { checkFindings } from '../../support/check.js';

test('reports the lean from the diagonals', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
        diagonals 145", 144"
        //        ^^^^^^^^^^ info: The place is out of square: its back lies ≈3/4" to the right of square (equal diagonals make a place square). Set the room out from one side and shim the other.
    }
`));

test('reports a lean to the left', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        free      front, right
        diagonals 144", 145"
        //        ^^^^^^^^^^ info: The place is out of square: its back lies ≈3/4" to the left of square (equal diagonals make a place square). Set the room out from one side and shim the other.
    }
`));

test('accepts equal diagonals', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front, right; diagonals 144 1/2", 144 1/2" }
`));

test('stays silent while the diagonals are being typed', () => checkFindings(rule, `
    site {
        width 96"
        depth 108"
        ceiling 7'6"
        floor tile
        diagonals 145",
    }
`));
