import { test } from 'vitest';
import { clearanceBeforeTooSmall as rule } from '../../../language/src/rules/heater/clearance-before-too-small.js';
import { checkFindings, checkFix } from '../../support/check.js';

// Inside 76 1/2" wide: the shelf reaches to 14 1/2" from the right wall, the casing to 2" + 11" = 13".
test('reports what stands before the heater', () => checkFindings(rule, `
    fitting screen on left {
        what      shelf
        size      20" x 40"
        depth     62"
        from      front 4"
        //        ^^^^^^^^ error: Shelf screen is 1 1/2" before heater stove; 4" is needed (Tarn 60 installation sheet, demo edition 2). Move shelf screen; no position of the heater along the right wall clears everything.
        bottom    4"
    }
`));

test('accepts exactly what the manual asks', () => checkFindings(rule, `
    fitting screen on left {
        what      shelf
        size      20" x 40"
        depth     59 1/2"
        from      front 4"
        bottom    4"
    }
`));

test('stays silent while the shelf is being typed', () => checkFindings(rule, `
    fitting screen on left {
        what      shelf
        size      20" x 40"
        depth     
        from      front 4"
        bottom    4"
    }
`));

test('a fix moves the heater beside it where the wall has room', () => checkFix(rule, `
    fitting screen on left {
        what      shelf
        size      6" x 40"
        depth     62"
        from      front 4"
        bottom    4"
    }
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`, `
    fitting screen on left {
        what      shelf
        size      6" x 40"
        depth     62"
        from      front 4"
        bottom    4"
    }
    heater stove on right {
        model     Tarn60
        from      front 14"
        guard     yes
        backing   1 1/2"
    }
`));
