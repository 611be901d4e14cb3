import { test } from 'vitest';
import { heaterRunsOffWall as rule } from '../../../language/src/rules/heater/heater-runs-off-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The wall is 72" long inside, the casing 16" wide.
test('reports how far it reaches into which wall', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 58"
        //        ^^^^^^^^^ 💡 error: Heater stove reaches 2" into the back wall. Its near side clears everything at 4" to 16" from the front wall.
        guard     yes
        backing   1 1/2"
    }
`));

// That it is too near is said by other rules.
test('accepts a casing that ends with the wall', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 56"
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
        from      front 58"
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
`));
