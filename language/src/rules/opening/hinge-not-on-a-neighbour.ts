import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { replaceValue } from '../fixes.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'a door is hinged on the side toward one of the walls its wall ends at' } as const;

export const hingeNotOnANeighbour = defineRule({
    id: 'hinge-not-on-a-neighbour',
    family: 'opening',
    title: 'A door hinged toward a wall its own wall does not end at',
    severity: 'error',
    why: 'On which side the hinges go is not known, so the door has no hand and no swing.',
    bad: 'door entry on front { model Leaf24; from left 23 7/8"; hinge back }',
    good: 'door entry on front { model Leaf24; from left 23 7/8"; hinge right }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check({ results: { doors } }) {
        for (const { name, block: { values: { hinge } }, problems } of doors) {
            for (const problem of problems) {
                if (problem.kind !== 'hinge-not-on-a-neighbour' || !hinge) continue;
                yield {
                    at: hinge.span,
                    message: `Door ${name} on the ${problem.wall} wall is hinged toward the ${problem.hinge} wall; the ${problem.wall} wall ends at the ${showList(problem.neighbours)} walls. Hinge it toward one of these.`,
                    citation, measured: inWords(problem.hinge), required: inWords(showList(problem.neighbours, 'or')), subject: name,
                    fixes: problem.neighbours.map(side => replaceValue(`Hinge it on the ${side}`, hinge.span, side)),
                };
            }
        }
    },
});
