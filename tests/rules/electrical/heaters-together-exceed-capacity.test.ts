import { test } from 'vitest';
import { heatersTogetherExceedCapacity as rule } from '../../../language/src/rules/electrical/heaters-together-exceed-capacity.js';
import { checkFindings } from '../../support/check.js';

test('reports two heaters that fit one by one: twice 31.25 A is 62.5 A', () => checkFindings(rule, `
    heater second on left {
        model     Tarn60
        from      front 8"
        guard     yes
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  60 A
        //        ^^^^ error: The supply can spare 60 A; heaters second and stove together need 62.5 A (NEC 2023, 424.4(B)). Choose smaller heaters, or have the supply enlarged. A licensed electrician confirms it and does the work.
    }
`));

test('accepts just as much as both need', () => checkFindings(rule, `
    heater second on left {
        model     Tarn60
        from      front 8"
        guard     yes
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  62.5 A
    }
`));

test('leaves one heater that is too large alone to the rule about that', () => checkFindings(rule, `
    heater second on left {
        model     Tarn60
        from      front 8"
        guard     yes
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  31 A
    }
`));

test('does not add the lines of a three-phase supply', () => checkFindings(rule, `
    heater second on left {
        model     Tarn60
        from      front 8"
        guard     yes
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    208 V three_phase
        capacity  60 A
    }
`));

test('stays silent while the second heater is being typed', () => checkFindings(rule, `
    heater second on left {
        model     
        from      front 8"
        guard     yes
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        capacity  60 A
    }
`));
