import { describe, expect, test } from 'vitest';
import { nextRevision } from '../../../language/src/rules/signing/next-revision.js';
import { signedRevisionChanged as rule } from '../../../language/src/rules/signing/signed-revision-changed.js';
import { checkFindings, checkFix, findingsOf } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';
import { fingerprintOf, signed, signOff, someFingerprint } from './signed.js';

test('reports a revision that is not what was signed, with both fingerprints, the day and what to do', async () => {
    const text = withStandardJob(`revision "B"\n${signOff('B')}`);
    const [finding, ...more] = await findingsOf(rule, text);
    expect(more).toEqual([]);
    expect(text.slice(finding!.at.start, finding!.at.end)).toBe(`"${someFingerprint}"`);
    expect(finding).toMatchObject({ severity: 'error', fixes: [{ title: 'Make it revision C' }] });
    expect(finding!.message).toBe(`Revision B was signed by N. Aune, design office on 2026-11-30 with the fingerprint ${someFingerprint}; the job has ${await fingerprintOf(text)} now, so it changed since `
        + '(a drawing that is changed after it was signed gets a new revision and is signed again; common practice, no source). Compare it with what was signed (hotroom diff), then give it a new revision and have that signed.');
});
test('accepts a revision that is as it was signed, in capitals and groups too', async () => {
    const snippet = await signed('B');
    const mark = /fingerprint "(\w+)"/.exec(snippet)![1]!;
    await checkFindings(rule, snippet);
    await checkFindings(rule, snippet.replace(mark, mark.toUpperCase().replace(/.{4}/g, '$& ').trim()));
});
test('a 1/16" on one bench is a change', async () => {
    const upper = (top: string): string => `bench upper on back { build Slatted; top ${top}; depth 20" }`;
    const snippet = await signed('B', upper('37"'));
    expect(await findingsOf(rule, withStandardJob(snippet.replace('top 37"', 'top 37 1/16"')))).toHaveLength(1);
    expect(await findingsOf(rule, withStandardJob(snippet.replace('top 37"', 'top 939.8 mm')))).toEqual([]);
});
test('sign-offs of other revisions are history', () => checkFindings(rule, `revision "C"\n${signOff('B')}\n${signOff('A')}`));
test('stays silent while the file is being typed', () => checkFindings(rule, `
    revision "B"
    ${signOff('B')}
    bench upper on back { build Slatted; top
`));
test('the fix gives the job its next revision', () => checkFix(rule, `revision "B"\n${signOff('B')}`, `revision "C"\n${signOff('B')}`));

describe('the next revision', () => {
    test.each([['A', 'B'], ['B', 'C'], ['Z', 'AA'], ['AZ', 'BA'], ['1', '2'], ['09', '10'], ['P-1', undefined], ['', undefined]])('after %s is %s', (revision, next) => { expect(nextRevision(revision)).toBe(next); });
});
