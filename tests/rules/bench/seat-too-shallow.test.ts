import { test } from 'vitest';
import { seatTooShallow as rule } from '../../../language/src/rules/bench/seat-too-shallow.js';
import { checkFindings } from '../../support/check.js';

// 500 mm and 600 mm are common practice, no source.
test('reports the depth of the upper bench', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth     16"
    //            ^^^ info: Bench upper, the upper bench, is 16" deep; 500 mm (≈19 11/16") at least is usual (common practice, no source). Make it deeper, 600 mm (≈23 5/8") or more to lie on.
    }
`));

test('accepts exactly 500 mm', () => checkFindings(rule, `
    bench upper on back { build Slatted; top 37"; depth 500 mm }
`));

test('stays silent while the depth is being typed', () => checkFindings(rule, `
    bench upper on back {
        build     Slatted
        top       37"
        depth
    }
`));
