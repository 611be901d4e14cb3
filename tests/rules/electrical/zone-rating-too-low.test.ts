import { test } from 'vitest';
import { zoneRatingTooLow as rule } from '../../../language/src/rules/electrical/zone-rating-too-low.js';
import { checkFindings } from '../../support/check.js';

// Source: IEC 60364-7-703, 703.512.2: 125 °C in zone 3, which begins 1 m above the floor.
test('reports the rating', () => checkFindings(rule, `
    rules iec
    light lamp on left {
        model     Ember
        from      front 8"
        height    62"
        rating    105 degC
        //        ^^^^^^^^ error: Light lamp is rated 221 °F (105 °C) and reaches into zone 3; 257 °F (125 °C) is needed there (IEC 60364-7-703 ed. 2.0 (2004), 703.512.2). Choose one with that rating, or place it wholly below 1 m. A licensed electrician confirms it and does the work.
    }
`));

test('reports the model when the rating is its own', () => checkFindings(rule, `
    rules iec
    light_model Glim { body 6" x 8"; depth 3"; rating 105 degC; cable_rating 180 degC; protection IPX4 }
    light lamp on left {
        model     Glim
        //        ^^^^ error: Light lamp is rated 221 °F (105 °C)…
        from      front 8"
        height    62"

    }
`));

test('accepts just 125 °C', () => checkFindings(rule, `
    rules iec
    light lamp on left {
        model     Ember
        from      front 8"
        height    62"
        rating    125 degC
    }
`));

test('asks for nothing wholly below 1 m', () => checkFindings(rule, `
    rules iec
    light lamp on left {
        model     Ember
        from      front 8"
        height    700 mm
        rating    60 degC
    }
`));

test('stays silent while the rating is being typed', () => checkFindings(rule, `
    rules iec
    light lamp on left {
        model     Ember
        from      front 8"
        height    62"
        rating
    }
`));
