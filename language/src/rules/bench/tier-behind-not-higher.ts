import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { benchFindings } from './bench-findings.js';
import { tiersBehind } from './tier-findings.js';

const citation = { kind: 'geometry', text: 'a tier stands in front of a higher one' } as const;

export const tierBehindNotHigher = defineRule({
    id: 'tier-behind-not-higher',
    family: 'bench',
    title: 'A bench stands in front of one that is no higher',
    severity: 'error',
    why: 'Who sits behind would look at the back of the tier in front; it is placed by its height until it is said otherwise.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of step }\nbench step on back { build Slatted; top 9"; depth 12" }',
    good: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'in-front-of-not-higher', ({ problem: { behind, top, topBehind }, block, name }) => {
        const { show, results: { benches } } = input;
        const stated = block.values.in_front_of;
        if (!stated) return undefined;
        const other = benches?.blocks.get(behind);
        const { cure, fixes } = tiersBehind(block, name, input);
        return {
            at: stated.span,
            message: `Bench ${behind} is ${show(topBehind)} high and bench ${name}, said to stand in front of it, ${show(top)}; a higher tier is needed behind. ${cure}`,
            citation, measured: lengthFigure(topBehind), required: lengthFigure(top), subject: name,
            related: other ? [{ at: other.values.top?.span ?? other.head, message: `The top of ${behind} stands here.` }] : [],
            fixes,
        };
    }),
});
