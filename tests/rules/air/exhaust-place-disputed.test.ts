import { test } from 'vitest';
import { exhaustPlaceDisputed as rule } from '../../../language/src/rules/air/exhaust-place-disputed.js';
import { checkFindings } from '../../support/check.js';

// Source: IMC 914.5 against common practice without a source.
test('tells of the other place', () => checkFindings(rule, `
    rules us_commercial, good_practice
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        //        ^^^^^^^ info: Vent exhaust is near the top of the door. Place of the ventilation opening: near top of door (IMC 2018, 914.5) governs; across the room low (common practice, no source) yields to it. One opening cannot be at both; a second exhaust could serve the other.
        below_ceiling 3"
        air       room
    }
`));

test('accepts an exhaust at each place', () => checkFindings(rule, `
    rules us_commercial, good_practice
    vent low on left { role exhaust; size 8" x 4"; from back 8"; bottom 4"; air outdoors }
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('knows no dispute where practice is not named', () => checkFindings(rule, `
    rules us_commercial
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
        air       room
    }
`));

test('leaves an exhaust out of its place to the rule about that', () => checkFindings(rule, `
    rules us_commercial, good_practice
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        bottom    8"
        air       room
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    rules us_commercial, good_practice
    vent exhaust on front {
        size      8" x 4"
        from
        below_ceiling 3"
        air       room
    }
`));
