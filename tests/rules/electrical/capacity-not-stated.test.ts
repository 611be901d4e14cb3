import { test } from 'vitest';
import { capacityNotStated as rule } from '../../../language/src/rules/electrical/capacity-not-stated.js';
import { checkFindings } from '../../support/check.js';

test('reports the supply', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        //        ^^^^^^^^^^^^^^^^^^ info: The site does not state what its supply can spare; 31.25 A for heater stove is needed. Have a licensed electrician reckon the load of the panel, and add the figure as capacity.
    }
`));

test('accepts a stated capacity', () => checkFindings(rule, `
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  20 A
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
