import { test } from 'vitest';
import { intakeAboveHeater as rule } from '../../../language/src/rules/air/intake-above-heater.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports the height; the casing ends 30" over the floor', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        from      front 30"
        bottom    30"
        //        ^^^ info: Vent intake has its lower edge 30" over the floor; the top of heater stove is at 30", and air that only the heat moves comes in below that (common practice, no source). Lower it, unless a fan draws the air out.
        air       outdoors
    }
`));

test('accepts one that begins below the top', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        from      front 30"
        bottom    29 15/16"
        air       outdoors
    }
`));

test('accepts a second intake that is low', () => checkFindings(rule, `
    vent second on left { role intake; size 8" x 4"; from front 8"; bottom 4"; air outdoors }
    vent intake on right {
        size      8" x 4"
        from      front 30"
        bottom    50"
        air       outdoors
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        from      front 30"
        bottom
        air       outdoors
    }
`));
