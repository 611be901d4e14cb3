import { inWords, lengthFigure } from '../../core/finding.js';
import { showLength } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { benchFindings, setDepth } from './bench-findings.js';

export const slatsDoNotFit = defineRule({
    id: 'slats-do-not-fit',
    family: 'bench',
    title: 'No number of slats fills the bench with equal gaps',
    severity: 'error',
    why: 'The first and the last slat lie flush and the gaps between them are equal; at this depth they would be narrower or wider than the bench build allows.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 13 1/2"; in_front_of upper }',
    good: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }',
    sources: [{ kind: 'catalogue', text: 'the gap limits of the bench build' }],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'slats-do-not-fit', ({ problem, block, name }) => {
        const depth = block.values.depth;
        const gaps = block.values.build?.value.block?.values.slat_gap;
        if (!depth || !gaps) return undefined;
        const { smaller, larger } = problem;
        const nearest = [smaller, larger].flatMap(length => length === undefined ? [] : [length]);
        const limits = `${showLength(gaps.value.from, input.job.unit)} to ${showLength(gaps.value.to, input.job.unit)}`;
        return {
            at: depth.span,
            message: `Bench ${name} is ${input.show(problem.depth)} deep, and no number of slats fills that with equal gaps of ${limits} (the gap limits of its bench build). ${nearest.length > 0 ? `The nearest depths that do are ${nearest.map(input.show).join(' and ')}.` : 'Choose another depth or another slat.'}`,
            citation: { kind: 'catalogue', text: 'the gap limits of the bench build' },
            measured: lengthFigure(problem.depth), required: inWords(nearest.map(input.show).join(' or ')), subject: `${name}.slat_gap`,
            related: [{ at: gaps.span, message: 'The limits of the gap stand here.' }],
            fixes: nearest.map(length => setDepth(depth.span, length, input)),
        };
    }),
});
