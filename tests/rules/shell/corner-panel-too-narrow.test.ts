import { test } from 'vitest';
import { cornerPanelTooNarrow as rule } from '../../../language/src/rules/shell/corner-panel-too-narrow.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the strip left beside the door', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left 5 3/8"
        //        ^^^^^^^^^^^ 💡 error: The end panel of the front wall at the front left corner would be 5 1/2" wide; T + 3", 6 3/4", is needed (common practice, no source). The wall closes with entry from left 6 5/8".
        hinge     left
    }
`));

test('accepts T + 3" exactly', () => checkFindings(rule, `
    door entry on front { model Leaf24; from left 6 5/8"; hinge left }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    door entry on front {
        model     Leaf24
        from      left
        hinge     left
    }
`));

test('a fix moves the door', () => checkFix(rule, `
    door entry on front { model Leaf24; from left 5 3/8"; hinge left }
`, `
    door entry on front { model Leaf24; from left 6 5/8"; hinge left }
`));
