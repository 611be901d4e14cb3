import { lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { benchFindings, buildOf } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'a dimension is above zero' } as const;

export const benchFigureNotAboveZero = defineRule({
    id: 'bench-figure-not-above-zero',
    family: 'bench',
    title: 'A dimension of a bench is not above zero',
    severity: 'error',
    why: 'Such a figure is the dimension of nothing, so the bench is left out of all that is worked out.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 16" - 16"; in_front_of upper }',
    good: 'bench lower on back { build Slatted; top 18"; depth 32" - 16"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'figure-not-above-zero', ({ problem: { what, value }, block, name }) => {
        const { values } = block;
        const own = what === 'depth' ? values.depth : what === 'top' ? values.top : what === 'length' ? values.length : undefined;
        const build = buildOf(block);
        return {
            at: own?.span ?? values.build?.span ?? block.head,
            message: own ? `The ${what} of bench ${name} is ${input.show(value)}; it has to be above zero. Write the ${what} the bench has.`
                : `The ${what} in the bench build of ${name} is ${input.show(value)}; it has to be above zero. Mend the bench build in the catalogue.`,
            citation, measured: lengthFigure(value), required: lengthFigure(zero), subject: name,
            related: own || !build ? [] : [{ at: build.head, message: 'The bench build stands here.' }],
        };
    }),
});
