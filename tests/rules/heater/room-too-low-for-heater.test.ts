import { test } from 'vitest';
import { roomTooLowForHeater as rule } from '../../../language/src/rules/heater/room-too-low-for-heater.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The ceiling panels are 3 3/4" thick. The door stays below the ceiling, so the heater alone asks for height.
test('reports the height of the room', () => checkFindings(rule, `
    heater_model Tall { manual "Tall sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; room_height 79" }
    heater stove on right { model Tall; from front 8"; guard yes; backing 1 1/2" }
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    82"
        //        ^^^ 💡 error: The room is 78 1/4" high inside; heater stove needs 79" (Tall sheet (fictional)). Make the room 82 3/4" high or choose a heater for a lower room.
        ceiling   spans_left_to_right
    }
`));

test('accepts exactly what the manual asks', () => checkFindings(rule, `
    heater_model Tall { manual "Tall sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; room_height 79" }
    heater stove on right { model Tall; from front 8"; guard yes; backing 1 1/2" }
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    82 3/4"
        ceiling   spans_left_to_right
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    heater_model Tall { manual "Tall sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; room_height 79" }
    heater stove on right { model Tall; from front 8"; guard yes; backing 1 1/2" }
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height
        ceiling   spans_left_to_right
    }
`));

test('a fix raises the room', () => checkFix(rule, `
    heater_model Tall { manual "Tall sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; room_height 79" }
    heater stove on right { model Tall; from front 8"; guard yes; backing 1 1/2" }
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    82"
        ceiling   spans_left_to_right
    }
`, `
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    82 3/4"
        ceiling   spans_left_to_right
    }
`));

test('is silent where the door wants a higher room as well: then the room is the cause', () => checkFindings(rule, `
    room { system Skerry; width 84"; depth 79 1/2"; height 78"; ceiling spans_left_to_right }
`));
