import { test } from 'vitest';
import { duckboardUnderHeater as rule } from '../../../language/src/rules/heater/duckboard-under-heater.js';
import { checkFindings } from '../../support/check.js';

test('reports the duckboard', () => checkFindings(rule, `
    duckboard mat {
    //@ 1-14 error: Duckboard mat lies under heater stove or less than 4" before it, where stones can fall; a bare floor is needed there (Tarn 60 installation sheet, demo edition 2). Move or shorten it.
        from_left 50"
        from_front 4"
        width     24"
        depth     24"
        slat      alder_1x4
    }
`));

// 76 1/2" - 2" - 11" - 12" is 51 1/2" from the left wall.
test('takes the usual foot where the manual gives no front clearance', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
    }
    heater stove on right {
        model     Odd
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    duckboard mat {
    //@ 1-14 error: Duckboard mat lies under heater stove or less than 12" before it, where stones can fall; a bare floor is needed there (common practice, no source). Move or shorten it.
        from_left 36"
        from_front 4"
        width     24"
        depth     24"
        slat      alder_1x4
    }
`));

// 76 1/2" - 2" - 11" - 4" is 59 1/2" from the left wall.
test('accepts one that ends where the clearance begins', () => checkFindings(rule, `
    duckboard mat {
        from_left 35 1/2"
        from_front 4"
        width     24"
        depth     24"
        slat      alder_1x4
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    duckboard mat {
        from_left 
        from_front 4"
        width     24"
        depth     24"
        slat      alder_1x4
    }
`));
