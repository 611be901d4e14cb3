import { test } from 'vitest';
import { benchCloseBeforeDoor as rule } from '../../../language/src/rules/bench/bench-close-before-door.js';
import { checkFindings } from '../../support/check.js';

// The room is 72" deep; with an upper bench of 20" a lower one of 30" leaves 22", less than the 22 3/4" of the clear opening.
test('reports the depth of the bench opposite', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     30"
    //            ^^^ warning: Bench lower leaves 22" of floor before door entry; 22 3/4" is needed, the width of its clear opening (common practice, no source). Make the benches opposite 3/4" shallower, or move the door.
        in_front_of upper
    }
`));

test('accepts floor exactly as deep as the clear opening is wide', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 29 1/4"; in_front_of upper }
`));

test('leaves a bench across the door to its own rule', () => checkFindings(rule, `
    bench lower on left { build Slatted; top 18"; depth 27" }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth
        in_front_of upper
    }
`));
