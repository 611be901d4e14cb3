import { describe, expect, test } from 'vitest';
import type { Analysis } from '../../language/src/analyze.js';
import { documentNotes } from '../../language/src/renderings/document-notes.js';
import { ruleById } from '../../language/src/rules/index.js';
import { readSettings } from '../../language/src/settings/read-settings.js';
import { resolveSettings } from '../../language/src/settings/resolve.js';
import type { ProjectSettings } from '../../language/src/settings/settings.js';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText, TestWorkspace } from '../support/workspace.js';

const uri = 'memory:/jobs/hotroom.json';
const settingsOf = (settings: object): ProjectSettings | undefined => resolveSettings([{ path: 'job.hotroom', file: readSettings(JSON.stringify(settings), uri) }]);
const under = (settings: object, text: string): Promise<Analysis> => { const own = settingsOf(settings); return analyzeText(text, own ? { settings: own } : {}); };
const severities = ({ findings }: Analysis, rule: string): unknown[] => findings.filter(one => one.rule === rule).map(({ severity }) => severity);

const lowRoom = withStandardJob('room { system Skerry; width 84"; depth 79 1/2"; height 84"; ceiling spans_front_to_back }\nbench upper on back { build Slatted; top 42"; depth 20" }');
const waivedRoom = lowRoom.replace('bench upper', 'waive head-clearance-too-low on upper because "low room, signed" by "design office" until 2027-03-01\nbench upper');
const nearHeater = withStandardJob('heater stove on right { model Tarn60; from front 1"; guard yes; backing 1 1/2" }');

describe('severities', () => {
    test.each([
        [{}, ['warning'], 0], [{ 'head-clearance-too-low': 'error' }, ['error'], 0], [{ 'head-clearance-too-low': 'hint' }, ['hint'], 0], [{ 'head-clearance-too-low': 'off' }, [], 1], [{ bench: 'info' }, ['info'], 0],
        [{ bench: 'info', 'head-clearance-too-low': 'error' }, ['error'], 0], [{ air: 'error' }, ['warning'], 0],
    ])('%j', async (chosen, expected, leftOut) => {
        const analysis = await under({ severities: chosen }, lowRoom);
        expect(severities(analysis, 'head-clearance-too-low')).toEqual(expected);
        expect(analysis.leftOut.map(({ rule, severity, changed }) => [rule, severity, changed?.to])).toEqual(Array(leftOut).fill(['head-clearance-too-low', 'warning', 'off']));
        expect(analysis.findings.filter(({ changed }) => changed).every(({ rule }) => 'bench' in chosen || rule in chosen)).toBe(true);
    });
    test('a changed finding says what it was and who changed it', async () => {
        const finding = (await under({ severities: { 'head-clearance-too-low': 'error' } }, lowRoom)).findings.find(({ rule }) => rule === 'head-clearance-too-low');
        expect(finding?.changed).toEqual({ from: 'warning', to: 'error', at: { uri, start: 40, end: 47 } });
        expect(finding?.related?.at(-1)).toEqual({ at: { uri, start: 40, end: 47 }, message: 'The settings make it error; by itself it is warning.' });
    });
    test('a nearer family goes before a farther rule', async () => {
        const analysis = await under({ severities: { 'head-clearance-too-low': 'error' }, folders: { 'job.hotroom': { severities: { bench: 'hint' } } } }, lowRoom);
        expect(severities(analysis, 'head-clearance-too-low')).toEqual(['hint']);
    });
    test('an accepted finding stays what its waiver made it, and its waiver is needed even where it is off', async () => {
        expect(severities(await under({ severities: { 'head-clearance-too-low': 'error' } }, waivedRoom), 'head-clearance-too-low')).toEqual(['info']);
        const off = await under({ severities: { 'head-clearance-too-low': 'off' } }, waivedRoom);
        expect([severities(off, 'head-clearance-too-low'), severities(off, 'waiver-not-needed')]).toEqual([[], []]);
    });
    test('what can never be waived stays, whatever the family is told', async () => {
        const plain = (await under({}, nearHeater)).findings.filter(({ rule }) => rule === 'clearance-beside-too-small');
        expect(plain.length).toBeGreaterThan(0);
        const found = (await under({ severities: { heater: 'off' } }, nearHeater)).findings.filter(({ rule }) => rule === 'clearance-beside-too-small');
        expect(found.map(({ severity }) => severity)).toEqual(plain.map(({ severity }) => severity));
        expect(found[0]?.related?.at(-1)?.message).toBe('The settings would have it off; it can never be lowered.');
    });
    test('a single finding that may not be waived stays though others of its rule may be lowered', async () => {
        const { applySeverities } = await import('../../language/src/settings/apply-severities.js');
        const finding = { rule: 'head-clearance-too-low', severity: 'warning', message: 'm', at: { uri: 'a', start: 0, end: 1 } } as const;
        const settings = settingsOf({ severities: { 'head-clearance-too-low': 'off' } })!;
        expect(applySeverities([finding], settings).findings).toEqual([]);
        expect(applySeverities([{ ...finding, isWaivable: false }], settings).findings).toHaveLength(1);
    });
    test('mistakes of the text stay errors, its warnings follow', async () => {
        const text = 'job a {\n    rules iec\n    site { widht 96\u201d }\n}\n';
        const analysis = await under({ severities: { language: 'off' } }, text);
        expect([severities(analysis, 'unknown-word'), severities(analysis, 'curly-quote')]).toEqual([['error'], []]);
    });
    test('a house rule goes by its name', async () => {
        const text = `rule aisle_wide "Aisle" { severity warning; require room.inside.width >= 40'; because "house standard" }\n${lowRoom}`;
        expect(severities(await under({}, text), 'aisle_wide')).toEqual(['warning']);
        expect(severities(await under({ severities: { aisle_wide: 'error' } }, text), 'aisle_wide')).toEqual(['error']);
    });
    test('two settings are never mixed up, nor kept past a change', async () => {
        const workspace = new TestWorkspace();
        workspace.addCatalogues();
        const document = workspace.add('job.hotroom', lowRoom);
        await workspace.build();
        const of = (chosen: string): unknown[] => severities(workspace.analyze(document, { onDefect: 'report', settings: settingsOf({ severities: { 'head-clearance-too-low': chosen }, units: chosen === 'info' ? 'mm' : 'in' })! }), 'head-clearance-too-low');
        expect(['error', 'info', 'off', 'error'].map(of)).toEqual([['error'], ['info'], [], ['error']]);
        expect(severities(workspace.analyze(document, { onDefect: 'report' }), 'head-clearance-too-low')).toEqual(['warning']);
        expect(workspace.analyze(document, { onDefect: 'report', settings: settingsOf({ units: 'mm' })! }).jobs[0]?.job.unit).toBe('mm');
        expect(workspace.analyze(document, { onDefect: 'report' }).jobs[0]?.job.unit).toBe('in');
    });
});

describe('rule sets of a job that names none', () => {
    const without = lowRoom.replace(/^ *rules .*$/m, '');
    const missing = (analysis: Analysis): boolean => analysis.findings.some(({ rule, message }) => rule === 'fact-missing' && message.includes('rules'));
    test('the sample job names none', () => { expect(without).not.toBe(lowRoom); });
    test('come from the settings, and nothing is missing', async () => {
        expect(missing(await under({}, without))).toBe(true);
        const analysis = await under({ rules: ['us_dwelling'] }, without);
        expect(missing(analysis)).toBe(false);
        expect(analysis.jobs[0]?.ruleSets.map(({ id }) => id)).toEqual(['us_dwelling']);
        expect(analysis.jobs[0]?.job.block.values.rules?.span).toEqual(analysis.jobs[0]?.job.block.head);
    });
    test('give the findings the job would have with the same line', async () => {
        const own = await under({}, lowRoom.replace(/^( *)rules .*$/m, '$1rules us_dwelling'));
        const ours = await under({ rules: ['us_dwelling'] }, lowRoom.replace(/^( *)rules .*$/m, ''));
        const texts = ({ findings }: Analysis): string[] => findings.map(({ rule, severity, message }) => `${severity} ${rule}: ${message}`);
        expect(texts(ours)).toEqual(texts(own));
    });
    test('are named in findings and documents, with where they come from', async () => {
        const analysis = await under({ rules: ['us_dwelling'] }, withStandardJob(ruleById('limiter-missing')!.bad).replace(/^ *rules .*$/m, ''));
        const cited = analysis.findings.filter(({ citation }) => citation?.kind === 'standard');
        expect(cited.length).toBeGreaterThan(0);
        for (const { related } of cited) expect(related).toContainEqual({ at: { uri, start: 9, end: 24 }, message: 'The job names no rule set; the settings name us_dwelling for it.' });
        expect(documentNotes(analysis.jobs[0]!).join('\n')).toMatch(/Rules used: .*\(.*\); named by the settings of the project, as the job names none\./);
        expect(documentNotes((await under({ rules: ['us_dwelling'] }, lowRoom)).jobs[0]!).join('\n')).not.toContain('named by the settings');
    });
    test('leave a job alone that names its own, or whose line cannot be read', async () => {
        expect((await under({ rules: ['iec'] }, lowRoom)).jobs[0]?.ruleSets.map(({ id }) => id)).not.toContain('iec');
        for (const line of ['rules us_dweling', 'rulez us_dwelling']) {
            const analysis = await under({ rules: ['iec'] }, lowRoom.replace(/^( *)rules .*$/m, `$1${line}`));
            expect(analysis.jobs[0]?.job.block.values.rules, line).toBeUndefined();
        }
    });
});

test('units: messages and facts answer in the unit of the project', async () => {
    const message = ({ findings }: Analysis): string | undefined => findings.find(({ rule }) => rule === 'head-clearance-too-low')?.message;
    expect(message(await under({}, lowRoom))).toContain('"');
    const metric = await under({ units: 'mm' }, lowRoom);
    expect(message(metric)).toMatch(/\d mm/);
    expect(metric.jobs[0]?.job.unit).toBe('mm');
});
test('rounding and units of the project are in the documents', async () => {
    const analysis = await under({ rounding: 'drawing', units: 'in' }, lowRoom);
    expect(documentNotes(analysis.jobs[0]!).join('\n')).toContain('Lengths are rounded to 1/16"');
});
