import { test } from 'vitest';
import { thermometerFarFromPractice as rule } from '../../../language/src/rules/heater/thermometer-far-from-practice.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('hints at the usual height', () => checkFindings(rule, `
    thermometer on left {
        from      front 30"
        below_ceiling 14"
        //            ^^^ 💡 hint: The thermometer is 14" below the ceiling; 6" is usual (common practice, no source).
    }
`));

test('accepts an inch more', () => checkFindings(rule, `
    thermometer on left {
        from      front 30"
        below_ceiling 7"
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    thermometer on left {
        from      front 30"
        below_ceiling
    }
`));

test('a fix hangs it at the usual height', () => checkFix(rule, `
    thermometer on left {
        from      front 30"
        below_ceiling 14"
    }
`, `
    thermometer on left {
        from      front 30"
        below_ceiling 6"
    }
`));
