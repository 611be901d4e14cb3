import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createHash } from 'node:crypto';
import type { JobAnalysis } from '../../language/src/analyze.js';
import { signRevision } from '../../language/src/editing/refactorings/sign-revision.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { RuleInput } from '../../language/src/rules/rule.js';
import { signedRevisionChanged } from '../../language/src/rules/signing/signed-revision-changed.js';
import { shuffleBlock, writeFile } from '../properties/job-text.js';
import { fileOf, randomJob } from '../properties/random-job.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';
import { signOff } from '../rules/signing/signed.js';

const fingerprints = async (text: string): Promise<readonly string[]> => (await analyzeText(text)).jobs.map(({ results }) => results.fingerprint);
const ofJob = async (snippet: string): Promise<string> => (await fingerprints(withStandardJob(snippet)))[0]!;
const today = { year: 2026, month: 12, day: 1 };

describe('a fingerprint', () => {
    test('is 128 bits, and SHA-256 is that of the system (FIPS 180-4)', async () => {
        expect(await ofJob('')).toMatch(/^[0-9a-f]{32}$/);
        for (const text of ['', 'abc', 'ä'.repeat(100)]) expect(bytesToHex(sha256(utf8ToBytes(text)))).toBe(createHash('sha256').update(text, 'utf8').digest('hex'));
    });
    test('is equal for jobs that mean the same: another order, another unit', async () => {
        await fc.assert(fc.asyncProperty(randomJob, fc.infiniteStream(fc.nat()), async ({ job }, numbers) => {
            const own = await fingerprints(writeFile(fileOf(job), 'in', 'open'));
            expect(own).toHaveLength(1);
            const shuffled = { ...fileOf(shuffleBlock(job, count => (numbers.next().value ?? 0) % count)), uses: [...fileOf(job).uses].reverse() };
            expect(await fingerprints(writeFile(shuffled, 'mm', 'compact'))).toEqual(own);
        }), { numRuns: 20, seed: 21 });
    });
    test.each([
        ['a sign-off', signOff('B')], ['a remark', '// looked at twice'], ['a name of a calculation', 'let aisle = room.inside.width - 40"'],
    ])('does not change with %s', async (_, snippet) => { expect(await ofJob(snippet)).toBe(await ofJob('')); });
    test('does not change with how long a waiver holds, but with who accepts what and why', async () => {
        const waived = (why: string, who: string, until: string): Promise<string> => ofJob(`waive feet-below-stones on stove because "${why}" by "${who}" until ${until}`);
        const own = await waived('short people', 'office', '2027-03-01');
        expect(await waived('short people', 'office', '2028-03-01')).toBe(own);
        expect(new Set([own, await ofJob(''), await waived('short children', 'office', '2027-03-01'), await waived('short people', 'customer', '2027-03-01')]).size).toBe(4);
    });
    test.each([
        ['the revision', 'revision "X"'], ['the rule sets', 'rules us_commercial'], ['1/16" on a bench', 'bench upper on back { build Slatted; top 37 1/16"; depth 20" }'],
        ['a light more', 'light second on left { from front 12"; height 66"; rating 125 degC }'],
    ])('changes with %s', async (_, snippet) => { expect(await ofJob(snippet)).not.toBe(await ofJob('')); });
    test('changes with the catalogue entry a job reaches, not with another', async () => {
        const text = (power: string, other: string): string => withStandardJob(`heater_model Own is Tarn60 { power ${power} }\nheater_model Other is Tarn60 { power ${other} }\nheater stove on right { model Own; from front 8"; guard yes; backing 1 1/2" }`);
        const [own] = await fingerprints(text('6 kW', '6 kW'));
        expect(await fingerprints(text('6 kW', '5 kW'))).toEqual([own]);
        expect(await fingerprints(text('5 kW', '6 kW'))).not.toEqual([own]);
    });
    test('is not worked out for a job nobody signed', async () => {
        const { jobs: [job] } = await analyzeText(withStandardJob(''));
        const results = Object.create(job!.results, { fingerprint: { get() { throw new Error('asked for'); } } }) as JobAnalysis['results'];
        const input: RuleInput = { job: job!.job, results, ruleSets: job!.ruleSets, show: String, whatIf: () => input };
        expect([...signedRevisionChanged.check(input)]).toEqual([]);
    });
});

describe('whose a sign-off is', () => {
    const stale = async (text: string): Promise<readonly string[]> => (await analyzeText(text)).findings.filter(({ rule }) => rule === 'signed-revision-changed').map(({ at }) => text.slice(at.start - 80, at.end).split('by "').at(-1)!.slice(0, 6));
    const variant = 'variant low "Low" { bench upper { top 36" } }';
    test('the job\'s own is not asked of its variant, and the variant\'s not of the job', async () => {
        const plain = withStandardJob(`revision "B"\n${variant}`);
        const [job, low] = await fingerprints(plain);
        expect(job).not.toBe(low);
        expect(await stale(withStandardJob(`revision "B"\n${variant}\n${signOff('B', 'N. Aune', job)}`))).toEqual([]);
        expect(await stale(withStandardJob(`revision "B"\n${variant.replace(/}$/, `${signOff('B', 'S. Lind', low)} }`)}`))).toEqual([]);
        expect(await stale(withStandardJob(`revision "B"\n${variant.replace(/}$/, `${signOff('B', 'S. Lind', job)} }`)}`))).toEqual(['S. Lin']);
    });
    test('a series signs nothing', async () => {
        const { findings } = await analyzeText(`series cottage { revision "B"\n${signOff('B')} }\njob one is cottage { rules us_dwelling }`);
        expect(findings.map(({ rule }) => rule)).toContain('unknown-word');
        expect(findings.map(({ rule }) => rule)).not.toContain('signed-revision-changed');
    });
});

describe('signing from the editor', () => {
    const offers = async (text: string, at: string): Promise<ReturnType<typeof signRevision>> => {
        const analysis = await analyzeText(text);
        const offset = text.indexOf(at);
        return signRevision(analysis, analysis.file.uri, offset, offset, today);
    };
    const applied = (text: string, [offer]: Awaited<ReturnType<typeof offers>>): string => [...offer!.edits].sort((a, b) => b.span.start - a.span.start).reduce((now, { span, newText }) => now.slice(0, span.start) + newText + now.slice(span.end), text);
    const rules = async (text: string): Promise<readonly string[]> => (await analyzeText(text)).findings.map(({ rule }) => rule).filter(rule => /sign(-off|ed)/.test(rule));
    test('writes all but the name, and with a name it stands', async () => {
        const text = withStandardJob('revision "B"');
        const changed = applied(text, await offers(text, 'revision "B"'));
        expect(changed).toContain('    sign_off {\n        revision     "B"\n        by           ""\n        date         2026-12-01\n');
        expect(await rules(changed)).toEqual(['sign-off-without-name']);
        expect(await rules(changed.replace('by           ""', 'by           "N. Aune"'))).toEqual([]);
        expect(await offers(changed, 'revision "B"')).toEqual([]);
    });
    test('signs again in place, and asks for the name again', async () => {
        const text = withStandardJob(`revision "B"\n${signOff('B', 'N. Aune')}`);
        const offered = await offers(text, 'sign_off');
        expect(offered.map(({ title }) => title)).toEqual(['Sign revision B again']);
        expect(await rules(applied(text, offered))).toEqual(['sign-off-without-name']);
    });
    test('is refused while the job stands with errors, and not offered where no revision is stated', async () => {
        expect((await offers(withStandardJob('revision "B"\nheater stove on right { model Tarn60; from front 1"; guard yes }'), 'job standard')).map(({ refusal }) => refusal)).toEqual([expect.stringMatching(/^The job stands with \d+ errors?\. Settle them first\.$/)]);
        expect(await offers('job one { rules us_dwelling }', 'job one')).toEqual([]);
    });
});
