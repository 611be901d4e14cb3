import { test } from 'vitest';
import { heaterNotSubdivided as rule } from '../../../language/src/rules/electrical/heater-not-subdivided.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 424.22(B), from memory.
test('reports the model: 15 kW at 240 V is 62.5 A', () => checkFindings(rule, `
    heater_model Broad {
        manual    "Broad manual, demo"
        power     15 kW
        supply    240 V single_phase
        body      24" x 27"
        depth     16"
        circuits  1
    }
    heater stove on right {
        model     Broad
        //        ^^^^^ error: Heater stove draws 62.5 A in one set of elements; 48 A is the most a set may draw (NEC 2023, 424.22(B)). 2 sets would do: choose a heater whose manual divides it so. A licensed electrician confirms it and does the work.
        from      front 8"
        guard     yes
    }
`));

test('reports the circuit when it says how the heater is divided', () => checkFindings(rule, `
    heater_model Broad {
        manual    "Broad manual, demo"
        power     24 kW
        supply    240 V single_phase
        body      24" x 27"
        depth     16"
        circuits  3
    }
    heater stove on right {
        model     Broad
        from      front 8"
        guard     yes
    }
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        circuits  2
        //        ^ error: Heater stove draws 50 A in each of 2 sets of elements; 48 A is the most a set may draw (NEC 2023, 424.22(B)). 3 sets would do…
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts a set of just 48 A: 23.04 kW at 240 V is 96 A in two sets', () => checkFindings(rule, `
    heater_model Broad {
        manual    "Broad manual, demo"
        power     23.04 kW
        supply    240 V single_phase
        body      24" x 27"
        depth     16"
        circuits  2
    }
    heater stove on right {
        model     Broad
        from      front 8"
        guard     yes
    }
`));

test('stays silent while the number of circuits is being typed', () => checkFindings(rule, `
    heater_model Broad {
        manual    "Broad manual, demo"
        power     15 kW
        supply    240 V single_phase
        body      24" x 27"
        depth     16"
        circuits
    }
    heater stove on right {
        model     Broad
        from      front 8"
        guard     yes
    }
`));
