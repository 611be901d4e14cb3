import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { signingCitation as citation } from './signing-citation.js';

export const signOffWithoutName = defineRule({
    id: 'sign-off-without-name',
    family: 'signing',
    title: 'A sign-off that does not say who signed',
    severity: 'error',
    why: 'Somebody answers for what was signed. Nobody can ask an empty line what they looked at.',
    bad: 'revision "B"\nsign_off { revision "B"; by ""; date 2026-11-30; fingerprint "00000000000000000000000000000000" }',
    good: 'revision "B"\nsign_off { revision "B"; by "N. Aune, design office"; date 2026-11-30; fingerprint "00000000000000000000000000000000" }',
    sources: [citation],
    isWaivable: false,
    fixes: 'none',
    *check({ job }) {
        for (const { values: { by, revision } } of job.signOffs) {
            if (!by || by.value.trim() !== '') continue;
            yield {
                at: by.span, message: `The sign-off${revision ? ` of revision ${revision.value}` : ''} names nobody; whoever looked at the job signs with name and office (common practice, no source). Write them in, or take the sign-off away.`,
                citation, measured: inWords('no name'), required: inWords('name and office'), subject: 'job.revision',
            };
        }
    },
});
