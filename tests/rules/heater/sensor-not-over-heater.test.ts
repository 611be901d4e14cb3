import { test } from 'vitest';
import { sensorNotOverHeater as rule } from '../../../language/src/rules/heater/sensor-not-over-heater.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The casing takes 8" to 24".
test('reports how far beside it is', () => checkFindings(rule, `
    sensor on right {
        centre    from front 30"
        //        ^^^^^^^^^^^^^^ 💡 error: The sensor is 6" beside heater stove; over it is needed (Tarn 60 installation sheet, demo edition 2). 24" from the front wall is over it.
        below_ceiling 5"
        cable     9'
    }
`));

test('accepts the edge of the casing', () => checkFindings(rule, `
    sensor on right {
        centre    from front 24"
        below_ceiling 5"
        cable     9'
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    sensor on right {
        centre
        below_ceiling 5"
        cable     9'
    }
`));

test('a fix moves it to the nearest place over the heater', () => checkFix(rule, `
    sensor on right {
        centre    from front 3"
        below_ceiling 5"
        cable     9'
    }
`, `
    sensor on right {
        centre    from front 8"
        below_ceiling 5"
        cable     9'
    }
`));
