import { test } from 'vitest';
import { sensorTooNearHeater as rule } from '../../../language/src/rules/heater/sensor-too-near-heater.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports how far it is and which wall is far enough', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_side_wall
        sensor_from_side 12"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    sensor on front {
        from      right 7"
        //        ^^^^^^^^ 💡 error: The sensor is 8" from the side of heater stove, measured along the right wall from that side to the front wall; 12" is needed (Odd sheet (fictional)). Another place on the front wall changes nothing. The back wall at 7 1/2" from the right wall is far enough. With the heater from front 12" the sensor may stay.
        below_ceiling 5"
    }
`));

// The casing ends at 24".
test('common practice is a remark', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    sensor on right {
        centre    from front 30"
        //        ^^^^^^^^^^^^^^ 💡 info: The sensor is 6" from the side of heater stove; 12" is needed (common practice, no source). The right wall at 36" from the front wall is far enough.
        below_ceiling 5"
        cable     9'
    }
`));

test('accepts exactly what the manual asks', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_side_wall
        sensor_from_side 12"
    }
    heater stove on right {
        model     Odd
        from      front 12"
        guard     yes
        backing   1 1/2"
    }
    sensor on front {
        from      right 7"
        below_ceiling 5"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_side_wall
        sensor_from_side 12"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    sensor on front {
        from      
        below_ceiling 5"
    }
`));

test('a fix moves it to the other wall', () => checkFix(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_side_wall
        sensor_from_side 12"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    sensor on front {
        from      right 7"
        below_ceiling 5"
    }
`, `
    sensor on back {
        from      right 7 1/2"
        below_ceiling 5"
    }
`));

test('a fix moves it along its wall', () => checkFix(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    sensor on right {
        centre    from front 30"
        below_ceiling 5"
        cable     9'
    }
`, `
    sensor on right {
        centre    from front 36"
        below_ceiling 5"
        cable     9'
    }
`));

test('a fix moves the heater and leaves the sensor', () => checkFix(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_side_wall
        sensor_from_side 12"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    sensor on front {
        from      right 7"
        below_ceiling 5"
    }
`, `
    heater stove on right {
        model     Odd
        from      front 12"
`, 'Move heater stove to front 12"'));
