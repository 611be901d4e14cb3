import { test } from 'vitest';
import { roomTooLowForHeater as rule } from '../../../language/src/rules/heater/room-too-low-for-heater.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The ceiling panels are 3 3/4" thick.
test('reports the height of the room', () => checkFindings(rule, `
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    78"
        //        ^^^ 💡 error: The room is 74 1/4" high inside; heater stove needs 75" (Tarn 60 installation sheet, demo edition 2). Make the room 78 3/4" high or choose a heater for a lower room.
        ceiling   spans_left_to_right
    }
`));

test('accepts exactly what the manual asks', () => checkFindings(rule, `
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    78 3/4"
        ceiling   spans_left_to_right
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height
        ceiling   spans_left_to_right
    }
`));

test('a fix raises the room', () => checkFix(rule, `
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    78"
        ceiling   spans_left_to_right
    }
`, `
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    78 3/4"
        ceiling   spans_left_to_right
    }
`));
