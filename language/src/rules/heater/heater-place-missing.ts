import { inWords } from '../../core/finding.js';
import { neighbours } from '../../core/geometry.js';
import { defineRule } from '../rule.js';
import { heaterFindings, lacks } from './heater-findings.js';

export const heaterPlaceMissing = defineRule({
    id: 'heater-place-missing',
    family: 'heater',
    title: 'The heater has no place on its wall',
    severity: 'error',
    why: 'Without its place no clearance can be measured, no blocking found, and no panel joint kept off its fastenings.',
    bad: 'heater stove on right { model Tarn60; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'a place along a wall is a distance from a neighbouring wall' }],
    isWaivable: false,
    fixes: 'none',
    check: input => heaterFindings(input, ({ name, block, problems }) => problems.flatMap(problem => {
        if (problem.kind !== 'place-missing' || !lacks(block, 'from', 'centre')) return [];
        const { left, right } = neighbours[problem.wall];
        return [{
            at: block.head,
            message: `Heater ${name} has no place on the ${problem.wall} wall, so its clearances are not checked. Write from ${left} or from ${right} and the distance to its casing.`,
            citation: { kind: 'geometry', text: 'a place along a wall is a distance from a neighbouring wall' }, measured: inWords('not stated'), required: inWords('from or centre'), subject: name,
        }];
    })),
});
