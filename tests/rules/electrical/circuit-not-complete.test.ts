import { test } from 'vitest';
import { circuitNotComplete as rule } from '../../../language/src/rules/electrical/circuit-not-complete.js';
import { checkFindings } from '../../support/check.js';

test('names what else is needed', () => checkFindings(rule, `
    circuit stove_feed {
    //@ 1-19 info: Circuit stove_feed is not complete; still needed: overcurrent device of the existing circuit. What hangs on it is left out of the schedule. A licensed electrician confirms it and does the work.
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_8
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('tells a gauge under the IEC rules', () => checkFindings(rule, `
    rules iec
    heater stove on right { model Loch60; from front 8"; guard yes; supply 230 V single_phase }
    circuit stove_feed {
    //@ 1-19 info: Circuit stove_feed is not complete; still needed: conductor of the existing circuit in mm2; it is given as 8 AWG. …
        feeds     stove
        method    C
        existing_device 32 A
        existing_conductor awg_8
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('leaves a missing run, method and disconnect to their own rules', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
    }
`));

test('leaves a missing method to its own rule', () => checkFindings(rule, `
    rules iec
    heater stove on right { model Loch60; from front 8"; guard yes }
    circuit stove_feed {
        feeds     stove
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts a circuit that lacks nothing', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while a fact is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_8
        existing_device
        segment   wall { length 20'; ambient 86 degF }
    }
`));
