import { test } from 'vitest';
import { airShortCircuit as rule } from '../../../language/src/rules/air/air-short-circuit.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports an exhaust beside the intake', () => checkFindings(rule, `
    vent exhaust on right {
        size      8" x 4"
        from      front 30"
        //        ^^^^^^^^^ warning: Vent exhaust is 10" from vent intake on the right wall; 24" or more, one low and one high, keeps them apart (common practice, no source). Move the exhaust across the room.
        bottom    4"
        air       room
    }
`));

test('reports two low openings of one wall', () => checkFindings(rule, `
    vent exhaust on right {
        size      8" x 4"
        from      front 50"
        //        ^^^^^^^^^ warning: Vent exhaust and vent intake are both low on the right wall; one low and one high, or two walls, keep them apart (common practice, no source). …
        bottom    4"
        air       room
    }
`));

test('reports two high openings of one wall', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        from      front 4"
        bottom    60"
        air       room
    }
    vent exhaust on right {
        size      8" x 4"
        from      front 50"
        //        ^^^^^^^^^ warning: Vent exhaust and vent intake are both high on the right wall…
        bottom    60"
        air       room
    }
`));

test('accepts one low and one high, just 24" apart', () => checkFindings(rule, `
    vent intake on right {
        size      8" x 4"
        from      front 30"
        bottom    30"
        air       room
    }
    vent exhaust on right {
        size      8" x 4"
        from      front 30"
        bottom    58"
        air       room
    }
`));

test('stays silent while the height is being typed', () => checkFindings(rule, `
    vent exhaust on right {
        size      8" x 4"
        from      front 30"
        bottom
        air       room
    }
`));
