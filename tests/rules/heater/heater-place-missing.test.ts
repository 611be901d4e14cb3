import { test } from 'vitest';
import { heaterPlaceMissing as rule } from '../../../language/src/rules/heater/heater-place-missing.js';
import { checkFindings } from '../../support/check.js';

test('reports a heater with a wall and no distance', () => checkFindings(rule, `
    heater stove on right {
    //@ 1-13 error: Heater stove has no place on the right wall, so its clearances are not checked. Write from back or from front and the distance to its casing.
        model     Tarn60
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts a place to the middle', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        centre    from front 16"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from
        guard     yes
        backing   1 1/2"
    }
`));
