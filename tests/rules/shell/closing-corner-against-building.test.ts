import { test } from 'vitest';
import { closingCornerAgainstBuilding as rule } from '../../../language/src/rules/shell/closing-corner-against-building.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports a corner the designer names and that cannot swing', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front }
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    7'0"
        closing_corner back_left
        //             ^^^^^^^^^ 💡 error: The back left corner cannot be closed last: its back wall stands against the building and cannot swing outward (common practice, no source). Front right can be.
    }
`));

test('accepts one free side', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front }
`));

test('is silent where no side is named free: that is one cause with a finding of its own', () => checkFindings(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile }
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; ceiling spans_left_to_right; closing_corner back_left }
`));

test('stays silent while the sizes are being typed', () => checkFindings(rule, `
    room {
        system Skerry
        width
        depth 79 1/2"
        height 7'0"
    }
    site { width 96"; depth 108"; ceiling 7'6"; floor tile }
`));

test('a fix names a corner that can', () => checkFix(rule, `
    site { width 96"; depth 108"; ceiling 7'6"; floor tile; free front }
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; closing_corner back_left }
`, `
    room { system Skerry; width 84"; depth 79 1/2"; height 7'0"; closing_corner front_right }
`));
