import { test } from 'vitest';
import { existingConductorTooSmall as rule } from '../../../language/src/rules/electrical/existing-conductor-too-small.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 2023, Table 310.16, copper, 60 °C column: 10 AWG 30 A, 8 AWG 40 A.
test('reports the conductor with the size that is needed: 10 AWG carries 30 A at 60 °C terminals', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_device 35 A
        existing_conductor awg_10
        //                 ^^^^^^ error: The existing conductor of circuit stove_feed is 10 AWG; 8 AWG is needed for heater stove (NEC 2023, Table 310.16). Have the circuit rewired. A licensed electrician confirms it and does the work.
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('names no size when the run is not known', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_device 35 A
        existing_conductor awg_12
        //                 ^^^^^^ error: The existing conductor of circuit stove_feed is 12 AWG; a larger one is needed for heater stove…
    }
`));

test('accepts the smallest that carries the load and that the manual allows', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_device 35 A
        existing_conductor awg_8
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the conductor is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_device 35 A
        existing_conductor
        segment   wall { length 20'; ambient 86 degF }
    }
`));
