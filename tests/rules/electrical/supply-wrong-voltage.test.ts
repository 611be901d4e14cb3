import { test } from 'vitest';
import { supplyWrongVoltage as rule } from '../../../language/src/rules/electrical/supply-wrong-voltage.js';
import { checkFindings } from '../../support/check.js';

// Source of the figure: P = V² / R, a law of physics.
test('reports the supply with the power it would give: (208/240)² of 4.5 kW', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn45
        from      front 8"
        guard     yes
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    208 V single_phase
        //        ^^^^^^^^^^^^^^^^^^ error: The supply of heater stove is 208 V single-phase; the heater is built for 240 V single-phase (Tarn 45 installation sheet, demo edition 1, rating). On that supply it would give 3.38 kW instead of 4.5 kW. Choose a heater of the supply's voltage, or another supply. A licensed electrician confirms it and does the work.
        capacity  60 A
    }
`));

test('accepts a second voltage of the nameplate', () => checkFindings(rule, `
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
        supply    208 V single_phase
        capacity  60 A
    }
`));

test('leaves a supply the site does not have to the rule about that', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn45
        from      front 8"
        guard     yes
        supply    208 V single_phase
    }
`));

test('stays silent while the supply is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn45
        from      front 8"
        guard     yes
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    208 V
        capacity  60 A
    }
`));
