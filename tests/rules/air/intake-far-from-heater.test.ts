import { test } from 'vitest';
import { intakeFarFromHeater as rule } from '../../../language/src/rules/air/intake-far-from-heater.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source; 24" is our reading of near.
test('reports the place', () => checkFindings(rule, `
    vent intake on left {
        size      8" x 4"
        from      front 8"
        //        ^^^^^^^^ info: Vent intake is 63 1/2" from the heater; near it is the usual place, read as within 24" (common practice, no source). Move it to the heater, or behind it.
        bottom    4"
        air       outdoors
    }
`));

test('accepts one within 24": the casing ends 24" from the front and stands 2" off the wall', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        from      front 47 3/4"
        bottom    4"
        air       outdoors
    }
`));

test('does not ask it where practice is not named', () => checkFindings(rule, `
    rules us_dwelling
    vent intake on left {
        size      8" x 4"
        from      front 8"
        bottom    4"
        air       outdoors
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    vent intake on left {
        size      8" x 4"
        from
        bottom    4"
        air       outdoors
    }
`));
