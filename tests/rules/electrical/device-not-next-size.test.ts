import { test } from 'vitest';
import { deviceNotNextSize as rule } from '../../../language/src/rules/electrical/device-not-next-size.js';
import { checkFindings, checkFix } from '../../support/check.js';

// Source: NEC 240.6(A).
test('reports a device larger than the schedule reckons with', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device    40 A
        //        ^^^^ 💡 warning: The device of circuit stove_feed is 40 A; 35 A is the next standard size over 31.25 A (NEC 2023, 240.6(A)), and the schedule's conductors are chosen for it. Fit 35 A, or have the conductors checked for 40 A. A licensed electrician confirms it and does the work.
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('reports a rating that is not made', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device    33 A
        //        ^^^^ 💡 warning: The device of circuit stove_feed is 33 A…
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts the next standard size', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device    35 A
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('leaves devices below the load and above the manual to other rules', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        device    30 A
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
        device    40 A
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
