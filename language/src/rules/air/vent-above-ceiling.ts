import { lengthFigure } from '../../core/finding.js';
import { minus, zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { heightSpan, setLowerEdge, ventFindings } from './air-findings.js';

const citation = { kind: 'geometry', text: 'an opening lies between floor and ceiling' } as const;

export const ventAboveCeiling = defineRule({
    id: 'vent-above-ceiling',
    family: 'air',
    title: 'A vent reaches above the ceiling',
    severity: 'error',
    why: 'Part of the opening would be cut into the edge of the ceiling panels.',
    bad: 'vent exhaust on front { size 8" x 4"; from left 8"; bottom 78"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 0"; air room }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => ventFindings(input, 'above-the-ceiling', ({ problem, block, title, name }) => {
        const { inside } = input.results;
        const size = block.values.size?.value.height;
        if (!inside || size === undefined) return undefined;
        const highest = minus(inside.height, size);
        return {
            at: heightSpan(block),
            message: `${title} reaches ${input.show(problem.over)} above the ceiling lining, which is ${input.show(inside.height)} over the floor. ${highest >= 0 ? `A lower edge up to ${input.show(highest)} over the floor keeps it in the wall.` : 'It is higher than the room.'}`,
            citation, measured: lengthFigure(problem.over), required: lengthFigure(zero), subject: `${name}.lower_edge`,
            fixes: highest >= 0 ? setLowerEdge(block, highest, { height: inside.height, size }, input) : [],
        };
    }),
});
