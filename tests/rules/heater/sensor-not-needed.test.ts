import { test } from 'vitest';
import { sensorNotNeeded as rule } from '../../../language/src/rules/heater/sensor-not-needed.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the sensor', () => checkFindings(rule, `
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
    sensor on right {
    //@ 1-7 💡 warning: Heater stove has its thermostat built in (Odd sheet (fictional)); the sensor has nothing to be connected to. Leave it out.
        centre    from front 16"
        below_ceiling 5"
        cable     9'
    }
`));

test('accepts a sensor a heater needs', () => checkFindings(rule, `
    sensor on right {
        centre    from front 16"
        below_ceiling 5"
        cable     9'
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
        sensor
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('a fix takes it out', () => checkFix(rule, `
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
    sensor on right {
        centre    from front 16"
        below_ceiling 5"
        cable     9'
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`, `
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
