import { test } from 'vitest';
import { heaterWayOutBlocked as rule } from '../../../language/src/rules/heater/heater-way-out-blocked.js';
import { checkFindings } from '../../support/check.js';

test('reports a heater that has to be turned', () => checkFindings(rule, `
    heater_model Odd {
        manual        "Odd sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          24" x 22"
        depth         11"
        off_wall      2"
        off_floor     8"
    }
    heater stove on back {
        model     Odd
        from      left 8"
        //        ^^^^^^^ info: Heater stove has no level way out of the room: it does not pass the door upright and unturned. Note in the build guide how it is turned, or what comes down first.
        guard     yes
        backing   1 1/2"
    }
    // without bench upper
    // without bench lower
`));

test('names what stands in the way', () => checkFindings(rule, `
    fitting crate on front {
        what      shelf
        size      76" x 70"
        depth     2"
        from      left 0"
        bottom    4"
    }
    heater stove on right {
        model     Tarn60
        from      front 8"
        //        ^^^^^^^^ info: Heater stove has no level way out of the room: shelf crate stands in the way. Note in the build guide how it is turned, or what comes down first.
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts a straight way', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater stove on back {
        model     Tarn60
        from
        guard     yes
        backing   1 1/2"
    }
`));
