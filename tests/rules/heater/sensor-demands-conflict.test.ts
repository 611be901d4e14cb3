import { test } from 'vitest';
import { sensorDemandsConflict as rule } from '../../../language/src/rules/heater/sensor-demands-conflict.js';
import { checkFindings } from '../../support/check.js';

test('names both demands and who decides', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_wall_over_heater
        sensor_below_ceiling 8" to 12"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    sensor on right {
        centre    from front 16"
        below_ceiling 9"
        //            ^^ warning: Heater stove wants its sensor 8" to 12" below the ceiling (Odd sheet (fictional)), and 6" or less is wanted too (IRC 2018, M1902.4); the two do not meet. The manual prevails here; ask the local authority, who decides.
        cable     9'
    }
`));

test('accepts demands that meet in one height', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_wall_over_heater
        sensor_below_ceiling 6" to 12"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the manual is being typed', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_wall_over_heater
        sensor_below_ceiling 8" to
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
