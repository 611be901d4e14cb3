import { inWords, lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { shellProblems } from './shell-findings.js';

const citation = { kind: 'practice', text: 'no panel joint strictly inside the fastening zone of the heater' } as const;

export const jointInFasteningZone = defineRule({
    id: 'joint-in-fastening-zone',
    family: 'shell',
    title: 'A panel joint falls behind the fastenings of the heater',
    severity: 'warning',
    why: 'The blocking the heater hangs on lies inside one panel. With a joint between its screws the blocking is cut in two and the panels can work against each other under a hot load.',
    bad: 'heater stove on right { model Tarn60; centre from front 24"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        for (const problem of shellProblems(input, 'joint-in-fastening-zone')) {
            const block = input.results.heaters.find(heater => heater.name === problem.name)?.block;
            if (!block) continue;
            yield {
                at: (block.values.from ?? block.values.centre)?.span ?? block.head,
                message: `The joint between ${problem.between[0]} and ${problem.between[1]} falls inside the fastening zone of heater ${problem.name}; the zone has to lie inside one panel (common practice, no source). Move the heater along the ${problem.wall} wall until the zone clears the joint.`,
                citation, measured: lengthFigure(problem.joint), required: inWords(`outside ${input.show(problem.zone.from)} to ${input.show(problem.zone.to)}`), subject: problem.name,
            };
        }
    },
});
