import { test } from 'vitest';
import { conductorBeyondTable as rule } from '../../../language/src/rules/electrical/conductor-beyond-table.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC Table 310.16, copper: 4/0 AWG carries 195 A in the 60 °C column, the last size reckoned with.
test('reports the model: 60 kW at 240 V needs a conductor for 312.5 A', () => checkFindings(rule, `
    heater_model Hall {
        manual    "Hall manual, demo"
        power     60 kW
        supply    240 V single_phase
        body      40" x 27"
        depth     20"
        circuits  8
    }
    heater stove on right {
        model     Hall
        //        ^^^^ error: Heater stove needs a conductor for 312.5 A; no single conductor of the tables carries that on this run (NEC 2023, Table 310.16). Have it fed by several circuits, each with a conductor of its own. A licensed electrician confirms it and does the work.
        from      front 8"
        guard     yes
    }
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('accepts what 4/0 AWG just carries: 37.44 kW at 240 V, 125 % of it 195 A', () => checkFindings(rule, `
    heater_model Hall {
        manual    "Hall manual, demo"
        power     37.44 kW
        supply    240 V single_phase
        body      40" x 27"
        depth     20"
        circuits  8
    }
    heater stove on right {
        model     Hall
        from      front 8"
        guard     yes
    }
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   wall { length 20'; ambient 86 degF }
    }
`));

test('stays silent while the run is not known', () => checkFindings(rule, `
    heater_model Hall {
        manual    "Hall manual, demo"
        power     60 kW
        supply    240 V single_phase
        body      40" x 27"
        depth     20"
        circuits  8
    }
    heater stove on right {
        model     Hall
        from      front 8"
        guard     yes
    }
    circuit stove_feed {
        feeds     stove
        disconnect_in_sight yes
        segment   wall { length 20'; ambient }
    }
`));
