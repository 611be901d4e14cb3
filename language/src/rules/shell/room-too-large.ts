import { defineRule } from '../rule.js';
import { measuredAgainst, shellProblems } from './shell-findings.js';

const citation = { kind: 'practice', text: 'no room of this trade is longer than 50 ft' } as const;

export const roomTooLarge = defineRule({
    id: 'room-too-large',
    family: 'shell',
    title: 'The room is larger than any room of this trade',
    severity: 'error',
    why: 'Beyond 50 ft a size is a slip of the pen, mostly a wrong unit, and is not worked out.',
    bad: 'room { system Skerry; width 84 ft; depth 79 1/2"; height 7\'0" }',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [citation],
    isWaivable: false,
    fixes: 'none',
    *check(input) {
        for (const { axis, outside, limit } of shellProblems(input, 'room-too-large')) {
            const size = input.job.room?.values[axis];
            if (!size) continue;
            yield {
                at: size.span,
                message: `The ${axis} is ${input.show(outside)}; at most ${input.show(limit)} is worked out (common practice, no source). Check the unit.`,
                citation, ...measuredAgainst(outside, limit), subject: `room.inside.${axis}`,
            };
        }
    },
});
