import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { signingCitation as citation } from './signing-citation.js';

export const revisionNotSigned = defineRule({
    id: 'revision-not-signed',
    family: 'signing',
    title: 'A job that was signed before, but not as it is now',
    severity: 'info',
    why: 'A job with signatures looks signed. This says which revision they are of, and that the one the shop would get has none yet.',
    bad: 'revision "C"\nsign_off { revision "B"; by "N. Aune, design office"; date 2026-11-30; fingerprint "00000000000000000000000000000000" }',
    good: 'revision "B"\nsign_off { revision "B"; by "N. Aune, design office"; date 2026-11-30; fingerprint "00000000000000000000000000000000" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job }) {
        const { revision } = job.block.values;
        const signed = [...new Set(job.signOffs.flatMap(({ values }) => values.revision?.value ?? []))];
        const [first] = job.signOffs;
        if (!job.isWhole || !first || signed.length === 0 || (revision && signed.includes(revision.value)) || (!revision && job.block.written.has('revision'))) return;
        yield {
            at: revision?.span ?? first.head,
            message: `${revision ? `Revision ${revision.value}` : 'The job, which states no revision,'} is not signed; ${signed.length === 1 ? 'revision' : 'revisions'} ${showList(signed)} ${signed.length === 1 ? 'was' : 'were'} (${citation.text}; common practice, no source). ${revision ? 'Have it reviewed and signed before wood is cut.' : 'Write which revision it is.'}`,
            citation, measured: inWords(showList(signed)), required: inWords(revision?.value ?? 'a revision'), subject: 'job.revision',
        };
    },
});
