import { test } from 'vitest';
import { sensorOnWrongWall as rule } from '../../../language/src/rules/heater/sensor-on-wrong-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the wall for a sensor that goes over the heater', () => checkFindings(rule, `
    sensor on left {
    //        ^^^^ 💡 error: The sensor of heater stove is on the left wall; the right wall, over it, is needed (Tarn 60 installation sheet, demo edition 2).
        centre    from front 16"
        below_ceiling 5"
        cable     9'
    }
`));

test('reports the wall for a sensor that goes beside the heater', () => checkFindings(rule, `
    sensor on right {
    //        ^^^^^ 💡 error: The sensor of heater stove is on the right wall; a wall beside it, back or front, is needed (Tarn 80 installation sheet, demo edition 2).
        centre    from front 16"
        below_ceiling 5"
        cable     9'
    }
    heater stove on right {
        model     Tarn80
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts either wall beside it', () => checkFindings(rule, `
    sensor on front {
        centre    from right 8"
        below_ceiling 5"
        cable     9'
    }
    heater stove on right {
        model     Tarn80
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    sensor on left {
        centre
        below_ceiling 5"
        cable     9'
    }
`));

test('a fix moves it over the heater', () => checkFix(rule, `
    sensor on left {
        centre    from front 16"
        below_ceiling 5"
        cable     9'
    }
`, `
    sensor on right {
        centre    from front 16"
        below_ceiling 5"
        cable     9'
    }
`));

// The casing stands 2" to 14" off the right wall; the front wall is only 8" from its side.
test('a fix moves it to the wall that is far enough away, level with the heater', () => checkFix(rule, `
    sensor on left {
        centre    from front 16"
        below_ceiling 5"
        cable     9'
    }
    heater stove on right {
        model     Tarn80
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`, `
    sensor on back {
        centre    from right 8"
        below_ceiling 5"
        cable     9'
    }
`));
