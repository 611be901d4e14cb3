import { test } from 'vitest';
import { ventBehindOtherWall as rule } from '../../../language/src/rules/air/vent-behind-other-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the heater it names', () => checkFindings(rule, `
    vent intake on left {
        size      8" x 4"
        behind    stove
        //        ^^^^^ 💡 error: Vent intake is on the left wall and heater stove on the right wall; behind a heater is its own wall. Put the vent on the right wall, or give its place with from.
        bottom    4"
    }
`));

test('accepts the wall of the heater', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    4"
    }
`));

test('stays silent while the heater is being typed', () => checkFindings(rule, `
    vent intake on left {
        size      8" x 4"
        behind
        bottom    4"
    }
`));

test('a fix puts it on the wall of the heater', () => checkFix(rule, `
    vent intake on left { size 8" x 4"; behind stove; bottom 4" }
`, `
    vent intake on right { size 8" x 4"; behind stove; bottom 4" }
`));
