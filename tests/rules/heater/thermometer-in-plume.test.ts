import { test } from 'vitest';
import { thermometerInPlume as rule } from '../../../language/src/rules/heater/thermometer-in-plume.js';
import { checkFindings } from '../../support/check.js';

// The casing ends at 24".
test('reports a thermometer beside the hot air', () => checkFindings(rule, `
    thermometer on right {
        from      front 30"
        //        ^^^^^^^^^ warning: The thermometer hangs over heater stove or less than 12" beside it; farther away is usual (common practice, no source). Hang it on another wall, near the heads of the bathers.
    }
`));

test('accepts a foot beside the heater', () => checkFindings(rule, `
    thermometer on right {
        from      front 36"
    }
`));

test('accepts another wall', () => checkFindings(rule, `
    thermometer on left {
        from      front 16"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    thermometer on right {
        from
    }
`));
