import { test } from 'vitest';
import { clearanceAboveTooSmall as rule } from '../../../language/src/rules/heater/clearance-above-too-small.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The casing ends at 8" + 22" = 30".
test('reports what hangs over the heater', () => checkFindings(rule, `
    fitting peg on right {
        what      hook
        size      4" x 2"
        depth     3"
        from      front 14"
        //        ^^^^^^^^^ error: Hook peg is 30" above heater stove; 45" is needed (Tarn 60 installation sheet, demo edition 2). Move hook peg; no position of the heater along the right wall clears everything.
        bottom    60"
    }
`));

// Inside 84" - 3 3/4" = 80 1/4" high.
test('reports the height of the room for the ceiling', () => checkFindings(rule, `
    heater_model Tall {
        manual        "Tall sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        clear_side    4"
        clear_front   4"
        clear_above   60"
        clear_below   6"
        clear_bench   4"
    }
    heater stove on right {
        model     Tall
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    7'0"
        //        ^^^^ 💡 error: The ceiling is 50 1/4" above heater stove; 60" is needed (Tall sheet (fictional)). Make the room 93 3/4" high or choose a lower heater.
        ceiling   spans_left_to_right
    }
`));

// Both want 75" inside.
test('leaves the ceiling to the least room height when that asks for as much', () => checkFindings(rule, `
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    78"
        ceiling   spans_left_to_right
    }
`));

test('accepts exactly what the manual asks', () => checkFindings(rule, `
    fitting peg on right {
        what      hook
        size      4" x 2"
        depth     3"
        from      front 14"
        bottom    75"
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    fitting peg on right {
        what      hook
        size      4" x 2"
        depth     3"
        from      front 14"
        bottom    
    }
`));

test('a fix moves the heater aside where the wall has room', () => checkFix(rule, `
    fitting peg on right {
        what      hook
        size      4" x 2"
        depth     3"
        from      front 6"
        bottom    60"
    }
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`, `
    fitting peg on right {
        what      hook
        size      4" x 2"
        depth     3"
        from      front 6"
        bottom    60"
    }
    heater stove on right {
        model     Tarn60
        from      front 14"
        guard     yes
        backing   1 1/2"
    }
`));

test('a fix raises the room', () => checkFix(rule, `
    heater_model Tall {
        manual        "Tall sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        clear_side    4"
        clear_front   4"
        clear_above   60"
        clear_below   6"
        clear_bench   4"
    }
    heater stove on right {
        model     Tall
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
`, `
    heater stove on right {
        model     Tall
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    room {
        system    Skerry
        width     84"
        depth     79 1/2"
        height    93 3/4"
        ceiling   spans_left_to_right
    }
`));
