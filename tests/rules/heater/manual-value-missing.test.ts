import { test } from 'vitest';
import { manualValueMissing as rule } from '../../../language/src/rules/heater/manual-value-missing.js';
import { checkFindings } from '../../support/check.js';

test('names the one figure that is missing', () => checkFindings(rule, `
    heater stove on right {
        model     Beck60
        //        ^^^^^^ warning: Beck 60 leaflet, demo edition 1 does not state the least room height of heater stove; what depends on it is not checked. Ask the maker of the heater and write room_height in its entry.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('names all of them in one finding', () => checkFindings(rule, `
    heater_model Bare {
        manual        "Bare sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        clear_front   4"
        clear_above   45"
        clear_below   6"
        clear_bench   4"
        room_height   75"
        fasten_height 18"
        fasten_width  10"
        guard         required
    }
    heater stove on right {
        model     Bare
        //        ^^^^ warning: Bare sheet (fictional) does not state the volume range, the clearance to the sides, the place of the sensor and the place of the control of heater stove; what depends on them is not checked. Ask the maker of the heater and write volume, clear_side, sensor and control in its entry.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('wants the clearance to the floor only where the floor burns', () => checkFindings(rule, `
    heater_model Bare {
        manual        "Bare sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        clear_side    4"
        clear_front   4"
        clear_above   45"
        clear_bench   4"
        volume        170 ft3 to 300 ft3
        room_height   75"
        fasten_height 18"
        fasten_width  10"
        guard         required
        sensor        built_in
        control       on_heater
    }
    heater stove on right {
        model     Bare
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts a whole entry, with no figure for benches', () => checkFindings(rule, `
    heater_model Whole {
        manual        "Whole sheet (fictional)"
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
        volume        170 ft3 to 300 ft3
        room_height   75"
        fasten_height 18"
        fasten_width  10"
        guard         not_needed
        sensor        built_in
        control       on_heater
    }
    heater stove on right {
        model     Whole
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the entry is being typed', () => checkFindings(rule, `
    heater_model Bare {
        manual        "Bare sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        room_height
    }
    heater stove on right {
        model     Bare
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
