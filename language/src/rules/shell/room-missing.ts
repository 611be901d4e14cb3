import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'everything is worked out from the shell of the room' } as const;

export const roomMissing = defineRule({
    id: 'room-missing',
    family: 'shell',
    title: 'The job has no room',
    severity: 'error',
    why: 'Panels, benches, clearances and the cut list all follow from the room. Without it nothing is checked, and a job that says nothing must not pass as sound.',
    bad: '// without room',
    good: 'room { system Skerry; width 84"; depth 79 1/2"; height 7\'0"; ceiling spans_left_to_right }',
    sources: [citation],
    isWaivable: false,
    fixes: 'none',
    *check({ job }) {
        if (job.room || !job.isWhole || job.block.children.some(({ isWhole }) => !isWhole)) return;
        yield {
            at: job.block.head,
            message: 'The job has no room, so nothing of it was checked (everything is worked out from the shell of the room). Write room { system …; width …; depth …; height … }, the system named in a catalogue this file uses.',
            citation, measured: inWords('none'), required: inWords('a room'), subject: 'room',
        };
    },
});
