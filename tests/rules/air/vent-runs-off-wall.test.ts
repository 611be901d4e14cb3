import { test } from 'vitest';
import { ventRunsOffWall as rule } from '../../../language/src/rules/air/vent-runs-off-wall.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the place with the distances that keep it on its wall, which is 76 1/2" long inside', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 80"
        //        ^^^^^^^^ 💡 error: Vent exhaust reaches 11 1/2" into the right wall. 0" to 68 1/2" from the left wall keeps it on its own.
        below_ceiling 3"
        air       room
    }
`));

test('reports a middle too near the corner', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        centre    from left 3"
        //        ^^^^^^^^^^^^ 💡 error: Vent exhaust reaches 1" into the left wall. 4" to 72 1/2" to its middle from the left wall keeps it on its own.
        below_ceiling 3"
        air       room
    }
`));

test('reports a vent wider than its wall', () => checkFindings(rule, `
    vent exhaust on front {
        size      77" x 4"
        from      left 0"
        //        ^^^^^^^ error: Vent exhaust reaches 1/2" into the right wall. It is wider than the wall, which is 76 1/2" long inside.
        below_ceiling 3"
        air       room
    }
`));

test('accepts one that just touches the corner', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 68 1/2"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left
        below_ceiling 3"
        air       room
    }
`));

test('a fix brings it back by the shortest way', () => checkFix(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 80"
        below_ceiling 3"
        air       room
    }
`, `
    vent exhaust on front {
        size      8" x 4"
        from      left 68 1/2"
        below_ceiling 3"
        air       room
    }
`));

test('a fix of the middle keeps it a middle', () => checkFix(rule, `
    vent exhaust on front {
        size      8" x 4"
        centre    from left 3"
        below_ceiling 3"
        air       room
    }
`, `
    vent exhaust on front {
        size      8" x 4"
        centre    from left 4"
        below_ceiling 3"
        air       room
    }
`));
