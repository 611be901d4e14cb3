import { test } from 'vitest';
import { zoneCableRatingTooLow as rule } from '../../../language/src/rules/electrical/zone-cable-rating-too-low.js';
import { checkFindings } from '../../support/check.js';

// Source: IEC 60364-7-703, 703.512.2: insulation and sheath of cables withstand 170 °C in zone 3.
test('reports the model', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 105 degC; protection IPX4 }
    light lamp on left {
        model     Glim
        //        ^^^^ error: The cable of light lamp is rated 221 °F (105 °C) and reaches into zone 3; 338 °F (170 °C) is needed for insulation and sheath there (IEC 60364-7-703 ed. 2.0 (2004), 703.512.2). Choose a luminaire with such a cable, or have it wired with one. A licensed electrician confirms it and does the work.
        from      front 8"
        height    62"

    }
`));

test('accepts just 170 °C', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 170 degC; protection IPX4 }
    light lamp on left {
        model     Glim
        from      front 8"
        height    62"

    }
`));

test('asks for nothing wholly below 1 m', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 105 degC; protection IPX4 }
    light lamp on left {
        model     Glim
        from      front 8"
        height    600 mm

    }
`));

test('stays silent while the figure is being typed', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating; protection IPX4 }
    light lamp on left {
        model     Glim
        from      front 8"
        height    62"

    }
`));
