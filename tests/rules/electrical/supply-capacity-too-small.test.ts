import { test } from 'vitest';
import { supplyCapacityTooSmall as rule } from '../../../language/src/rules/electrical/supply-capacity-too-small.js';
import { checkFindings } from '../../support/check.js';

// Source: NEC 424.4(B) (424.3(B) up to 2017), 125 % of a continuous load.
test('reports the capacity: 6 kW at 240 V is 25 A, and 125 % of that is 31.25 A', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  30 A
        //        ^^^^ error: The supply can spare 30 A; 31.25 A is needed for heater stove, 125 % of its 25 A (NEC 2023, 424.4(B)). Choose a smaller heater, or have the supply enlarged. A licensed electrician confirms it and does the work.
    }
`));

test('takes the current itself under the IEC rules', () => checkFindings(rule, `
    rules iec
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  24 A
        //        ^^^^ error: The supply can spare 24 A; 25 A is needed for heater stove (IEC 60364-5-52…
    }
`));

test('accepts just as much as is needed', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  31.25 A
    }
`));

test('stays silent while the capacity is being typed', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  
    }
`));
