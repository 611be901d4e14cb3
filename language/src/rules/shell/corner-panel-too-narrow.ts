import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { axisOf, changedSizes, fixesOf, measuredAgainst, movedOpenings, openingBlock, placeSpan, setSize, shellProblems, showMoves, sizeOf } from './shell-findings.js';

const citation = { kind: 'practice', text: 'a through wall\'s end panel is at least T + 3" wide' } as const;

export const cornerPanelTooNarrow = defineRule({
    id: 'corner-panel-too-narrow',
    family: 'shell',
    title: 'The end panel of a through wall is too narrow',
    severity: 'error',
    why: 'The end panel of a wall that runs through stands before the neighbouring wall and shows only its width less T of lining; it needs at least T + 3" to be built and locked.',
    bad: 'door entry on front { model Leaf24; from left 5 3/8"; hinge left }',
    good: 'door entry on front { model Leaf24; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        for (const problem of shellProblems(input, 'corner-panel-too-narrow')) {
            const axis = axisOf(problem.wall);
            const size = sizeOf(input, axis);
            const moves = movedOpenings(input, problem.suggestions.placesThatClose);
            const sizes = size && moves.length === 0 ? changedSizes(size.value, problem.suggestions.sizesThatClose) : [];
            const [move] = moves;
            const block = move && openingBlock(input, move.opening.name);
            const at = block ? placeSpan(block) : size?.span;
            if (!at || !size) continue;
            yield {
                at,
                message: `The end panel of the ${problem.wall} wall at the ${problem.corner.replace('_', ' ')} corner would be ${input.show(problem.left)} wide; T + 3", ${input.show(problem.least)}, is needed (common practice, no source). ${moves.length > 0 ? `The wall closes with ${showMoves(moves)}.` : sizes.length > 0 ? `The nearest outside ${axis} is ${showList(sizes.map(input.show), 'or')}.` : 'Move what stands next to the corner.'}`,
                citation, ...measuredAgainst(problem.left, problem.least), subject: `room.${problem.wall}.panels`,
                fixes: [...fixesOf(moves), ...sizes.map(length => setSize(axis, size.span, length, input))],
            };
        }
    },
});
