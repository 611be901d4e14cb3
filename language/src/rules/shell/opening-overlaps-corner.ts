import { lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { fixesOf, movedOpenings, openingBlock, placeSpan, shellProblems, showMoves } from './shell-findings.js';

const citation = { kind: 'geometry', text: 'a section stands between the corners' } as const;

export const openingOverlapsCorner = defineRule({
    id: 'opening-overlaps-corner',
    family: 'shell',
    title: 'The section of a door or window runs into a corner',
    severity: 'error',
    why: 'A door or window comes in a wall section of its own width. Where the neighbouring wall stands against the inside, there is no room for it.',
    bad: 'door entry on front { model Leaf24; from left 2"; hinge left }',
    good: 'door entry on front { model Leaf24; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: false,
    fixes: 'review',
    *check(input) {
        for (const problem of shellProblems(input, 'opening-overlaps-corner')) {
            const block = openingBlock(input, problem.opening);
            const problems = [...input.results.doors, ...input.results.windows].find(({ name }) => name === problem.opening)?.problems;
            // One whose clear opening runs off the wall has a finding that says more.
            if (!block || problems?.some(({ kind }) => kind === 'runs-off-the-wall')) continue;
            const moves = movedOpenings(input, problem.suggestions.placesThatClose);
            yield {
                at: placeSpan(block),
                message: `The section of ${block.kind} ${problem.opening} runs ${input.show(problem.by)} past the ${problem.corner.replace('_', ' ')} corner; it has to end where the neighbouring wall begins. ${moves.length > 0 ? `The wall closes with ${showMoves(moves)}.` : 'Move it away from the corner.'}`,
                citation, measured: lengthFigure(problem.by), required: lengthFigure(zero), subject: problem.opening, fixes: fixesOf(moves),
            };
        }
    },
});
