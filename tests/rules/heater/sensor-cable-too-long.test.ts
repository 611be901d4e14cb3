import { test } from 'vitest';
import { sensorCableTooLong as rule } from '../../../language/src/rules/heater/sensor-cable-too-long.js';
import { checkFindings } from '../../support/check.js';

test('reports the cable', () => checkFindings(rule, `
    sensor on right {
        centre    from front 16"
        below_ceiling 5"
        cable     14'
        //        ^^^ error: The cable of the sensor is 168" long; 144" is the most for heater stove (Tarn 60 installation sheet, demo edition 2). Run it a shorter way or bring control and heater nearer.
    }
`));

test('accepts exactly what the manual allows', () => checkFindings(rule, `
    sensor on right {
        centre    from front 16"
        below_ceiling 5"
        cable     12'
    }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    sensor on right {
        centre    from front 16"
        below_ceiling 5"
        cable
    }
`));
