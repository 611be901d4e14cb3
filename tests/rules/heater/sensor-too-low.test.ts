import { test } from 'vitest';
import { sensorTooLow as rule } from '../../../language/src/rules/heater/sensor-too-low.js';
import { checkFindings, checkFix } from '../../support/check.js';

// IRC M1902.4: a remote sensing element within 6 in of the ceiling.
test('reports the code where the manual does not say', () => checkFindings(rule, `
    sensor on right {
        centre    from front 16"
        below_ceiling 8"
        //            ^^ 💡 error: The sensor of heater stove is 8" below the ceiling; 6" or less is needed (IRC 2018, M1902.4). Raise it to 6" below the ceiling.
        cable     9'
    }
`));

test('reports the manual where that is stricter', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        on_wall_over_heater
        sensor_below_ceiling 2" to 4"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    sensor on right {
        centre    from front 16"
        below_ceiling 5"
        //            ^^ 💡 error: The sensor of heater stove is 5" below the ceiling; 2" to 4" is needed (Odd sheet (fictional)). Raise it to 4" below the ceiling.
        cable     9'
    }
`));

test('common practice is a hint, and only an inch away from it', () => checkFindings(rule, `
    rules iec
    sensor on right {
        centre    from front 16"
        below_ceiling 14"
        //            ^^^ 💡 hint: The sensor of heater stove is 14" below the ceiling; 12" is needed (common practice, no source). Raise it to 12" below the ceiling.
        cable     9'
    }
`));

test('an inch from common practice is near enough', () => checkFindings(rule, `
    rules iec
    sensor on right {
        centre    from front 16"
        below_ceiling 13"
        cable     9'
    }
`));

test('accepts exactly what the code asks', () => checkFindings(rule, `
    sensor on right {
        centre    from front 16"
        below_ceiling 6"
        cable     9'
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    sensor on right {
        centre    from front 16"
        below_ceiling
        cable     9'
    }
`));

test('a fix raises it', () => checkFix(rule, `
    sensor on right {
        centre    from front 16"
        below_ceiling 8"
        cable     9'
    }
`, `
    sensor on right {
        centre    from front 16"
        below_ceiling 6"
        cable     9'
    }
`));

// 80 1/4" less 6".
test('a height over the floor stays one', () => checkFix(rule, `
    sensor on right {
        centre    from front 16"
        height    70"
        cable     9'
    }
`, `
    sensor on right {
        centre    from front 16"
        height    74 1/4"
        cable     9'
    }
`));
