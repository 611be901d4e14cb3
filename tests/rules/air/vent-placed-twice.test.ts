import { test } from 'vitest';
import { ventPlacedTwice as rule } from '../../../language/src/rules/air/vent-placed-twice.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the height that is not read', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom    60"
        below_ceiling 3"
        //            ^^ 💡 warning: Vent exhaust gives both bottom and below_ceiling; only bottom is read. Remove one of the two.
        air       room
    }
`));

test('reports the middle that is not read', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        centre    from left 12"
        //        ^^^^^^^^^^^^^ 💡 warning: Vent exhaust gives both from and centre; only from is read. Remove one of the two.
        below_ceiling 3"
        air       room
    }
`));

test('accepts one of each pair', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the second is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom    60"
        below_ceiling
        air       room
    }
`));

test('a fix removes what is not read', () => checkFix(rule, `
    vent exhaust on front { size 8" x 4"; from left 8"; bottom 60"; below_ceiling 3"; air room }
`, `
    vent exhaust on front { size 8" x 4"; from left 8"; bottom 60"; ; air room }
`));
