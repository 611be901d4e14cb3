import { test } from 'vitest';
import { supplyWrongPhase as rule } from '../../../language/src/rules/electrical/supply-wrong-phase.js';
import { checkFindings } from '../../support/check.js';

test('reports the supply of a house under a three-phase heater', () => checkFindings(rule, `
    heater stove on right {
        model     Fell150
        from      front 8"
        guard     yes
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    240 V single_phase
        //        ^^^^^^^^^^^^^^^^^^ error: The supply of heater stove is 240 V single-phase; the heater is built for 208 V three-phase (Fell 150 installation manual, demo edition 3, rating). Choose a single-phase heater, or have a three-phase supply brought in. A licensed electrician confirms it and does the work.
        capacity  60 A
    }
`));

test('accepts the supply of the nameplate', () => checkFindings(rule, `
    heater stove on right {
        model     Fell150
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

test('accepts a single-phase heater between two lines of three', () => checkFindings(rule, `
    heater stove on right {
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

test('stays silent while the model is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     
        from      front 8"
        guard     yes
    }
`));
