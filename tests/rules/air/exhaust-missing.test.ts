import { test } from 'vitest';
import { exhaustMissing as rule } from '../../../language/src/rules/air/exhaust-missing.js';
import { checkFindings } from '../../support/check.js';

// Source: IMC 914.5, an opening of 4 in by 8 in near the top of the door; IRC G2440.6 asks the same of gas heaters only.
test('is practice for a dwelling with an electric heater', () => checkFindings(rule, `
    // without vent exhaust
    room {
    //@ 1-5 warning: The room has no exhaust; an opening is needed low and across the room from the heater (common practice, no source). Write a block such as vent exhaust on left { size …; from front …; bottom …; air … } there.
        system    Skerry
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
`));

test('is asked for by the text for other buildings', () => checkFindings(rule, `
    // without vent exhaust
    rules us_commercial
    room {
    //@ 1-5 error: The room has no exhaust; an opening of 4" x 8" or more is needed near the top of the door (IMC 2018, 914.5). Write a block such as vent exhaust on left { size …; from front …; bottom …; air … } there.
        system    Skerry
        width     84"
        depth     79 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
`));

test('accepts an exhaust by its role, whatever its name', () => checkFindings(rule, `
    // without vent exhaust
    vent high on front { role exhaust; size 8" x 4"; from left 8"; below_ceiling 3"; air room }
`));

test('stays silent while the exhaust is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size
    }
`));
