import { test } from 'vitest';
import { existingDeviceTooSmall as rule } from '../../../language/src/rules/electrical/existing-device-too-small.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 210.20(A), 125 % of a continuous load; 240.6(A), standard ratings.
test('reports the device with the next standard size', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_8
        existing_device 30 A
        //              ^^^^ error: The existing device of circuit stove_feed is 30 A; 31.25 A or more is needed (NEC 2023, 210.20(A)). The next standard size is 35 A. The conductor behind it has to suit the new one. A licensed electrician confirms it and does the work.
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts the load itself', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_8
        existing_device 31.25 A
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the device is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_8
        existing_device
        segment   wall { length 20'; ambient 86 degF }
    }
`));
