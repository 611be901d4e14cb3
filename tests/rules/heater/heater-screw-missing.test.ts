import { test } from 'vitest';
import { heaterScrewMissing as rule } from '../../../language/src/rules/heater/heater-screw-missing.js';
import { checkFindings } from '../../support/check.js';

// 1/8" proud, 3/4" of lining and 1" in the wood; at most 1/8" + 3/4" + 2 1/2" to the facing.
test('reports the model and says what would fit', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
    }
    heater stove on right {
        model     Plain
        //        ^^^^^ warning: The entry of heater stove names no screw to hang it on (Plain sheet (fictional)), so its hold is not checked. In this wall it may be 1 7/8" to 3 3/8" long. Write fasten_screw in the entry.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts an entry that names one', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        fasten_screw  heater_screw
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the screw is being typed', () => checkFindings(rule, `
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        fasten_screw
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
