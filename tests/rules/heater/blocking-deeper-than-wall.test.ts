import { test } from 'vitest';
import { blockingDeeperThanWall as rule } from '../../../language/src/rules/heater/blocking-deeper-than-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the blocking and the room there is', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   3"
        //        ^^ 💡 error: The blocking of heater stove is 3" thick; between lining and facing there is 2 1/2". Make it 2 1/2" or thinner.
    }
`));

test('accepts blocking that fills the wall', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   2 1/2"
    }
`));

test('stays silent while the blocking is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing
    }
`));

test('a fix takes the thickness of the wall', () => checkFix(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   3"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   2 1/2"
    }
`));
