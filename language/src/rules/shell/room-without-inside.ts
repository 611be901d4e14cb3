import { lengthFigure } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { shellProblems } from './shell-findings.js';

const citation = { kind: 'geometry', text: 'the walls of a room leave something between them' } as const;

export const roomWithoutInside = defineRule({
    id: 'room-without-inside',
    family: 'shell',
    title: 'The shell takes the whole of a dimension',
    severity: 'error',
    why: 'Outside sizes include both walls, the plate and the ceiling. When they take all of it, nothing inside can be worked out.',
    bad: 'room { system Skerry; width 7 1/2"; depth 79 1/2"; height 7\'0" }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [citation],
    isWaivable: false,
    fixes: 'none',
    *check(input) {
        for (const { axis, outside, takenByShell } of shellProblems(input, 'room-has-no-inside')) {
            const size = input.job.room?.values[axis];
            if (!size) continue;
            yield {
                at: size.span,
                message: `The ${axis} is ${input.show(outside)} outside, and the shell alone takes ${input.show(takenByShell)}. Outside sizes are written here, not inside ones.`,
                citation, measured: lengthFigure(outside), required: lengthFigure(takenByShell), subject: axis === 'height' ? 'room.panel_height' : `room.inside.${axis}`,
            };
        }
    },
});
