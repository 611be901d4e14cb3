import { test } from 'vitest';
import { waterProtectionTooLow as rule } from '../../../language/src/rules/electrical/water-protection-too-low.js';
import { checkFindings } from '../../support/check.js';

// Source: BS 7671:2008 and later, 703.512.2: at least IPX4.
test('reports a model that has none', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 180 degC; protection none }
    light lamp on left {
        model     Glim
        //        ^^^^ error: Light lamp has no protection against water; IPX4 or more is needed in the room (BS 7671 2008 and later, 703.512.2). Choose one that has it. A licensed electrician confirms it and does the work.
        from      front 8"
        height    62"

    }
`));

test('accepts IPX4 and what has a fourth figure of 4', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 180 degC; protection IP24 }
    light lamp on left {
        model     Glim
        from      front 8"
        height    62"

    }
`));

test('stays silent while the protection is being typed', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 180 degC; protection }
    light lamp on left {
        model     Glim
        from      front 8"
        height    62"

    }
`));
