import { test } from 'vitest';
import { manualSilentOnCircuit as rule } from '../../../language/src/rules/electrical/manual-silent-on-circuit.js';
import { checkFindings } from '../../support/check.js';

test('reports the model and names every fact that is missing', () => checkFindings(rule, `
    heater_model Mute60 { manual "Mute 60 sheet, demo"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; max_device 40 A }
    heater stove on right {
        model     Mute60
        //        ^^^^^^ info: The entry of heater stove (Mute 60 sheet, demo) does not state the smallest conductor and the wire of the final connection, so that is not checked. Look it up in the manual and add min_conductor and connection_wire; the electrician follows the manual itself.
        from      front 8"
        guard     yes
    }
`));

test('accepts an entry that states all three', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
    }
`));

test('stays silent while the entry is being typed', () => checkFindings(rule, `
    heater_model Mute60 { manual "Mute 60 sheet, demo"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; max_device }
    heater stove on right {
        model     Mute60
        from      front 8"
        guard     yes
    }
`));
