import { test } from 'vitest';
import { ventHeightMissing as rule } from '../../../language/src/rules/air/vent-height-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports the vent', () => checkFindings(rule, `
    vent exhaust on front {
    //@ 1-13 error: Vent exhaust does not say how high it stands. Add bottom, from the floor to its lower edge, or below_ceiling, from the ceiling lining to its upper edge.
        size      8" x 4"
        from      left 8"
    }
`));

test('accepts a height from the floor', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom    4"
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom
    }
`));
