import { test } from 'vitest';
import { benchTooNearHeater as rule } from '../../../language/src/rules/heater/bench-too-near-heater.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The casing ends at 34"; the lower bench begins at 72" - 20" - 16" = 36".
test('reports how far the bench is and where the heater clears everything', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 18"
        //        ^^^^^^^^^ 💡 error: Bench lower is 2" beside heater stove; 4" is needed (Tarn 60 installation sheet, demo edition 2). Its near side clears everything at 4" to 16" from the front wall.
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts exactly what the manual asks', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 16"
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
        from      front 18"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 16"
        guard     yes
        backing   1 1/2"
    }
`, 'Move heater stove to 16" from the front wall'));

test('a place to the middle stays one', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        centre    from front 26"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        centre    from front 24"
        guard     yes
        backing   1 1/2"
    }
`));
