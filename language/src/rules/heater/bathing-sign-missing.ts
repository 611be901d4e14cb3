import { defineRule } from '../rule.js';

export const bathingSignMissing = defineRule({
    id: 'bathing-sign-missing',
    family: 'heater',
    title: 'No sign says how to bathe',
    severity: 'hint',
    why: 'Guests who have never bathed in such heat learn from it how long to stay and what to keep off the stones; it is packed with the room.',
    bad: '// without sign bathing',
    good: 'sign bathing { says bathing; stands outside }',
    sources: [{ kind: 'practice', text: 'a sign that says how to bathe' }],
    isWaivable: true,
    fixes: 'none',
    check: function* ({ job, results: { signs } }) {
        if (!job.isWhole || job.heaters.length === 0 || signs.bathing || job.signs.some(({ isWhole, values }) => !isWhole || !values.says)) return;
        yield {
            at: job.block.head,
            message: 'No sign says how to bathe; one is usually packed with the room (common practice, no source). Add a sign with says bathing.',
            citation: { kind: 'practice', text: 'a sign that says how to bathe' }, subject: 'signs',
        };
    },
});
