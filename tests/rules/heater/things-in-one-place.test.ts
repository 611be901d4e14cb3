import { test } from 'vitest';
import { thingsInOnePlace as rule } from '../../../language/src/rules/heater/things-in-one-place.js';
import { checkFindings } from '../../support/check.js';

// The lamp takes 8" to 14" of the wall and 62" to 70" of its height.
test('reports the fitting written later', () => checkFindings(rule, `
    fitting peg on left {
    //@ 1-12 error: Hook peg stands where light lamp is. Move one of them.
        what      hook
        size      4" x 2"
        depth     3"
        from      front 10"
        bottom    65"
    }
`));

test('reports a fitting in a bench once, not for each of its pieces', () => checkFindings(rule, `
    fitting crate on back {
    //@ 1-14 error: Shelf crate stands where bench upper is. Move one of them.
        what      shelf
        size      20" x 10"
        depth     8"
        from      left 10"
        bottom    30"
    }
`));

test('accepts fittings that touch', () => checkFindings(rule, `
    fitting peg on left {
        what      hook
        size      4" x 2"
        depth     3"
        from      front 14"
        bottom    65"
    }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    fitting peg on left {
        what      hook
        size      4" x 2"
        depth     3"
        from      
        bottom    65"
    }
`));
