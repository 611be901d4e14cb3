import { test } from 'vitest';
import { roomVolumeAboveRange as rule } from '../../../language/src/rules/heater/room-volume-above-range.js';
import { checkFindings } from '../../support/check.js';

// 76 1/2" x 72" x 80 1/4" inside are 255.796875 ft3.
test('reports the model with both ends of its range', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn45
        //        ^^^^^^ error: For heater stove the room counts 255.8 ft3; 100 ft3 to 210 ft3 is its range (Tarn 45 installation sheet, demo edition 1). Choose a larger heater or a smaller room.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

// A pane of 16" x 60" is 0.6194 m2; 1.2 m of depth makes 0.7432 m3 = 26.2 ft3 of it.
test('warns when only the allowance for glass takes the room out of the range', () => checkFindings(rule, `
    heater_model Mid {
        manual        "Mid sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        volume        170 ft3 to 270 ft3
    }
    heater stove on right {
        model     Mid
        //        ^^^ warning: For heater stove the room counts 282 ft3 (255.8 ft3 inside and 26.2 ft3 for uninsulated glass, stone, tile or log; common practice, no source); 170 ft3 to 270 ft3 is its range (Mid sheet (fictional)). Choose a larger heater, less glass or stone, or a smaller room.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    door entry on front {
        model     Glass24
        from      left 23 7/8"
        hinge     left
    }
`));

test('accepts the end of the range', () => checkFindings(rule, `
    heater_model Mid {
        manual        "Mid sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        volume        170 ft3 to 255.796875 ft3
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
        volume        170 ft3 to
    }
    heater stove on right {
        model     Mid
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
