import { test } from 'vitest';
import { ventLetsNothingThrough as rule } from '../../../language/src/rules/air/vent-lets-nothing-through.js';
import { checkFindings } from '../../support/check.js';

test('reports a grille that is shut', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        free      0
        //        ^ error: Vent exhaust has a grille with 0 % free; nothing passes it. Write the free part its maker states, or leave free out for an open hole.
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('reports an opening without a height', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 0"
        //        ^^^^^^^ error: Vent exhaust is 8" x 0"; both sides of an opening are above zero. Write its real size.
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('accepts a grille that is hardly open', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        free      1
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the free part is being typed', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        free
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));
