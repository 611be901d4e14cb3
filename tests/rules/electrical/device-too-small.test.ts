import { test } from 'vitest';
import { deviceTooSmall as rule } from '../../../language/src/rules/electrical/device-too-small.js';
import { checkFindings, checkFix } from '../../support/check.js';

// Source: NEC 210.20(A) and 240.6(A).
test('reports the device: 125 % of 25 A is 31.25 A', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device    30 A
        //        ^^^^ 💡 error: The device of circuit stove_feed is 30 A; 31.25 A or more is needed (NEC 2023, 210.20(A)). The next standard size is 35 A. A licensed electrician confirms it and does the work.
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts the load itself', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device    31.25 A
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the device is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('a fix sets the next standard size', () => checkFix(rule, `
    circuit stove_feed {
        feeds     stove
        device    30 A
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`, `
    circuit stove_feed {
        feeds     stove
        device    35 A
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));
