import { test } from 'vitest';
import { fittingOnOpening as rule } from '../../../language/src/rules/heater/fitting-on-opening.js';
import { checkFindings } from '../../support/check.js';

test('reports a fitting in the door', () => checkFindings(rule, `
    thermometer on front {
    //@ 1-12 error: The thermometer is fixed where door entry opens the front wall. Move it beside or over the opening.
        from      left 30"
        below_ceiling 10"
    }
`));

test('reports a lamp on a window', () => checkFindings(rule, `
    window view on left {
        model     View18
        from      front 4"
        sill      50"
    }
    light lamp on left {
    //@ 1-11 error: Light lamp is fixed where window view opens the left wall. Move it beside or over the opening.
        model     Ember
        from      front 8"
        height    62"
    }
`));

test('accepts a fitting at the edge of the glass', () => checkFindings(rule, `
    window view on left {
        model     View18
        from      front 14"
        sill      50"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    thermometer on front {
        from      
        below_ceiling 10"
    }
`));
