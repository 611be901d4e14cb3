import { test } from 'vitest';
import { benchTooShallowToFrame as rule } from '../../../language/src/rules/bench/bench-too-shallow-to-frame.js';
import { checkFindings } from '../../support/check.js';

// Two legs of 3 1/2", front to back, are 7".
test('reports the depth', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth     3 1/2"
    //            ^^^^^^ error: Bench lower is 3 1/2" deep; 7" is needed for a front and a rear leg or rail. Make it deeper.
        in_front_of upper
    }
`));

test('accepts exactly 7"', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 18"; depth 7"; in_front_of upper }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       18"
        depth
        in_front_of upper
    }
`));
