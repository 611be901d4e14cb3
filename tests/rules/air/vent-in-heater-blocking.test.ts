import { test } from 'vitest';
import { ventInHeaterBlocking as rule } from '../../../language/src/rules/air/vent-in-heater-blocking.js';
import { checkFindings } from '../../support/check.js';

// The manual of the (fictional) heater has the screws 18" over its underside, which is 8" over the floor, and 10" apart.
test('reports the height with those that are clear', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    22"
        //        ^^^ error: Vent intake is 22" to 26" over the floor, in the blocking of heater stove, whose upper screws are at 26"; 24" to 28" is kept whole (common practice, no source). A lower edge up to 20", or from 28" up, is clear of it.
        air       outdoors
    }
`));

test('accepts one that touches it from below', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    20"
        air       outdoors
    }
`));

test('accepts one that touches it from above', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    28"
        air       outdoors
    }
`));

test('accepts one beside it', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        from      front 23"
        bottom    24"
        air       outdoors
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom
        air       outdoors
    }
`));
