import { test } from 'vitest';
import { accessibleBenchMissing as rule } from '../../../language/src/rules/bench/accessible-bench-missing.js';
import { checkFindings, checkFix } from '../../support/check.js';

test('reports the rule set that asks for one', () => checkFindings(rule, `
    rules us_dwelling, us_accessible
    //    ^^^^^^^^^^^^^^^^^^^^^^^^^^ 💡 error: No bench of the job is accessible; one is needed (ADA Standards 2010, 903.3). Write is_accessible yes in the bench that is meant, or leave the rule set out.
    bench upper on back { build Slatted; top 37"; depth 20" }
`));

test('accepts a job with an accessible bench', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 20"; is_accessible yes }
`));

test('asks for none without such a rule set', () => checkFindings(rule, `
    rules us_dwelling
`));

test('stays silent while the fact is being typed', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left {
        build     Slatted
        top       18"
        depth     20"
        is_accessible
    }
`));

test('a fix makes the bench of the right height the accessible one', () => checkFix(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 20" }
`, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; is_accessible yes; depth 20" }
`));
