import { test } from 'vitest';
import { controlInsideRoom as rule } from '../../../language/src/rules/heater/control-inside-room.js';
import { checkFindings, checkFix } from '../../support/check.js';
import { silentManual } from '../../support/silent-manual.js';

test('warns where neither manual nor code speaks', () => checkFindings(rule, `
    ${silentManual}
    control on front {
        stands    inside
        //        ^^^^^^ 💡 warning: The control stands inside the room; outside is needed (common practice, no source). Put it outside, or ask the maker of the heater.
        height    54"
        timer     60 min
    }
`));

// IEC 60364-7-703, from memory: switchgear not built into the heater is outside.
test('a rule set that forbids it makes it an error', () => checkFindings(rule, `
    rules iec
    ${silentManual}
    control on front {
        stands    inside
        //        ^^^^^^ 💡 error: The control stands inside the room; outside is needed (IEC 60364-7-703 ed. 2.0 (2004), 703.537.5). Put it outside, or ask the maker of the heater.
        height    54"
        timer     60 min
    }
`));

test('leaves it to the manual where that says', () => checkFindings(rule, `
    control on front {
        stands    inside
        height    54"
        timer     60 min
    }
`));

test('accepts a control outside', () => checkFindings(rule, `
    ${silentManual}
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    ${silentManual}
    control on front {
        stands
        height    54"
        timer     60 min
    }
`));

test('a fix puts it outside', () => checkFix(rule, `
    ${silentManual}
    control on front {
        stands    inside
        height    54"
        timer     60 min
    }
`, `
    control on front {
        stands    outside
        height    54"
        timer     60 min
    }
`));
