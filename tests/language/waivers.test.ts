import { expect, test } from 'vitest';
import type { ReportedFinding } from '../../language/src/core/finding.js';
import { usDwelling } from '../../language/src/rule-sets/united-states.js';
import { applyWaivers } from '../../language/src/rules/apply-waivers.js';
import { allRules } from '../../language/src/rules/index.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';

const lowRoom = 'room { system Skerry; width 84"; depth 79 1/2"; height 84"; ceiling spans_front_to_back }\nbench upper on back { build Slatted; top 42"; depth 20" }';
const findings = async (snippet: string, today = { year: 2026, month: 11, day: 25 }): Promise<readonly ReportedFinding[]> => (await analyzeText(withStandardJob(snippet), { today })).findings;
const waive = (rest: string): string => `waive head-clearance-too-low ${rest}\n`;
const signed = 'because "low room, signed by the customer" by "design office" until 2027-03-01';

test('without a waiver the finding stands', async () => {
    expect((await findings(lowRoom)).find(({ rule }) => rule === 'head-clearance-too-low')?.severity).toBe('warning');
});
test('an accepted finding stays as an info, with who, why and until when', async () => {
    const finding = (await findings(`${waive(`on upper ${signed}`)}${lowRoom}`)).find(({ rule }) => rule === 'head-clearance-too-low');
    expect(finding).toMatchObject({ severity: 'info', waived: { because: 'low room, signed by the customer', by: 'design office', until: '2027-03-01' } });
    expect(finding?.message).toMatch(/ Accepted by design office until 2027-03-01: low room, signed by the customer\.$/);
});
test('a waiver of another block does not reach it, and nothing answers to it', async () => {
    const found = await findings(`${waive(`on lower ${signed}`)}${lowRoom}`);
    expect(found.find(({ rule }) => rule === 'head-clearance-too-low')?.severity).toBe('warning');
    expect(found.filter(({ rule }) => rule === 'waiver-not-needed').map(({ message }) => message)).toEqual(['Nothing answers to this waiver: there is no head-clearance-too-low on lower. Remove it.']);
});
test('a waiver of a misspelt block', async () => {
    expect((await findings(`${waive(`on uper ${signed}`)}${lowRoom}`)).filter(({ rule }) => rule === 'waiver-not-needed').map(({ message }) => message))
        .toEqual(['There is no uper in this job to waive head-clearance-too-low on. Is upper meant?']);
});
test('an unneeded waiver can be removed', async () => {
    const source = withStandardJob(waive(`on upper ${signed}`));
    const finding = (await analyzeText(source)).findings.find(({ rule }) => rule === 'waiver-not-needed');
    expect(finding?.severity).toBe('warning');
    expect(finding?.fixes?.[0]?.safety).toBe('safe');
});
test('it holds on its last day and not after', async () => {
    const on = (day: number): Promise<readonly ReportedFinding[]> => findings(`${waive(`on upper ${signed}`)}${lowRoom}`, { year: 2027, month: 3, day });
    expect((await on(1)).some(({ rule }) => rule === 'waiver-expired')).toBe(false);
    const after = await on(2);
    expect(after.find(({ rule }) => rule === 'waiver-expired')?.severity).toBe('warning');
    expect(after.find(({ rule }) => rule === 'head-clearance-too-low')?.severity).toBe('warning');
});
test('a house rule can be waived', async () => {
    const source = `${withStandardJob(`waive tall ${signed}`)}\nrule tall { require room.inside.height > 99"; because "house" }`;
    expect((await analyzeText(source)).findings.find(({ rule }) => rule === 'tall')?.severity).toBe('info');
});
test('a half-typed waiver silences nothing', async () => {
    const found = await findings(`waive head-clearance-too-low on upper because\n${lowRoom}`);
    expect(found.find(({ rule }) => rule === 'head-clearance-too-low')?.severity).toBe('warning');
});

test('what a rule set lets nobody waive stays, whatever the rule allows', async () => {
    const { jobs: [job] } = await analyzeText(withStandardJob(waive(`on upper ${signed}`)));
    if (!job) throw new Error('no job');
    const [clause] = usDwelling.clauses.filter(({ isNeverWaived, citation }) => isNeverWaived === true && citation.kind === 'standard');
    const finding: ReportedFinding = { rule: 'head-clearance-too-low', severity: 'warning', message: 'Too low.', at: job.job.block.head, subject: 'upper.head_clearance', ...(clause && { citation: clause.citation }) };
    const input = { job: job.job, findings: [finding], rules: allRules, houseRules: [], today: undefined, isComplete: true };
    expect(applyWaivers({ ...input, ruleSets: [usDwelling] }).map(({ rule, severity }) => [rule, severity])).toEqual([['head-clearance-too-low', 'warning'], ['waiver-not-allowed', 'error']]);
    expect(applyWaivers({ ...input, ruleSets: [] }).map(({ rule, severity }) => [rule, severity])).toEqual([['head-clearance-too-low', 'info']]);
});
