import { test } from 'vitest';
import { ventPlaceMissing as rule } from '../../../language/src/rules/air/vent-place-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports the vent', () => checkFindings(rule, `
    vent exhaust on front {
    //@ 1-13 error: Vent exhaust does not say where it stands along its wall. Add from or centre from with a neighbouring wall and a distance, or behind with a heater of that wall.
        size      8" x 4"
        below_ceiling 3"
    }
`));

test('accepts the middle of a heater as a place', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    4"
    }
`));

test('waits for a heater that has no place itself', () => checkFindings(rule, `
    heater stove on right { model Tarn60; guard yes }
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    4"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from
        below_ceiling 3"
    }
`));
