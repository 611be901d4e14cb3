import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { alongSpan, ventFindings } from './air-findings.js';

const citation = { kind: 'geometry', text: 'a wall ends at its two neighbours' } as const;

export const ventNotOnNeighbour = defineRule({
    id: 'vent-not-on-neighbour',
    family: 'air',
    title: 'A vent is measured from a wall that its own wall does not meet',
    severity: 'error',
    why: 'A distance along a wall begins at the lining of a wall it meets; from any other it has no meaning.',
    bad: 'vent exhaust on front { size 8" x 4"; from back 8"; below_ceiling 3"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => ventFindings(input, 'not-a-neighbour', ({ problem, block, title, name }) => ({
        at: alongSpan(block),
        message: `${title} is on the ${problem.wall} wall and measured from the ${problem.from} wall; the ${problem.wall} wall meets the ${showList(problem.neighbours, 'and')} walls. Measure from one of them.`,
        citation, measured: inWords(problem.from), required: inWords(showList(problem.neighbours, 'or')), subject: name,
    })),
});
