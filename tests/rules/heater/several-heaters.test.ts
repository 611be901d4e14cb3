import { test } from 'vitest';
import { severalHeaters as rule } from '../../../language/src/rules/heater/several-heaters.js';
import { checkFindings } from '../../support/check.js';

test('reports every heater after the first', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    heater second on left {
    //@ 1-14 warning: Heater second is one more in the room. Each is held to the whole volume, and sensors are judged for stove alone; follow the manuals and ask the makers whether they may heat one room.
        model     Tarn60
        from      front 8"
    }
`));

test('accepts one heater', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the only one is being typed', () => checkFindings(rule, `
    heater stove on right {
        model
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
