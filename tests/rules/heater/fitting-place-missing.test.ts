import { test } from 'vitest';
import { fittingPlaceMissing as rule } from '../../../language/src/rules/heater/fitting-place-missing.js';
import { checkFindings } from '../../support/check.js';

test('names all that is missing in one finding', () => checkFindings(rule, `
    sensor on right {
    //@ 1-7 error: The sensor has no place on its wall, so nothing is checked about it. Write from back or from front with a distance and its height.
        cable     9'
    }
`));

test('names a light by its name', () => checkFindings(rule, `
    light lamp on left {
    //@ 1-11 error: Light lamp has no place on its wall, so nothing is checked about it. Write from front or from back with a distance.
        model     Ember
        height    62"
    }
`));

test('accepts a height over the floor', () => checkFindings(rule, `
    sensor on right {
        centre    from front 16"
        height    74"
        cable     9'
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    sensor on right {
        centre
        height    74"
        cable     9'
    }
`));
