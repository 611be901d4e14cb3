import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { exactText, replaceValue } from '../fixes.js';
import { defineRule } from '../rule.js';
import { benchFindings } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'places along a wall are measured from the walls it ends at' } as const;

export const benchPlaceNotANeighbour = defineRule({
    id: 'bench-place-not-a-neighbour',
    family: 'bench',
    title: 'A bench measured from a wall its own wall does not end at',
    severity: 'error',
    why: 'A distance along a wall begins at one of the two walls it ends at; from any other nothing can be marked.',
    bad: 'bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from front 8" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20"; length 60"; from left 8" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'place-not-neighbour', ({ problem: { wall, from, neighbours }, block, name }) => {
        const stated = block.values.from;
        if (!stated) return undefined;
        const distance = exactText(stated.value.distance, input.job.unit);
        return {
            at: stated.span,
            message: `Bench ${name} on the ${wall} wall is measured from the ${from} wall; the ${wall} wall ends at the ${showList(neighbours)} walls. Measure from one of these.`,
            citation, measured: inWords(from), required: inWords(showList(neighbours, 'or')), subject: name,
            fixes: distance === undefined ? [] : neighbours.map(side => replaceValue(`Measure from the ${side} wall`, stated.span, `${side} ${distance}`)),
        };
    }),
});
