import { test } from 'vitest';
import { roomVolumeBelowRange as rule } from '../../../language/src/rules/heater/room-volume-below-range.js';
import { checkFindings } from '../../support/check.js';

// 76 1/2" x 72" x 80 1/4" inside are 255.796875 ft3.
test('reports the model with both ends of its range', () => checkFindings(rule, `
    heater stove on right {
        model     Fell150
        //        ^^^^^^^ error: For heater stove the room counts 255.8 ft3; 500 ft3 to 900 ft3 is its range (Fell 150 installation manual, demo edition 3). Choose a smaller heater or a larger room.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('answers in the unit of the range, with as many decimals as tell them apart', () => checkFindings(rule, `
    heater_model Mid {
        manual        "Mid sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        volume        7.2435 m3 to 12 m3
    }
    heater stove on right {
        model     Mid
        //        ^^^ error: For heater stove the room counts 7.243 m3; 7.2435 m3 to 12 m3 is its range (Mid sheet (fictional)). Choose a smaller heater or a larger room.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts the end of the range', () => checkFindings(rule, `
    heater_model Mid {
        manual        "Mid sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        volume        255.796875 ft3 to 400 ft3
    }
    heater stove on right {
        model     Mid
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the range is being typed', () => checkFindings(rule, `
    heater_model Mid {
        manual        "Mid sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        volume
    }
    heater stove on right {
        model     Mid
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
