import { lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { heaterFindings, moveToClear, placeSpan, showPositions } from './heater-findings.js';

export const heaterRunsOffWall = defineRule({
    id: 'heater-runs-off-wall',
    family: 'heater',
    title: 'The heater reaches past the end of its wall',
    severity: 'error',
    why: 'Part of the casing would stand inside the neighbouring wall.',
    bad: 'heater stove on right { model Tarn60; from front 58"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'the casing stands between the two neighbouring walls' }],
    isWaivable: false,
    fixes: 'review',
    check: input => heaterFindings(input, judged => judged.problems.flatMap(problem => {
        if (problem.kind !== 'runs-off-the-wall') return [];
        return [{
            at: placeSpan(judged.block),
            message: `Heater ${judged.name} reaches ${input.show(problem.over)} into the ${problem.past} wall. ${showPositions(judged, input)}`.trimEnd(),
            citation: { kind: 'geometry', text: 'the casing stands between the two neighbouring walls' },
            measured: lengthFigure(problem.over), required: lengthFigure(zero), subject: judged.name, fixes: moveToClear(judged, input),
        }];
    })),
});
