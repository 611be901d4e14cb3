import { showCitation } from '../../core/citation.js';
import { inWords } from '../../core/finding.js';
import { ada } from '../../rule-sets/documents.js';
import { addFact } from '../fixes.js';
import { defineRule } from '../rule.js';
import { accessibleClause } from './accessible-findings.js';

export const accessibleBenchMissing = defineRule({
    id: 'accessible-bench-missing',
    family: 'bench',
    title: 'An accessible room without an accessible bench',
    severity: 'error',
    why: 'The rule set named asks for a bench at the height of a wheelchair with floor beside it; no bench of the job says it is the one.',
    bad: 'rules us_accessible',
    good: 'rules us_accessible\nbench lower on back { build Slatted; top 18"; depth 20"; in_front_of upper; is_accessible yes }',
    sources: [ada('903', 'Benches in accessible rooms.')],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const { job } = input;
        const rule = accessibleClause(input, 'bench.length');
        const stated = job.block.values.rules;
        if (!rule || !stated || !job.isWhole || job.benches.length === 0) return;
        // Half-typed facts of a bench are not missing.
        if (job.benches.some(bench => !bench.isWhole || bench.values.is_accessible?.value)) return;
        const low = accessibleClause(input, 'bench.seat-height-minimum');
        const high = accessibleClause(input, 'bench.seat-height-maximum');
        const fitting = job.benches.filter(({ values: { top, is_accessible: said } }) => top && !said && (!low || top.value >= low.figure.value) && (!high || top.value <= high.figure.value));
        yield {
            at: stated.span,
            message: `No bench of the job is accessible; one is needed (${showCitation(rule.clause.citation)}). Write is_accessible yes in the bench that is meant, or leave the rule set out.`,
            citation: rule.clause.citation, measured: inWords('none'), required: inWords('one accessible bench'),
            related: fitting.map(bench => ({ at: bench.head, message: 'This bench has the height for it.' })),
            fixes: fitting.flatMap(bench => bench.values.top ? [addFact(`Make bench ${bench.name?.value ?? ''} the accessible one`, bench.values.top.fact, 'is_accessible yes')] : []),
        };
    },
});
