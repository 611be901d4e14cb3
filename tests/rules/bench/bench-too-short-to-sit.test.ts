import { test } from 'vitest';
import { benchTooShortToSit as rule } from '../../../language/src/rules/bench/bench-too-short-to-sit.js';
import { checkFindings } from '../../support/check.js';

// 24" for each sitter is common practice, no source.
test('reports the length', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        from      left 0"
        length    23 7/8"
    //            ^^^^^^^ info: Bench upper is 23 7/8" long; 24" is usual for one sitter (common practice, no source). Make it longer, unless it is a step.
    }
`));

test('accepts exactly 24"', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 20"; from left 0"; length 24" }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     20"
        from      left 0"
        length
    }
`));
