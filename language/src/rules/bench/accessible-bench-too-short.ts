import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { extent } from '../../core/geometry.js';
import type { Length } from '../../core/length.js';
import { ada, cbc } from '../../rule-sets/documents.js';
import { replaceLength } from '../fixes.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { accessibleBenches, accessibleClause } from './accessible-findings.js';
import { stretchSpan } from './bench-findings.js';

export const accessibleBenchTooShort = defineRule({
    id: 'accessible-bench-too-short',
    family: 'bench',
    title: 'The accessible bench is too short',
    severity: 'error',
    why: 'Someone who moves over from a wheelchair needs length to come to sit and to be helped.',
    bad: 'rules us_accessible\nbench lower on left { build Slatted; top 18"; depth 20"; length 40"; from front 0"; is_accessible yes }',
    good: 'rules us_accessible\nbench lower on left { build Slatted; top 18"; depth 20"; length 42"; from front 0"; is_accessible yes }',
    sources: [ada('903.3', 'Bench seats are at least 42 in long.'), cbc('11B-903.3', 'Bench seats are at least 48 in long.')],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const { show, job: { unit } } = input;
        const rule = accessibleClause(input, 'bench.length');
        if (!rule) return;
        for (const { layout: { runs }, block, name } of accessibleBenches(input)) {
            const length = Math.max(...runs.map(run => extent(run.u))) as Length;
            if (length >= rule.figure.value) continue;
            const stated = block.values.length;
            yield {
                at: stretchSpan(block),
                message: `Accessible bench ${name} is ${show(length)} long; ${showRequired(rule.figure.value, unit)} is needed (${showCitation(rule.clause.citation)}). Make it longer.`,
                citation: rule.clause.citation, measured: lengthFigure(length), required: lengthFigure(rule.figure.value), subject: `${name}.length`,
                fixes: stated ? replaceLength('length', stated.span, rule.figure.value, unit) : [],
            };
        }
    },
});
