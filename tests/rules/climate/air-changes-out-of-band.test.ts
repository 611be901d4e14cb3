import { test } from 'vitest';
import { airChangesOutOfBand as rule } from '../../../language/src/rules/climate/air-changes-out-of-band.js';
import { checkFindings } from '../../support/check.js';

// Flow by the stack, ASHRAE Fundamentals 1997, 25.13, compared in tests/published/u-value.ts.
test('openings that let next to nothing through', () => checkFindings(rule, `
    vent intake on right { size 2" x 1"; behind stove; bottom 4"; air outdoors }
    //@ 1-12 info: The warmth of the room drives 0.5 air changes an hour through its openings; 3 to 8 are wanted (common practice, no source). Let the used air out higher up or through larger openings, or state a fan.
    vent exhaust on front { size 2" x 1"; from left 3"; bottom 4"; air room }
`));
test('openings that let too much through', () => checkFindings(rule, `
    vent intake on right { size 12" x 8"; behind stove; bottom 4"; air outdoors }
    //@ 1-12 info: The warmth of the room drives…
    vent exhaust on front { size 12" x 8"; from left 3"; below_ceiling 4"; air room }
`));
test('accepts what is within a quarter of the band', () => checkFindings(rule, 'vent exhaust on front { size 8" x 4"; from left 3"; bottom 4"; air room }'));
test('stays silent while a size is being typed', () => checkFindings(rule, 'vent exhaust on front { size 2" x; from left 3"; bottom 4"; air room }'));
