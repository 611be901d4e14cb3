import { test } from 'vitest';
import { heaterNotOnNeighbourWall as rule } from '../../../language/src/rules/heater/heater-not-on-neighbour-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the place and names the two walls', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      left 8"
        //        ^^^^^^^ 💡 error: Heater stove is on the right wall, which does not meet the left wall. Measure from the back or the front wall.
        guard     yes
        backing   1 1/2"
    }
`));

test('reports its own wall too', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      right 8"
        //        ^^^^^^^^ 💡 error: Heater stove is on the right wall, which does not meet the right wall. Measure from the back or the front wall.
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts both neighbours', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      back 56"
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

test('a fix measures from a neighbour', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        from      left 8"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`, 'Measure from the front wall'));

test('a place to the middle stays one', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        centre    from left 16"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        centre    from back 16"
        guard     yes
        backing   1 1/2"
    }
`, 'Measure from the back wall'));
