import { test } from 'vitest';
import { openingTooSmall as rule } from '../../../language/src/rules/air/opening-too-small.js';
import { checkFindings, checkFix } from '../../support/check.js';

// Source: IMC 914.5, at least 4 in by 8 in (102 by 203 mm).
test('reports the size with its gross and free area', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      6" x 4"
        //        ^^^^^^^ 💡 error: Vent exhaust is 6" x 4" (24 in2, all of it free); 4" x 8" or more is needed, 32 in2 gross (IMC 2018, 914.5). Make it 8" x 4" or larger.
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('reports a slot of a larger area, because both sides are asked for', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      3" x 12"
        //        ^^^^^^^^ 💡 error: Vent exhaust is 3" x 12" (36 in2, all of it free); 4" x 8" or more is needed, 32 in2 gross (IMC 2018, 914.5). Make it 4" x 12" or larger.
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('names what a grille leaves free', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      6" x 4"
        //        ^^^^^^^ 💡 error: Vent exhaust is 6" x 4" (24 in2 gross, 12 in2 free); 4" x 8" or more is needed…
        free      50
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('judges the opening near the top of the door when there are several', () => checkFindings(rule, `
    rules us_commercial
    vent low on left { role exhaust; size 10" x 10"; from front 8"; bottom 4"; air outdoors }
    vent exhaust on front {
        size      6" x 4"
        //        ^^^^^^^ 💡 error: Vent exhaust is 6" x 4"…
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('accepts just 4" by 8", upright', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      4" x 8"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('does not ask it of an electric heater in a dwelling', () => checkFindings(rule, `
    vent exhaust on front {
        size      6" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('answers exactly in metric units', () => checkFindings(rule, `
    rules us_commercial
    room { system SkerryMetric; width 2100 mm; depth 2000 mm; height 2150 mm }
    vent exhaust on front {
        size      200 mm x 100 mm
        //        ^^^^^^^^^^^^^^^ 💡 error: Vent exhaust is 200 mm x 100 mm (200 cm2, all of it free); 101.6 mm x 203.2 mm or more is needed, 206.5 cm2 gross (IMC 2018, 914.5). Make it 203.2 mm x 101.6 mm or larger.
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the size is being typed', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      6" x
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('a fix makes the opening large enough', () => checkFix(rule, `
    rules us_commercial
    vent exhaust on front {
        size      3" x 10"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`, `
    rules us_commercial
    vent exhaust on front {
        size      4" x 10"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));
