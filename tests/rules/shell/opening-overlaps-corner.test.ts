import { test } from 'vitest';
import { openingOverlapsCorner as rule } from '../../../language/src/rules/shell/opening-overlaps-corner.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports how far the section runs past the corner', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left 2"
        //        ^^^^^^^ 💡 error: The section of door entry runs 1 5/8" past the front left corner; it has to end where the neighbouring wall begins. The wall closes with entry from left 6 5/8".
        hinge     left
    }
`));

test('accepts a section that begins a whole corner panel from the corner', () => checkFindings(rule, `
    door entry on front { model Leaf24; from left 6 5/8"; hinge left }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left
        hinge     left
    }
`));

test('a fix moves the door to the nearest place that closes', () => checkFix(rule, `
    door entry on front { model Leaf24; from left 2"; hinge left }
`, `
    door entry on front { model Leaf24; from left 6 5/8"; hinge left }
`));
