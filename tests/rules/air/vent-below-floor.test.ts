import { test } from 'vitest';
import { ventBelowFloor as rule } from '../../../language/src/rules/air/vent-below-floor.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the height', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 80"
        //            ^^^ 💡 error: Vent exhaust reaches 3 3/4" below the finished floor. A lower edge 0" to 76 1/4" over the floor keeps it in the wall.
        air       room
    }
`));

test('accepts one that touches the floor', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 76 1/4"
        air       room
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling
        air       room
    }
`));

test('a fix raises it to the floor', () => checkFix(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 80"
        air       room
    }
`, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 76 1/4"
        air       room
    }
`));
