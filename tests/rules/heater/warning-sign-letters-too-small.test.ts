import { test } from 'vitest';
import { warningSignLettersTooSmall as rule } from '../../../language/src/rules/heater/warning-sign-letters-too-small.js';
import { checkFindings, checkFix } from '../../support/check.js';

// IMC 914.5.1, from memory: letters 1/4 in high.
test('reports the letters', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    outside
        letters   3/16"
        //        ^^^^^ 💡 error: The letters of the warning sign are 3/16" high; 1/4" is needed (IMC 2018, 914.5.1).
    }
`));

test('warns when the height is not stated', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
    //@ 1-13 💡 warning: The height of the letters of the warning sign is not stated; 1/4" is needed (IMC 2018, 914.5.1).
        says      warning
        stands    outside
    }
`));

test('a dwelling is exempt', () => checkFindings(rule, `
    sign caution {
        says      warning
        stands    outside
        letters   1/8"
    }
`));

test('accepts exactly a quarter inch', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    outside
        letters   1/4"
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    outside
        letters
    }
`));

test('a fix makes them high enough', () => checkFix(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    outside
        letters   3/16"
    }
`, `
    sign caution {
        says      warning
        stands    outside
        letters   1/4"
    }
`));

test('a fix states their height', () => checkFix(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    outside
    }
`, `
    sign caution {
        says      warning
        stands    outside
            letters   1/4"
    }
`));
