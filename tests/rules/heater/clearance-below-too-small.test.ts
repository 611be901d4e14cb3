import { test } from 'vitest';
import { clearanceBelowTooSmall as rule } from '../../../language/src/rules/heater/clearance-below-too-small.js';
import { checkFindings, checkFix } from '../../support/check.js';

// The casing begins at 8", the shelf ends at 5".
test('reports what stands under the heater', () => checkFindings(rule, `
    fitting crate on right {
        what      shelf
        size      20" x 4"
        depth     8"
        from      front 4"
        //        ^^^^^^^^ error: Shelf crate is 3" below heater stove; 6" is needed (Tarn 60 installation sheet, demo edition 2). Move shelf crate; no position of the heater along the right wall clears everything.
        bottom    1"
    }
`));

test('reports a floor that burns under a heater that hangs low', () => checkFindings(rule, `
    heater_model Low {
        manual        "Low sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     4"
        clear_side    4"
        clear_front   4"
        clear_above   45"
        clear_below   6"
        clear_bench   4"
    }
    heater stove on right {
        model     Low
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
    site {
        width     96"
        depth     108"
        ceiling   7'6"
        floor     wood
        //        ^^^^ error: The floor burns and is 4" below heater stove; 6" is needed (Low sheet (fictional)). Lay a floor that does not burn under the heater as its manual describes, or choose another heater.
    }
`));

test('says nothing of a tiled floor', () => checkFindings(rule, `
    heater_model Low {
        manual        "Low sheet (fictional)"
        power         6 kW
        supply        240 V single_phase
        body          16" x 22"
        depth         11"
        off_wall      2"
        off_floor     4"
        clear_side    4"
        clear_front   4"
        clear_above   45"
        clear_below   6"
        clear_bench   4"
    }
    heater stove on right {
        model     Low
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`));

test('accepts exactly what the manual asks', () => checkFindings(rule, `
    fitting crate on right {
        what      shelf
        size      20" x 1"
        depth     8"
        from      front 4"
        bottom    1"
    }
`));

test('stays silent while the shelf is being typed', () => checkFindings(rule, `
    fitting crate on right {
        what      shelf
        size      20" x 
        depth     8"
        from      front 4"
        bottom    1"
    }
`));

test('a fix moves the heater aside where the wall has room', () => checkFix(rule, `
    fitting crate on right {
        what      shelf
        size      6" x 4"
        depth     8"
        from      front 4"
        bottom    1"
    }
    heater stove on right {
        model     Tarn60
        from      front 8"
        guard     yes
        backing   1 1/2"
    }
`, `
    fitting crate on right {
        what      shelf
        size      6" x 4"
        depth     8"
        from      front 4"
        bottom    1"
    }
    heater stove on right {
        model     Tarn60
        from      front 14"
        guard     yes
        backing   1 1/2"
    }
`));
