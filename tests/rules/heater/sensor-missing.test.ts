import { test } from 'vitest';
import { sensorMissing as rule } from '../../../language/src/rules/heater/sensor-missing.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the heater and where the sensor goes', () => checkFindings(rule, `
    // without sensor
    heater stove on right {
    //@ 1-13 💡 error: Heater stove has no sensor; its thermostat is not built in and needs one (Tarn 60 installation sheet, demo edition 2). It goes 6" or less below the ceiling on the right wall. Write sensor on right { centre from front 16"; below_ceiling 6" }.
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('a thermostat built in needs none', () => checkFindings(rule, `
    // without sensor
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
        sensor        built_in
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the sensor is being typed', () => checkFindings(rule, `
    sensor on right {
        centre
        cable     9'
    }
`));

test('a fix puts it over the heater as high as code and manual let it', () => checkFix(rule, `
    // without sensor
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
        sensor on right { centre from front 16"; below_ceiling 6" }
`));
