import { lengthFigure } from '../../core/finding.js';
import { minus, zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { heightSpan, setLowerEdge, ventFindings } from './air-findings.js';

const citation = { kind: 'geometry', text: 'an opening lies between floor and ceiling' } as const;

export const ventBelowFloor = defineRule({
    id: 'vent-below-floor',
    family: 'air',
    title: 'A vent reaches below the floor',
    severity: 'error',
    why: 'Part of the opening would be cut into the floor.',
    bad: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 80"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; bottom 0"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => ventFindings(input, 'below-the-floor', ({ problem, block, title, name }) => {
        const { inside } = input.results;
        const size = block.values.size?.value.height;
        if (!inside || size === undefined) return undefined;
        const fits = minus(inside.height, size) >= 0;
        return {
            at: heightSpan(block),
            message: `${title} reaches ${input.show(problem.over)} below the finished floor. ${fits ? `A lower edge ${input.show(zero)} to ${input.show(minus(inside.height, size))} over the floor keeps it in the wall.` : 'It is higher than the room.'}`,
            citation, measured: lengthFigure(problem.over), required: lengthFigure(zero), subject: `${name}.lower_edge`,
            fixes: fits ? setLowerEdge(block, zero, { height: inside.height, size }, input) : [],
        };
    }),
});
