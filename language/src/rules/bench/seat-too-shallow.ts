import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { practised, showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { areAllPlaced, placedBenches } from './bench-findings.js';

export const seatTooShallow = defineRule({
    id: 'seat-too-shallow',
    family: 'bench',
    title: 'The upper bench is shallow to sit on',
    severity: 'info',
    why: 'Bathers sit back with their legs drawn up; on a shallow bench they perch on its edge.',
    bad: 'bench upper on back { build Slatted; top 37"; depth 16" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20" }',
    sources: [{ kind: 'practice', text: 'an upper bench to sit on is 500 to 600 mm deep' }],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show, job: { unit } } = input;
        const rule = practised('bench.depth-minimum');
        const lying = practised('bench.depth-to-lie');
        if (!rule || !areAllPlaced(input)) return;
        for (const { layout: { depth, isHighest, isAccessible }, block, name } of placedBenches(input)) {
            if (!isHighest || isAccessible || depth >= rule.figure.value) continue;
            yield {
                at: block.values.depth?.span ?? block.head,
                message: `Bench ${name}, the upper bench, is ${show(depth)} deep; ${showRequired(rule.figure.value, unit)} at least is usual (${showCitation(rule.clause.citation)}). Make it deeper${lying ? `, ${showRequired(lying.figure.value, unit)} or more to lie on` : ''}.`,
                citation: rule.clause.citation, measured: lengthFigure(depth), required: lengthFigure(rule.figure.value), subject: name,
            };
        }
    },
});
