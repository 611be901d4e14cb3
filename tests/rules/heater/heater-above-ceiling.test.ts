import { test } from 'vitest';
import { heaterAboveCeiling as rule } from '../../../language/src/rules/heater/heater-above-ceiling.js';
import { checkFindings } from '../../support/check.js';

test('reports the model with both heights', () => checkFindings(rule, `
    heater_model Tower {
        manual        "Tower sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 76"
        depth         11"
        off_wall      2"
        off_floor     8"
    }
    heater stove on right {
        model     Tower
        //        ^^^^^ error: Heater stove reaches up to 84"; the ceiling lining is at 80 1/4", 3 3/4" lower (Tower sheet (fictional)). Choose a lower heater or raise the room.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts a casing that ends at the lining', () => checkFindings(rule, `
    heater_model Tower {
        manual        "Tower sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 72 1/4"
        depth         11"
        off_wall      2"
        off_floor     8"
    }
    heater stove on right {
        model     Tower
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the body is being typed', () => checkFindings(rule, `
    heater_model Tower {
        manual        "Tower sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x
        depth         11"
        off_floor     8"
    }
    heater stove on right {
        model     Tower
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
