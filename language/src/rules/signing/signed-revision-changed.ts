import { inWords } from '../../core/finding.js';
import { hasLooseLink } from '../../model/block.js';
import { sameFingerprint } from '../../assembly/model-fingerprint.js';
import { showDate } from '../../vocabulary/values.js';
import { replaceValue } from '../fixes.js';
import { defineRule } from '../rule.js';
import { nextRevision } from './next-revision.js';
import { signingCitation as citation } from './signing-citation.js';

export const signedRevisionChanged = defineRule({
    id: 'signed-revision-changed',
    family: 'signing',
    title: 'A revision changed after it was signed',
    severity: 'error',
    why: 'Whoever signed a revision answers for what it said then. What is cut, ordered and wired now is something else, under the same revision letter.',
    bad: 'revision "B"\nsign_off { revision "B"; by "N. Aune, design office"; date 2026-11-30; fingerprint "00000000000000000000000000000000" }',
    good: 'revision "C"\nsign_off { revision "B"; by "N. Aune, design office"; date 2026-11-30; fingerprint "00000000000000000000000000000000" }',
    sources: [citation],
    isWaivable: false,
    fixes: 'review',
    *check({ job, results }) {
        const { revision } = job.block.values;
        if (!revision || job.signOffs.length === 0 || !job.isWhole || hasLooseLink(job.block)) return;
        for (const { values: { revision: signed, by, date, fingerprint } } of job.signOffs) {
            if (!signed || !fingerprint || signed.value !== revision.value || sameFingerprint(fingerprint.value, results.fingerprint)) continue;
            const next = nextRevision(revision.value);
            const signature = `Revision ${signed.value} was signed${by && by.value !== '' ? ` by ${by.value}` : ''}${date ? ` on ${showDate(date.value)}` : ''}`;
            yield {
                at: fingerprint.span,
                message: `${signature} with the fingerprint ${fingerprint.value === '' ? 'left out' : fingerprint.value}; the job has ${results.fingerprint} now, so it changed since (${citation.text}; common practice, no source). Compare it with what was signed (hotroom diff), then give it a new revision and have that signed.`,
                citation, measured: inWords(results.fingerprint), required: inWords(fingerprint.value), subject: 'job.revision',
                related: [{ at: revision.fact, message: 'The revision of the job.' }],
                // What a series or the job of a variant says is not changed from here.
                fixes: next === undefined || revision.span.uri !== job.block.span.uri || revision.span.start < job.block.span.start ? [] : [replaceValue(`Make it revision ${next}`, revision.span, `"${next}"`)],
            };
        }
    },
});
