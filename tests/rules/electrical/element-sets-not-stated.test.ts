import { test } from 'vitest';
import { elementSetsNotStated as rule } from '../../../language/src/rules/electrical/element-sets-not-stated.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 424.22(B), from memory.
test('reports a large heater whose entry does not say how it is divided', () => checkFindings(rule, `
    heater_model Broad {
        manual    "Broad manual, demo"
        power     15 kW
        supply    240 V single_phase
        body      24" x 27"
        depth     16"

    }
    heater stove on right {
        model     Broad
        //        ^^^^^ warning: Heater stove draws 62.5 A, and its manual (Broad manual, demo) is not said to divide it; 48 A is the most one set of elements may draw (NEC 2023, 424.22(B)). Read in the manual into how many circuits it is divided and add circuits to its entry. A licensed electrician confirms it and does the work.
        from      front 8"
        guard     yes
    }
`));

test('accepts a heater of just 48 A: 11.52 kW at 240 V', () => checkFindings(rule, `
    heater_model Broad {
        manual    "Broad manual, demo"
        power     11.52 kW
        supply    240 V single_phase
        body      24" x 27"
        depth     16"

    }
    heater stove on right {
        model     Broad
        from      front 8"
        guard     yes
    }
`));

test('accepts a circuit that says it', () => checkFindings(rule, `
    heater_model Broad {
        manual    "Broad manual, demo"
        power     15 kW
        supply    240 V single_phase
        body      24" x 27"
        depth     16"

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
        segment   wall { length 20'; ambient 86 degF }
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
