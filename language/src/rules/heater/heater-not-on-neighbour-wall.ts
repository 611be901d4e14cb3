import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { heaterFindings, placeEdits } from './heater-findings.js';
import { zero } from '../../core/length.js';

export const heaterNotOnNeighbourWall = defineRule({
    id: 'heater-not-on-neighbour-wall',
    family: 'heater',
    title: 'The place of the heater is measured from a wall that does not meet its own',
    severity: 'error',
    why: 'A distance along a wall starts at the lining of one of the two walls it ends on; from any other wall it says nothing.',
    bad: 'heater stove on right { model Tarn60; from left 8"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'a wall ends on its two neighbours' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, ({ name, block, problems }) => problems.flatMap(problem => {
        const place = block.values.from ?? block.values.centre;
        if (problem.kind !== 'not-a-neighbour' || !place) return [];
        const [left, right] = problem.neighbours;
        return [{
            at: place.span,
            message: `Heater ${name} is on the ${problem.wall} wall, which does not meet the ${problem.from} wall. Measure from the ${left} or the ${right} wall.`,
            citation: { kind: 'geometry', text: 'a wall ends on its two neighbours' }, measured: inWords('from a wall that does not meet it'), required: inWords('from a neighbouring wall'), subject: name,
            fixes: problem.neighbours.map(wall => ({
                // The distance is kept as it is written; which of the two walls was meant only the designer knows.
                title: `Measure from the ${wall} wall`, safety: 'review', edits: placeEdits({ ...block, values: { from: place } }, wall, place.value.distance, zero, input.job.unit)
                    .map(({ span, newText }) => ({ span, newText: block.values.from ? newText : `from ${newText}` })),
            })),
        }];
    })),
});
