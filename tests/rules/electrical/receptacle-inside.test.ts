import { test } from 'vitest';
import { receptacleInside as rule } from '../../../language/src/rules/electrical/receptacle-inside.js';
import { checkFindings, checkFix } from '../../support/check.js';

// Source: IEC 60364-7-703, 703.55, from memory. No clause of the US texts named is known that says so.
test('is practice under the US rules', () => checkFindings(rule, `
    receptacle socket {
        stands    inside
        //        ^^^^^^ 💡 warning: Receptacle socket stands inside; none belongs there (common practice, no source). Place it outside the room. A licensed electrician confirms it and does the work.
        height    18"
    }
`));

test('is forbidden by the IEC text', () => checkFindings(rule, `
    rules iec
    receptacle socket {
        stands    inside
        //        ^^^^^^ 💡 error: Receptacle socket stands inside; no socket-outlet may (IEC 60364-7-703 ed. 2.0 (2004), 703.55). Place it outside the room. A licensed electrician confirms it and does the work.
        height    18"
    }
`));

test('accepts one outside', () => checkFindings(rule, `
    receptacle socket {
        stands    outside
        height    18"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    receptacle socket {
        stands    
        height    18"
    }
`));

test('a fix places it outside', () => checkFix(rule, `
    receptacle socket {
        stands    inside
        height    18"
    }
`, `
    receptacle socket {
        stands    outside
        height    18"
    }
`));
