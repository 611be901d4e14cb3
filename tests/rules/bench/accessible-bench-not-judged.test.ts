import { test } from 'vitest';
import { accessibleBenchNotJudged as rule } from '../../../language/src/rules/bench/accessible-bench-not-judged.js';
import { checkFindings } from '../../support/check.js';

test('says that nothing judges the bench', () => checkFindings(rule, `
    rules us_dwelling
    bench lower on left {
        build     Slatted
        top       18"
        depth     20"
        is_accessible yes
    //  ^^^^^^^^^^^^^^^^^ info: Bench lower is the accessible bench, and no rule set named says what that takes, so it is not checked. Name us_accessible among the rules of the job, and california_accessible where it applies.
    }
`));

test('accepts a rule set that judges it', () => checkFindings(rule, `
    rules us_accessible
    bench lower on left { build Slatted; top 18"; depth 20"; is_accessible yes }
`));

test('stays silent while the fact is being typed', () => checkFindings(rule, `
    rules us_dwelling
    bench lower on left {
        build     Slatted
        top       18"
        depth     20"
        is_accessible
    }
`));
