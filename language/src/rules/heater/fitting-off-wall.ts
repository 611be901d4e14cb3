import { lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { wallsReachedPast } from '../astray.js';
import { isRoomTooLow } from '../room-height.js';
import { defineRule } from '../rule.js';
import { fittingFindings, fittingWords, placeFacts } from './fitting-findings.js';

export const fittingOffWall = defineRule({
    id: 'fitting-off-wall',
    family: 'heater',
    title: 'A fitting reaches past the end of its wall',
    severity: 'error',
    why: 'Part of it would be inside the neighbouring wall, the ceiling or the floor.',
    bad: 'light lamp on left { model Ember; from front 68"; height 62" }',
    good: 'light lamp on left { model Ember; from front 66"; height 62" }',
    sources: [{ kind: 'geometry', text: 'a fitting lies within its wall' }],
    isWaivable: false,
    fixes: 'none',
    check: input => fittingFindings(input, (fitting, problem) => {
        const { from, centre, bottom, height, below_ceiling: belowCeiling } = placeFacts(fitting);
        const past = problem.kind === 'runs-off-the-wall' ? `the ${problem.past} wall` : problem.kind === 'above-the-ceiling' ? 'the ceiling' : problem.kind === 'below-the-floor' ? 'the floor' : undefined;
        if (past === undefined || !('over' in problem) || (problem.kind === 'above-the-ceiling' && isRoomTooLow(input))) return undefined;
        // A room that is too short for a heater, door or bench is told there.
        if (problem.kind === 'runs-off-the-wall' && wallsReachedPast(input).has(problem.past)) return undefined;
        return {
            at: (problem.kind === 'runs-off-the-wall' ? from ?? centre : bottom ?? height ?? belowCeiling)?.span ?? fitting.block.head,
            message: `${fittingWords(fitting)} reaches ${input.show(problem.over)} into ${past}. Move it ${input.show(problem.over)} or more.`,
            citation: { kind: 'geometry', text: 'a fitting lies within its wall' }, measured: lengthFigure(problem.over), required: lengthFigure(zero), subject: fitting.name,
        };
    }),
});
