import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { shellProblems } from './shell-findings.js';

const citation = { kind: 'geometry', text: 'a square room has no shorter way' } as const;

export const ceilingSpanNotStated = defineRule({
    id: 'ceiling-span-not-stated',
    family: 'shell',
    title: 'A square room does not say which way its ceiling spans',
    severity: 'error',
    why: 'Ceiling panels span the shorter way. In a square room there is none, and shop and crew must not choose differently.',
    bad: 'room { system Skerry; width 79 1/2"; depth 79 1/2"; height 7\'0" }',
    good: 'room { system Skerry; width 79 1/2"; depth 79 1/2"; height 7\'0"; ceiling spans_front_to_back }',
    sources: [citation],
    isWaivable: false,
    fixes: 'review',
    *check(input) {
        const room = input.job.room;
        for (const { size } of shellProblems(input, 'span-not-stated')) {
            const insertAt = room?.insertAt;
            if (!room?.isWhole || room.written.has('ceiling') || !insertAt) continue;
            yield {
                at: room.head,
                message: `The room is ${input.show(size)} both ways and does not say which way its ceiling spans. Write ceiling spans_front_to_back or ceiling spans_left_to_right.`,
                citation, measured: inWords('not stated'), required: inWords('a stated span'), subject: 'room.ceiling',
                fixes: (['spans_front_to_back', 'spans_left_to_right'] as const).map(way => ({ title: `Write ceiling ${way}`, safety: 'review', edits: [{ span: insertAt, newText: `; ceiling ${way}` }] })),
            };
        }
    },
});
