import { test } from 'vitest';
import { supplyNotOnSite as rule } from '../../../language/src/rules/electrical/supply-not-on-site.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports a supply nobody has on site', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        supply    208 V single_phase
        //        ^^^^^^^^^^^^^^^^^^ 💡 error: Heater stove is connected to 208 V single-phase; the supply of the site is 240 V single-phase. Write what the panel really offers in one of the two places. A licensed electrician confirms it and does the work.
    }
`));

test('accepts a line to neutral of a three-phase supply: 400 V over √3 is 231 V, sold as 230 V', () => checkFindings(rule, `
    heater stove on right {
        model     Loch60
        from      front 8"
        supply    230 V single_phase
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     tile
        supply    400 V three_phase
        capacity  60 A
    }
`));

test('stays silent while the supply of the heater is being typed', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        supply    208 V
    }
`));

test('a fix takes the supply of the site', () => checkFix(rule, `
    heater stove on right { model Tarn60; supply 208 V single_phase; from front 8" }
`, `
    heater stove on right { model Tarn60; ; from front 8" }
`));
