import { inWords } from '../../core/finding.js';
import { ada } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { accessibleBenches, accessibleClause } from './accessible-findings.js';

export const accessibleBenchNotJudged = defineRule({
    id: 'accessible-bench-not-judged',
    family: 'bench',
    title: 'An accessible bench that no rule set judges',
    severity: 'info',
    why: 'Length, depth, height and floor of an accessible bench come from a published rule set; without one they are not checked.',
    bad: 'rules us_dwelling\nbench lower on back { build Slatted; top 18"; depth 20"; in_front_of upper; is_accessible yes }',
    good: 'rules us_dwelling, us_accessible\nbench lower on back { build Slatted; top 18"; depth 20"; in_front_of upper; is_accessible yes }',
    sources: [ada('903', 'Benches in accessible rooms.')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        if (accessibleClause(input, 'bench.length')) return;
        for (const { block, name } of accessibleBenches(input)) {
            const said = block.values.is_accessible;
            if (!said) continue;
            const rules = input.job.block.values.rules;
            yield {
                at: said.fact,
                message: `Bench ${name} is the accessible bench, and no rule set named says what that takes, so it is not checked. Name us_accessible among the rules of the job, and california_accessible where it applies.`,
                measured: inWords('not checked'), required: inWords('us_accessible among the rules'), subject: name,
                related: rules ? [{ at: rules.span, message: 'The rules of the job stand here.' }] : [],
            };
        }
    },
});
