import { lengthFigure } from '../../core/finding.js';
import { replaceLength } from '../fixes.js';
import { defineRule } from '../rule.js';
import { benchFindings, buildOf } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'slat, bearer and rail lie on each other over the floor' } as const;

export const benchTopBelowBuildUp = defineRule({
    id: 'bench-top-below-build-up',
    family: 'bench',
    title: 'A bench top is lower than its build-up is high',
    severity: 'error',
    why: 'Slat, cross-bearer and rail lie on each other; a top below their sum would put the rail into the floor.',
    bad: 'bench lower on back { build Slatted; top 5"; depth 16"; in_front_of upper }',
    good: 'bench lower on back { build Slatted; top 5 3/4"; depth 16"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'top-below-build-up', ({ problem: { top, buildUp }, block, name }) => {
        const { show, job: { unit } } = input;
        const stated = block.values.top;
        if (!stated) return undefined;
        const build = buildOf(block);
        return {
            at: stated.span,
            message: `The top of bench ${name} is ${show(top)} over the floor; slat, cross-bearer and rail need ${show(buildUp)}. Set the top to ${show(buildUp)} or higher.`,
            citation, measured: lengthFigure(top), required: lengthFigure(buildUp), subject: `${name}.build_up`,
            related: build ? [{ at: build.head, message: 'The sections stand in this bench build.' }] : [],
            fixes: replaceLength('top', stated.span, buildUp, unit),
        };
    }),
});
