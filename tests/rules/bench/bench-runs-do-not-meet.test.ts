import { test } from 'vitest';
import { benchRunsDoNotMeet as rule } from '../../../language/src/rules/bench/bench-runs-do-not-meet.js';
import { checkFindings } from '../../support/check.js';

test('reports the length of a run that stops short', () => checkFindings(rule, `
    bench lower on back, left {
        build     Slatted
        top       18"
        depth     16"
        in_front_of upper
        length    40"
    //            ^^^ error: The run of bench lower on the back wall stops short of the left wall, where the next run begins. Measure it from left, make it longer, or make two benches of it.
        from      right 0"
    }
`));

test('accepts a run that begins in the corner', () => checkFindings(rule, `
    bench lower on back, left { build Slatted; top 18"; depth 16"; in_front_of upper; length 40"; from left 0" }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    bench lower on back, left {
        build     Slatted
        top       18"
        depth     16"
        in_front_of upper
        length    40"
        from      right
    }
`));
