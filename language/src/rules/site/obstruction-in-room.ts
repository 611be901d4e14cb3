import { inWords, lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'the room and the building cannot fill one place' } as const;

export const obstructionInRoom = defineRule({
    id: 'obstruction-in-room',
    family: 'site',
    title: 'Something of the building stands where the room will stand',
    severity: 'error',
    why: 'A beam or pipe inside the outline of the room means a notch nobody has designed, or another place.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; obstruction pipe { from_left 10"; from_front 60"; width 4"; depth 4" } }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; free front, right; obstruction pipe { from_left 90"; from_front 10"; width 4"; depth 4" } }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }) {
        for (const { obstruction, isInRoom, block } of results.site?.obstructions ?? []) {
            if (!isInRoom) continue;
            yield {
                at: block.head,
                message: `Obstruction ${obstruction.name} stands inside the outline of the room as it is placed against the closed sides; nothing may (${citation.text}). Move the room, make it smaller, or have the obstruction moved.`,
                citation, measured: lengthFigure(zero), required: inWords('clear of the room'), subject: 'room', related: job.room ? [{ at: job.room.head, message: 'The room stands here.' }] : [],
            };
        }
    },
});
