import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { ada } from '../../rule-sets/documents.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { accessibleBenches, accessibleClause } from './accessible-findings.js';

export const accessibleBenchWithoutBack = defineRule({
    id: 'accessible-bench-without-back',
    family: 'bench',
    title: 'The accessible bench has nothing to lean on',
    severity: 'error',
    why: 'Someone without balance in the trunk needs a wall or a back right behind the seat.',
    bad: 'rules us_accessible\nbench lower on back { build Slatted; top 18"; depth 20"; in_front_of upper; is_accessible yes }',
    good: 'rules us_accessible\nbench lower on left { build Slatted; top 18"; depth 20"; is_accessible yes }',
    sources: [ada('903.4', 'Back support of 42 in from 2 in to 18 in above the seat and within 2 1/2 in of its rear edge, or a bench at the wall.')],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show, job: { unit } } = input;
        const rule = accessibleClause(input, 'bench.back-from-rear-edge');
        if (!rule) return;
        for (const { layout: { runs }, block, name } of accessibleBenches(input)) {
            const off = runs.find(run => run.w.from > rule.figure.value);
            if (!off) continue;
            const tier = block.values.in_front_of;
            yield {
                at: tier?.span ?? block.head,
                message: `The rear edge of accessible bench ${name} is ${show(off.w.from)} off the ${off.wall} wall; a back or a wall within ${showRequired(rule.figure.value, unit)} of it is needed (${showCitation(rule.clause.citation)}). Set the bench against a wall.`,
                citation: rule.clause.citation, measured: lengthFigure(off.w.from), required: lengthFigure(rule.figure.value), subject: name,
                related: block.values.is_accessible ? [{ at: block.values.is_accessible.fact, message: 'This makes it the accessible bench.' }] : [],
            };
        }
    },
});
