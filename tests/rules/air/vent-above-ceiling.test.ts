import { test } from 'vitest';
import { ventAboveCeiling as rule } from '../../../language/src/rules/air/vent-above-ceiling.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the height; the ceiling lining is 80 1/4" over the floor', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom    78"
        //        ^^^ 💡 error: Vent exhaust reaches 1 3/4" above the ceiling lining, which is 80 1/4" over the floor. A lower edge up to 76 1/4" over the floor keeps it in the wall.
        air       room
    }
`));

test('accepts one that touches the ceiling', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom    76 1/4"
        air       room
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom
        air       room
    }
`));

test('a fix lowers it to the ceiling', () => checkFix(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom    78"
        air       room
    }
`, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom    76 1/4"
        air       room
    }
`));

test('a fix keeps the fact it is written with', () => checkFix(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 2" - 4"
        air       room
    }
`, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 0"
        air       room
    }
`));
