import { test } from 'vitest';
import { clearanceBesideTooSmall as rule } from '../../../language/src/rules/heater/clearance-beside-too-small.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the wall once, not what lies flush in it', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 2"
        //        ^^^^^^^^ 💡 error: The front wall is 2" beside heater stove; 4" is needed (Tarn 60 installation sheet, demo edition 2). Its near side clears everything at 4" to 16" from the front wall.
        guard     yes
        backing   1 1/2"
    }
`));

// The casing takes 8" to 24"; the near side may go to 26" - 4" - 16" = 6".
test('reports a fitting where it stands', () => checkFindings(rule, `
    fitting peg on right {
        what      hook
        size      4" x 2"
        depth     3"
        from      front 26"
        //        ^^^^^^^^^ 💡 error: Hook peg is 2" beside heater stove; 4" is needed (Tarn 60 installation sheet, demo edition 2). Move hook peg, or the heater. Its near side clears everything at 4" to 6" from the front wall.
        bottom    20"
    }
`));

// 36" less 100 mm for the bench and 400 mm of casing is 414.4 mm.
test('a manual in other units keeps its own figure', () => checkFindings(rule, `
    heater stove on right {
        model     Loch60
        from      front 3"
        //        ^^^^^^^^ 💡 error: The front wall is 3" beside heater stove; 80 mm (≈3 5/32") is needed (Loch 60 installation sheet, demo edition 1). Its near side clears everything at 80 mm to 414.4 mm from the front wall.
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts exactly what the manual asks', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 4"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from
        guard     yes
        backing   1 1/2"
    }
`));

test('a fix moves the heater to the nearest position that clears', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        from      front 2"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 4"
        guard     yes
        backing   1 1/2"
    }
`));
