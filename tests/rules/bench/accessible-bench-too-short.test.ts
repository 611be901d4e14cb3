import { test } from 'vitest';
import { accessibleBenchTooShort as rule } from '../../../language/src/rules/bench/accessible-bench-too-short.js';
import { checkFindings, checkFix } from '../../support/check.js';

// 42": ADA Standards 2010, 903.3. 48": CBC 2019, 11B-903.3.
test('reports the length', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left {
        build     Slatted
        top       18"
        depth     20"
        from      front 0"
        length    41"
    //            ^^^ 💡 error: Accessible bench lower is 41" long; 42" is needed (ADA Standards 2010, 903.3). Make it longer.
        is_accessible yes
    }
`));

test('asks for more in California', () => checkFindings(rule, `
    rules us_accessible, california_accessible
    bench lower on left { build Slatted; top 18"; depth 20"; from front 0"; length 42"; is_accessible yes }
    //                                                                             ^^^ 💡 error: Accessible bench lower is 42" long; 48" is needed (CBC 2019, 11B-903.3). Make it longer.
`));

test('accepts exactly 42"', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 20"; from front 0"; length 42"; is_accessible yes }
`));

test('leaves other benches alone', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 20"; from front 0"; length 30" }
`));

test('stays silent while the length is being typed', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left {
        build     Slatted
        top       18"
        depth     20"
        from      front 0"
        length
        is_accessible yes
    }
`));

test('a fix sets the length', () => checkFix(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 20"; from front 0"; length 41"; is_accessible yes }
`, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 20"; from front 0"; length 42"; is_accessible yes }
`));
