import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { addBlockAfter, reviewFix } from './heater-findings.js';

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
    fixes: 'review',
    check: function* ({ job, results: { signs } }) {
        if (!job.isWhole || job.heaters.length === 0 || signs.bathing || job.signs.some(({ isWhole, values }) => !isWhole || !values.says)) return;
        const after = job.signs.at(-1) ?? job.heaters.at(-1);
        yield {
            at: job.block.head,
            message: 'No sign says how to bathe; one is usually packed with the room (common practice, no source). Write sign bathing { says bathing; stands outside }.',
            citation: { kind: 'practice', text: 'a sign that says how to bathe' }, measured: inWords('none'), required: inWords('a bathing sign'), subject: 'signs',
            fixes: after ? reviewFix('Add the bathing sign', addBlockAfter(after, 'sign bathing { says bathing; stands outside }')) : [],
        };
    },
});
