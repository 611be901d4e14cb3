import { inWords } from '../../core/finding.js';
import { neighbours } from '../../core/geometry.js';
import { defineRule } from '../rule.js';
import { openingsOf } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'a place along a wall is a distance from a wall it ends at' } as const;

export const openingPlaceMissing = defineRule({
    id: 'opening-place-missing',
    family: 'opening',
    title: 'A door or window without its place',
    severity: 'error',
    why: 'Panels cannot be divided round an opening whose place is not known.',
    bad: 'door entry on front { model Leaf24; hinge left }',
    good: 'door entry on front { model Leaf24; hinge left; from left 23 7/8" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        for (const opening of openingsOf(input)) {
            const { name, block, problems, word } = opening;
            // Half-typed facts are not missing.
            if (!block.isWhole) continue;
            for (const problem of problems) {
                if (problem.kind !== 'place-missing') continue;
                const { left, right } = neighbours[problem.wall];
                yield {
                    at: block.head,
                    message: `Nothing says where along the ${problem.wall} wall ${word} ${name} is. Add from ${left} or from ${right} with the distance to its ${word === 'door' ? 'clear opening' : 'clear glass'}, or centre from ${left}.`,
                    citation, measured: inWords('not stated'), required: inWords('from or centre'), subject: name,
                };
            }
        }
    },
});
