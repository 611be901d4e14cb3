import { test } from 'vitest';
import { warningSignInside as rule } from '../../../language/src/rules/heater/warning-sign-inside.js';
import { checkFindings, checkFix } from '../../support/check.js';

// IMC 914.5.1, from memory: a permanent notice outside the room.
test('reports the sign', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    inside
        //        ^^^^^^ 💡 error: The warning sign stands inside the room; outside is needed (IMC 2018, 914.5.1). Put it beside the door.
        letters   1/4"
    }
`));

test('a dwelling is exempt', () => checkFindings(rule, `
    sign caution {
        says      warning
        stands    inside
        letters   1/4"
    }
`));

test('accepts a sign outside', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    outside
        letters   1/4"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands
        letters   1/4"
    }
`));

test('a fix puts it outside', () => checkFix(rule, `
    rules us_commercial
    sign caution {
        says      warning
        stands    inside
        letters   1/4"
    }
`, `
    sign caution {
        says      warning
        stands    outside
        letters   1/4"
    }
`));
