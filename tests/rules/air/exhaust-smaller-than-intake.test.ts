import { test } from 'vitest';
import { exhaustSmallerThanIntake as rule } from '../../../language/src/rules/air/exhaust-smaller-than-intake.js';
import { checkFindings, checkFix } from '../../support/check.js';

// Common practice, no source.
test('reports the exhaust with its gross and free area', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        free      60
        //        ^^ warning: Vent exhaust is 32 in2 gross, 19.2 in2 free; 32 in2 free or more is needed, as much as the intake (common practice, no source). Enlarge the exhaust, or choose a more open grille.
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('reports an open hole that is smaller', () => checkFindings(rule, `
    vent exhaust on front {
        size      6" x 4"
        //        ^^^^^^^ 💡 warning: Vent exhaust is 24 in2, all of it free; 32 in2 free or more is needed, as much as the intake (common practice, no source). Enlarge the exhaust.
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('adds up several exhausts', () => checkFindings(rule, `
    vent second on front { role exhaust; size 4" x 4"; from left 60"; below_ceiling 3"; air room }
    vent exhaust on front {
        size      4" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('accepts just as much', () => checkFindings(rule, `
    vent exhaust on front {
        size      4" x 8"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('does not ask it where practice is not named', () => checkFindings(rule, `
    rules us_dwelling
    vent exhaust on front {
        size      6" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('stays silent while the intake is being typed', () => checkFindings(rule, `
    vent intake on right {
        size      8" x
    }
    vent exhaust on front {
        size      6" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('a fix makes it as large as the intake', () => checkFix(rule, `
    vent exhaust on front {
        size      6" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));
