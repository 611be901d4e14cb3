import { lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { fixesOf, movedOpenings, openingBlock, placeSpan, shellProblems, showMoves } from './shell-findings.js';

const citation = { kind: 'geometry', text: 'sections stand side by side' } as const;

export const openingsOverlap = defineRule({
    id: 'openings-overlap',
    family: 'shell',
    title: 'The sections of two openings want the same place',
    severity: 'error',
    why: 'Each door and window comes in a wall section that cannot be divided; two of them cannot share a stretch of wall.',
    bad: 'window view on front { model View18; from left 40"; sill 40" }',
    good: 'window view on left { model View18; from front 27"; sill 44" }',
    sources: [citation],
    isWaivable: false,
    fixes: 'review',
    *check(input) {
        for (const problem of shellProblems(input, 'openings-overlap')) {
            const second = openingBlock(input, problem.second);
            const first = openingBlock(input, problem.first);
            if (!first || !second) continue;
            const moves = movedOpenings(input, problem.suggestions.placesThatClose);
            yield {
                at: placeSpan(second),
                message: `The sections of ${first.kind} ${problem.first} and ${second.kind} ${problem.second} overlap by ${input.show(problem.by)} on the ${problem.wall} wall; they may touch and no more. ${moves.length > 0 ? `The wall closes with ${showMoves(moves)}.` : 'Move one of them.'}`,
                citation, measured: lengthFigure(problem.by), required: lengthFigure(zero), subject: problem.second,
                related: [{ at: placeSpan(first), message: `The place of ${problem.first} stands here.` }], fixes: fixesOf(moves),
            };
        }
    },
});
