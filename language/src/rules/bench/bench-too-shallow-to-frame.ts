import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { benchFindings, buildOf } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'a front and a rear leg or rail under the slats' } as const;

export const benchTooShallowToFrame = defineRule({
    id: 'bench-too-shallow-to-frame',
    family: 'bench',
    title: 'A bench is too shallow to be framed',
    severity: 'error',
    why: 'A front and a rear leg or rail have to stand behind each other under the slats.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 3 1/2"; in_front_of upper }',
    good: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'too-shallow', ({ problem: { depth, least }, block, name }) => {
        const { show } = input;
        const build = buildOf(block);
        return {
            at: block.values.depth?.span ?? block.head,
            message: `Bench ${name} is ${show(depth)} deep; ${show(least)} is needed for a front and a rear leg or rail. Make it deeper.`,
            citation, measured: lengthFigure(depth), required: lengthFigure(least), subject: name,
            related: build ? [{ at: build.head, message: 'The sections of leg and rail stand in this bench build.' }] : [],
        };
    }),
});
