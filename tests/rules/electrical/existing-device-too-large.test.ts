import { test } from 'vitest';
import { existingDeviceTooLarge as rule } from '../../../language/src/rules/electrical/existing-device-too-large.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 240.4(D), 424.22(B).
test('reports what the manual allows', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_6
        existing_device 50 A
        //              ^^^^ error: The existing device of circuit stove_feed is 50 A; 40 A is the most the heater's manual allows (Tarn 60 installation sheet, demo edition 2, maximum overcurrent device). Have it replaced by a 35 A device. A licensed electrician confirms it and does the work.
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('reports what a small conductor allows: 10 AWG is protected at 30 A', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_10
        existing_device 40 A
        //              ^^^^ error: The existing device of circuit stove_feed is 40 A; 30 A is the most its conductor allows (NEC 2023, 240.4(D)). Have the device and the conductor replaced. A licensed electrician confirms it and does the work.
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('reports what the elements allow, when the manual does not say', () => checkFindings(rule, `
    heater_model Mute60 { manual "Mute 60 sheet, demo"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11" }
    heater stove on right { model Mute60; from front 8"; guard yes }
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_3
        existing_device 70 A
        //              ^^^^ error: The existing device of circuit stove_feed is 70 A; 60 A is the most the elements of the heater allow (NEC 2023, 424.22(B)). Have it replaced by a 35 A device. A licensed electrician confirms it and does the work.
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts the largest device of the manual', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_8
        existing_device 40 A
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the device is being typed', () => checkFindings(rule, `
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        existing_conductor awg_6
        existing_device
        segment   wall { length 20'; ambient 86 degF }
    }
`));
