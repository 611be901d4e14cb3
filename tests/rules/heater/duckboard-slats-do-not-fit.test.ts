import { test } from 'vitest';
import { duckboardSlatsDoNotFit as rule } from '../../../language/src/rules/heater/duckboard-slats-do-not-fit.js';
import { checkFindings, checkFix } from '../../support/check.js';

// 2 x 3 1/2" + 3/4" and 3 x 3 1/2" + 2 x 3/8".
test('names the nearest depths that do', () => checkFindings(rule, `
    duckboard mat {
        from_left 10"
        from_front 4"
        width     24"
        depth     9"
        //        ^^ 💡 warning: The duckboard is 9" deep, and no number of slats fills that with equal gaps of 3/8" to 3/4" (common practice, no source). The nearest depths that do are 7 3/4" and 11 1/4".
        slat      alder_1x4
    }
`));

test('reports one that is too small, named or not', () => checkFindings(rule, `
    duckboard {
        from_left 10"
        from_front 4"
        width     24"
        depth     6 1/2"
        //        ^^^^^^ warning: The duckboard is 6 1/2" deep and too small for two slats of 3 1/2" and its bearers. Make it larger.
        slat      alder_1x4
    }
`));

test('accepts the widest gap', () => checkFindings(rule, `
    duckboard mat {
        from_left 10"
        from_front 4"
        width     24"
        depth     7 3/4"
        slat      alder_1x4
    }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    duckboard mat {
        from_left 10"
        from_front 4"
        width     24"
        depth     
        slat      alder_1x4
    }
`));

test('a fix takes the nearest depth', () => checkFix(rule, `
    duckboard mat {
        from_left 10"
        from_front 4"
        width     24"
        depth     9"
        slat      alder_1x4
    }
`, `
    duckboard mat {
        from_left 10"
        from_front 4"
        width     24"
        depth     11 1/4"
        slat      alder_1x4
    }
`, 'Set the depth to 11 1/4"'));
