import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { exactText, replaceValue } from '../fixes.js';
import { defineRule } from '../rule.js';
import { openingsOf, placeFact, placeText } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'a place along a wall is a distance from a wall it ends at' } as const;

export const openingPlaceNotANeighbour = defineRule({
    id: 'opening-place-not-a-neighbour',
    family: 'opening',
    title: 'A door or window measured from a wall its own wall does not end at',
    severity: 'error',
    why: 'A distance along a wall begins at one of the two walls it ends at; from any other nothing can be marked.',
    bad: 'door entry on front { model Leaf24; hinge left; from back 23 7/8" }',
    good: 'door entry on front { model Leaf24; hinge left; from left 23 7/8" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        for (const { name, block, problems, word } of openingsOf(input)) {
            const place = placeFact(block);
            for (const problem of problems) {
                if (problem.kind !== 'not-a-neighbour' || !place) continue;
                const { given, isCentre } = place;
                const distance = exactText(given.value.distance, input.job.unit);
                const ends = problem.neighbours;
                yield {
                    at: given.span,
                    message: `${word === 'door' ? 'Door' : 'Window'} ${name} on the ${problem.wall} wall is measured from the ${problem.from} wall; the ${problem.wall} wall ends at the ${showList(ends)} walls. Measure from one of these.`,
                    citation, measured: inWords(problem.from), required: inWords(showList(ends, 'or')), subject: name,
                    fixes: distance === undefined ? [] : ends.map(side => replaceValue(`Measure from the ${side} wall`, given.span, placeText(side, distance, isCentre))),
                };
            }
        }
    },
});
