import { test } from 'vitest';
import { heaterScrewMeetsFacing as rule } from '../../../language/src/rules/heater/heater-screw-meets-facing.js';
import { checkFindings } from '../../support/check.js';

// 4" less 1/8" proud; 3/4" of lining and 2 1/2" of core.
test('reports the model and the lengths that fit', () => checkFindings(rule, `
    screw odd_screw { length 4"; penetration 1 1/4" }
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        fasten_screw  odd_screw
    }
    heater stove on right {
        model     Plain
        //        ^^^^^ error: The screws of heater stove reach 3 7/8" into the wall; the facing begins at 3 1/4". Screws 2 1/8" to 3 3/8" long hold and stay inside.
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts a point that touches the facing', () => checkFindings(rule, `
    screw odd_screw { length 3 3/8"; penetration 1 1/4" }
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        fasten_screw  odd_screw
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    screw odd_screw { length }
    heater_model Plain {
        manual        "Plain sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        fasten_screw  odd_screw
    }
    heater stove on right {
        model     Plain
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));
