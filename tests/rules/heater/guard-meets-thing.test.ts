import { test } from 'vitest';
import { guardMeetsThing as rule } from '../../../language/src/rules/heater/guard-meets-thing.js';
import { checkFindings } from '../../support/check.js';

// The casing ends at 31", its guard at 37", and the lower bench begins at 36".
test('reports a bench in the place of the guard, once for all its pieces', () => checkFindings(rule, `
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
        from      front 15"
        //        ^^^^^^^^^ error: The guard of heater stove stands where bench lower is; it stays 6" off the casing (Broad sheet (fictional)). Move one of them.
        guard     yes
        backing   1 1/2"
    }
`));

test('reports a fitting where it stands', () => checkFindings(rule, `
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
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    fitting peg on right {
        what      hook
        size      4" x 2"
        depth     3"
        from      front 28"
        //        ^^^^^^^^^ error: The guard of heater stove stands where hook peg is; it stays 6" off the casing (Broad sheet (fictional)). Move one of them.
        bottom    20"
    }
`));

test('accepts a guard that touches the bench', () => checkFindings(rule, `
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
        from      front 14"
        guard     yes
        backing   1 1/2"
    }
`));

test('leaves a bench that is too near the casing itself to that rule', () => checkFindings(rule, `
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
        from      front 17"
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
