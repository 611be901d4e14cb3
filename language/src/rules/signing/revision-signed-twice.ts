import { inWords } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { signingCitation as citation } from './signing-citation.js';

export const revisionSignedTwice = defineRule({
    id: 'revision-signed-twice',
    family: 'signing',
    title: 'One person signed a revision twice',
    severity: 'info',
    why: 'Two people may sign one revision. When one signs it again, it had changed, and a reader cannot tell which of the two models the drawings on the wall show.',
    bad: 'revision "B"\nsign_off { revision "B"; by "N. Aune"; date 2026-11-30; fingerprint "00000000000000000000000000000000" }\nsign_off { revision "B"; by "N. Aune"; date 2026-12-02; fingerprint "11111111111111111111111111111111" }',
    good: 'revision "B"\nsign_off { revision "B"; by "N. Aune"; date 2026-11-30; fingerprint "00000000000000000000000000000000" }\nsign_off { revision "B"; by "S. Lind"; date 2026-12-02; fingerprint "00000000000000000000000000000000" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job }) {
        const first = new Map<string, (typeof job.signOffs)[number]>();
        for (const signOff of job.signOffs) {
            const { revision, by } = signOff.values;
            if (!revision || !by || by.value.trim() === '') continue;
            const key = JSON.stringify([revision.value, by.value]);
            const known = first.get(key);
            if (!known) { first.set(key, signOff); continue; }
            yield {
                at: by.span, message: `${by.value} signed revision ${revision.value} twice; one revision is signed once by each person (${citation.text}; common practice, no source). Take the older sign-off away, or give the job a new revision.`,
                citation, measured: inWords('two sign-offs'), required: inWords('one'), subject: 'job.revision', related: [{ at: known.head, message: 'It was signed here first.' }],
            };
        }
    },
});
