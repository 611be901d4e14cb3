import { test } from 'vitest';
import { riseTooLow as rule } from '../../../language/src/rules/bench/rise-too-low.js';
import { checkFindings } from '../../support/check.js';

// 400 mm is common practice, no source.
test('hints at the tier below', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top       24"
    //            ^^^ hint: Bench upper rises 13" over bench lower; 400 mm (≈15 3/4") at least is usual (common practice, no source). Lower the top of lower or raise that of upper by 69.8 mm (≈2 3/4") or more.
        depth     16"
        in_front_of upper
    }
`));

test('accepts exactly 400 mm', () => checkFindings(rule, `
    bench lower on back { build Slatted; top 37" - 400 mm; depth 16"; in_front_of upper }
`));

test('leaves a step alone', () => checkFindings(rule, `
    bench step on back { build Slatted; top 9"; depth 12" }
`));

test('stays silent while the top is being typed', () => checkFindings(rule, `
    bench lower on back {
        build     Slatted
        top
        depth     16"
        in_front_of upper
    }
`));
