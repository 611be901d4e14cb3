import { test } from 'vitest';
import { lightRatingMissing as rule } from '../../../language/src/rules/electrical/light-rating-missing.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports the model', () => checkFindings(rule, `
    light_model Glim { body 6" x 8"; depth 3";  }
    light lamp on left {
        model     Glim
        //        ^^^^ info: Light lamp ends 4 1/4" below the ceiling and states no rating; 257 °F (125 °C) is needed in the top 300 mm (≈11 13/16") (common practice, no source). Add rating as its maker states it. A licensed electrician confirms it and does the work.
        from      front 8"
        height    68"

    }
`));

test('accepts a rating in the job', () => checkFindings(rule, `
    light_model Glim { body 6" x 8"; depth 3";  }
    light lamp on left {
        model     Glim
        from      front 8"
        height    68"
        rating    125 degC
    }
`));

test('accepts one below the hot air', () => checkFindings(rule, `
    light_model Glim { body 6" x 8"; depth 3";  }
    light lamp on left {
        model     Glim
        from      front 8"
        height    50"

    }
`));

test('stays silent while the rating is being typed', () => checkFindings(rule, `
    light_model Glim { body 6" x 8"; depth 3";  }
    light lamp on left {
        model     Glim
        from      front 8"
        height    68"
        rating
    }
`));
