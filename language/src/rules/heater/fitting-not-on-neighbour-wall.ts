import { inWords } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { fittingFindings, fittingWords, placeFacts } from './fitting-findings.js';
import { placeEdits } from './heater-findings.js';

export const fittingNotOnNeighbourWall = defineRule({
    id: 'fitting-not-on-neighbour-wall',
    family: 'heater',
    title: 'The place of a fitting is measured from a wall that does not meet its own',
    severity: 'error',
    why: 'A distance along a wall starts at the lining of one of the two walls it ends on; from any other wall it says nothing.',
    bad: 'thermometer on left { from right 30" }',
    good: 'thermometer on left { from front 30" }',
    sources: [{ kind: 'geometry', text: 'a wall ends on its two neighbours' }],
    isWaivable: false,
    fixes: 'review',
    check: input => fittingFindings(input, (fitting, problem) => {
        const values = placeFacts(fitting);
        const place = values.from ?? values.centre;
        if (problem.kind !== 'not-a-neighbour' || !place) return undefined;
        const [left, right] = problem.neighbours;
        return {
            at: place.span,
            message: `${fittingWords(fitting)} is on the ${problem.wall} wall, which does not meet the ${problem.from} wall. Measure from the ${left} or the ${right} wall.`,
            citation: { kind: 'geometry', text: 'a wall ends on its two neighbours' }, measured: inWords('from a wall that does not meet it'), required: inWords('from a neighbouring wall'), subject: fitting.name,
            fixes: problem.neighbours.map(wall => ({
                title: `Measure from the ${wall} wall`, safety: 'review',
                edits: placeEdits({ values, head: fitting.block.head }, wall, place.value.distance, zero, input.job.unit),
            })),
        };
    }),
});
