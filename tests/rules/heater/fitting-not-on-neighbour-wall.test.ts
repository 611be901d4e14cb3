import { test } from 'vitest';
import { fittingNotOnNeighbourWall as rule } from '../../../language/src/rules/heater/fitting-not-on-neighbour-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the place and names the two walls', () => checkFindings(rule, `
    thermometer on left {
        from      right 30"
        //        ^^^^^^^^^ 💡 error: The thermometer is on the left wall, which does not meet the right wall. Measure from the front or the back wall.
    }
`));

test('accepts both neighbours', () => checkFindings(rule, `
    thermometer on left {
        from      back 30"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    thermometer on left {
        from
    }
`));

test('a fix measures from a neighbour', () => checkFix(rule, `
    thermometer on left {
        from      right 30"
    }
`, `
    thermometer on left {
        from      back 30"
    }
`, 'Measure from the back wall'));

test('a place to the middle stays one', () => checkFix(rule, `
    sensor on right {
        centre    from left 16"
        below_ceiling 5"
        cable     9'
    }
`, `
    sensor on right {
        centre    from front 16"
        below_ceiling 5"
        cable     9'
    }
`, 'Measure from the front wall'));
