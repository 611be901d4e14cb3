import { test } from 'vitest';
import { lightRatingTooLow as rule } from '../../../language/src/rules/electrical/light-rating-too-low.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports the rating and the height that would do', () => checkFindings(rule, `
    light lamp on left {
        model     Ember
        from      front 8"
        height    68"
        rating    90 degC
        //        ^^^^^^^ warning: Light lamp is rated 194 °F (90 °C) and ends 4 1/4" below the ceiling; 257 °F (125 °C) is needed in the top 300 mm (≈11 13/16") (common practice, no source). Choose one with that rating, or place its underside no higher than ≈60 7/16". A licensed electrician confirms it and does the work.
    }
`));

test('reports the model when the rating is its own', () => checkFindings(rule, `
    light_model Glim { body 6" x 8"; depth 3"; rating 90 degC }
    light lamp on left {
        model     Glim
        //        ^^^^ warning: Light lamp is rated 194 °F (90 °C)…
        from      front 8"
        height    68"

    }
`));

test('accepts just 125 °C', () => checkFindings(rule, `
    light lamp on left {
        model     Ember
        from      front 8"
        height    68"
        rating    125 degC
    }
`));

test('accepts one whose upper edge is just 300 mm below the ceiling, at 80 1/4"', () => checkFindings(rule, `
    light lamp on left {
        model     Ember
        from      front 8"
        height    80 1/4" - 8" - 300 mm
        rating    90 degC
    }
`));

test('leaves it to the zones under the IEC rules', () => checkFindings(rule, `
    rules iec, good_practice
    light lamp on left {
        model     Ember
        from      front 8"
        height    68"
        rating    90 degC
    }
`));

test('does not ask it where practice is not named', () => checkFindings(rule, `
    rules us_dwelling
    light lamp on left {
        model     Ember
        from      front 8"
        height    68"
        rating    90 degC
    }
`));

test('stays silent while the rating is being typed', () => checkFindings(rule, `
    light lamp on left {
        model     Ember
        from      front 8"
        height    68"
        rating
    }
`));
