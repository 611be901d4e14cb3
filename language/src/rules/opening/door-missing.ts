import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'geometry', text: 'a room is entered and left by a door' } as const;

export const doorMissing = defineRule({
    id: 'door-missing',
    family: 'opening',
    title: 'A room without a door',
    severity: 'error',
    why: 'Nobody gets in or out, and the walls are divided as if there were no opening.',
    bad: '// without door entry',
    good: 'door entry on front { model Leaf24; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job }) {
        if (!job.isWhole || job.doors.length > 0 || !job.room) return;
        yield {
            at: job.room.head,
            message: 'The job has no door; one is needed. Write a block such as door entry on front { model …; from left …; hinge left }, its model named in a catalogue this file uses.',
            citation, measured: inWords('none'), required: inWords('one door'),
        };
    },
});
