import { test } from 'vitest';
import { guardLeavesWall as rule } from '../../../language/src/rules/heater/guard-leaves-wall.js';
import { checkFindings } from '../../support/check.js';

test('reports how far it reaches', () => checkFindings(rule, `
    heater_model Broad {
        manual        "Broad sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        clear_side    4"
        clear_front   4"
        clear_above   45"
        clear_below   6"
        clear_bench   4"
        guard_offset  6"
    }
    heater stove on right {
        model     Broad
        from      front 5"
        //        ^^^^^^^^ error: The guard of heater stove reaches 1" past the corner; it stays 6" off the casing (Broad sheet (fictional)). Move the heater 1" away from the corner.
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts a guard that ends in the corner', () => checkFindings(rule, `
    heater_model Broad {
        manual        "Broad sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        clear_side    4"
        clear_front   4"
        clear_above   45"
        clear_below   6"
        clear_bench   4"
        guard_offset  6"
    }
    heater stove on right {
        model     Broad
        from      front 6"
        guard     yes
        backing   1 1/2"
    }
`));

test('leaves a wall that is too near the casing itself to that rule', () => checkFindings(rule, `
    heater_model Broad {
        manual        "Broad sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        clear_side    4"
        clear_front   4"
        clear_above   45"
        clear_below   6"
        clear_bench   4"
        guard_offset  6"
    }
    heater stove on right {
        model     Broad
        from      front 3"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater_model Broad {
        manual        "Broad sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        clear_side    4"
        clear_front   4"
        clear_above   45"
        clear_below   6"
        clear_bench   4"
        guard_offset  6"
    }
    heater stove on right {
        model     Broad
        from
        guard     yes
        backing   1 1/2"
    }
`));
