import { test } from 'vitest';
import { cleanSourceUnknown as rule } from '../../../language/src/rules/air/clean-source-unknown.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports an intake that does not say', () => checkFindings(rule, `
    vent intake on right {
    //@ 1-12 info: Vent intake does not say where its air comes from; a clean source is needed (common practice, no source). Look on site, and write air outdoors or air room.
        size      8" x 4"
        behind    stove
        bottom    4"
    }
`));

test('reports one that says it is not known', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    4"
        air       unknown
        //        ^^^^^^^ info: Vent intake does not say…
    }
`));

test('accepts the air of the room around', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    4"
        air       room
    }
`));

test('does not ask an exhaust', () => checkFindings(rule, `
    vent exhaust on front {
        size      8" x 4"
        from      left 8"
        below_ceiling 3"
    }
`));

test('stays silent while the source is being typed', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        behind    stove
        bottom    4"
        air
    }
`));
