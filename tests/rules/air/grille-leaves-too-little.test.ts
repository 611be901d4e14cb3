import { test } from 'vitest';
import { grilleLeavesTooLittle as rule } from '../../../language/src/rules/air/grille-leaves-too-little.js';
import { checkFindings } from '../../support/check.js';

// Source: IMC 914.5; 4 in by 8 in is 32 in2.
test('reports the free part and both areas', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      8" x 4"
        free      50
        //        ^^ info: Vent exhaust is 32 in2 gross and 16 in2 free; the figure of 32 in2 is of the gross opening (IMC 2018, 914.5), and not every reviewer reads it so. Ask the local authority, or choose a more open grille.
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('accepts just as much free area: half of 8" by 8"', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      8" x 8"
        free      50
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('leaves an opening that is too small without its grille to the rule about that', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      6" x 4"
        free      50
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the free part is being typed', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      8" x 4"
        free
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));
