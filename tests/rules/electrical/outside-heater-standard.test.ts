import { test } from 'vitest';
import { outsideHeaterStandard as rule } from '../../../language/src/rules/electrical/outside-heater-standard.js';
import { checkFindings } from '../../support/check.js';

// Source: IEC 60335-2-53:2011, scope: up to 20 kW, 250 V single-phase, 480 V otherwise.
test('reports the power', () => checkFindings(rule, `
    rules iec
    heater_model Hall {
        manual    "Hall manual, demo"
        power     24 kW
        supply    400 V three_phase
        body      40" x 27"
        depth     20"
    }
    heater stove on right {
        model     Hall
        //        ^^^^ info: The power of heater stove is 24 kW; 20 kW is the most its product standard covers (IEC 60335-2-53 ed. 4 (2011), 1). Ask its maker which standard it was tested to.
        from      front 8"
        guard     yes
        supply    400 V three_phase
    }
`));

test('reports the voltage', () => checkFindings(rule, `
    rules iec
    heater_model Hall {
        manual    "Hall manual, demo"
        power     6 kW
        supply    277 V single_phase
        body      40" x 27"
        depth     20"
    }
    heater stove on right {
        model     Hall
        //        ^^^^ info: The supply of heater stove is 277 V; 250 V is the most its product standard covers…
        from      front 8"
        guard     yes
        supply    277 V single_phase
    }
`));

test('accepts just 20 kW', () => checkFindings(rule, `
    rules iec
    heater_model Hall {
        manual    "Hall manual, demo"
        power     20 kW
        supply    400 V three_phase
        body      40" x 27"
        depth     20"
    }
    heater stove on right {
        model     Hall
        from      front 8"
        guard     yes
        supply    400 V three_phase
    }
`));

test('stays silent while the power is being typed', () => checkFindings(rule, `
    rules iec
    heater_model Hall {
        manual    "Hall manual, demo"
        power     24
        supply    400 V three_phase
        body      40" x 27"
        depth     20"
    }
    heater stove on right {
        model     Hall
        from      front 8"
        guard     yes
        supply    400 V three_phase
    }
`));
