import { symlinkSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exampleText } from '../../support/workspace.js';
import { withStandardJob } from '../../support/standard-job.js';
import { Folder } from './command-line.js';

const lowRoom = withStandardJob('room { system Skerry; width 84"; depth 79 1/2"; height 84"; ceiling spans_front_to_back }\nbench upper on back { build Slatted; top 42"; depth 20" }');
const waive = (until: string): string => lowRoom.replace('bench upper', `waive head-clearance-too-low on upper because "low room, signed" by "design office" until ${until}\nbench upper`);
const catalogues = Object.fromEntries(['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom'].map(name => [name, exampleText(name)]));
const project = (files: Readonly<Record<string, string | object>>): Folder => new Folder({ ...catalogues, ...Object.fromEntries(Object.entries(files).map(([name, text]) => [name, typeof text === 'string' ? text : JSON.stringify(text)])) });
const severities = (out: string): string[] => [...out.matchAll(/: (error|warning|info|hint) head-clearance-too-low: /g)].map(match => match[1]!);
const inFolder = (text: string): string => text.replaceAll('use "', 'use "../');

describe('settings are found from the folder of a job up to the root', () => {
    test('and the nearest wins', async () => {
        const folder = project({
            'hotroom.json': { severities: { 'head-clearance-too-low': 'error' }, folders: { 'c/**': { severities: { 'head-clearance-too-low': 'hint' } } } },
            'a.hotroom': lowRoom, 'b/hotroom.json': { severities: { bench: 'info' } }, 'b/a.hotroom': inFolder(lowRoom), 'c/a.hotroom': inFolder(lowRoom),
        });
        expect(severities((await folder.run(['check', 'a.hotroom'])).out)).toEqual(['error']);
        expect(severities((await folder.run(['check', 'b'])).out)).toEqual(['info']);
        expect(severities((await folder.run(['check', 'c'])).out)).toEqual(['hint']);
        expect(severities((await folder.run(['check', 'a.hotroom', 'b', 'c'])).out)).toEqual(['error', 'info', 'hint']);
        // past the root nobody looks
        expect(severities((await folder.run(['check', 'a.hotroom', '--root', '../c', '--fail-on', 'never'], { cwd: folder.at('b') })).out)).toEqual([]);
        expect(severities((await folder.run(['check', folder.at('c/a.hotroom'), '--fail-on', 'never'], { cwd: folder.at('b') })).out)).toEqual([]);
    });
    test('unless others are named, or none', async () => {
        const folder = project({ 'hotroom.json': { severities: { 'head-clearance-too-low': 'error' } }, 'strict.json': { severities: { 'head-clearance-too-low': 'hint' } }, 'a.hotroom': lowRoom });
        expect(severities((await folder.run(['check', 'a.hotroom', '--settings', 'strict.json'])).out)).toEqual(['hint']);
        expect(severities((await folder.run(['check', 'a.hotroom', '--no-settings'])).out)).toEqual(['warning']);
    });
    test('a link out of the root is not followed', async () => {
        const folder = project({ 'jobs/a.hotroom': 'job j { rules iec }\n', 'outside.json': { units: 'mm' } });
        symlinkSync('../outside.json', folder.at('jobs/hotroom.json'));
        expect((await folder.run(['check', 'a.hotroom'], { cwd: folder.at('jobs') })).err).toBe('hotroom: hotroom.json is a link that leads out of the root and was not read.\n');
    });
});

describe('exit codes', () => {
    test.each<readonly [object, readonly string[], number]>([
        [{ severities: { 'head-clearance-too-low': 'error' } }, [], 1], [{ severities: { 'head-clearance-too-low': 'hint' } }, ['--fail-on', 'warning'], 0], [{ severities: { 'head-clearance-too-low': 'off' } }, ['--fail-on', 'hint'], 0], [{ units: 'mm' }, [], 0],
    ])('follow the chosen severities: %j %j', async (settings, words, code) => {
        // everything but this one rule is silenced, so that it alone decides
        const quiet = { severities: { site: 'off', shell: 'off', opening: 'off', bench: 'off', heater: 'off', electrical: 'off', air: 'off', ...(settings as { severities?: object }).severities } };
        const { code: given, out } = await project({ 'hotroom.json': { ...settings, ...quiet }, 'a.hotroom': lowRoom }).run(['check', 'a.hotroom', ...words]);
        expect(given, out).toBe(words.includes('hint') ? 1 : code);
    });
    test('1: a mistake in the settings is a finding at its place, and the rest of them holds', async () => {
        const folder = project({ 'hotroom.json': '{\n    "unit": "mm",\n    "severities": { "head-clearance-too-low": "info" }\n}\n', 'a.hotroom': lowRoom });
        const { code, out, err } = await folder.run(['check', 'a.hotroom']);
        expect([code, err]).toEqual([1, '']);
        expect(out).toContain('hotroom.json:2:5: error setting-unknown: There is no setting unit. Is units meant?\n  2 |     "unit": "mm",\n    |     ^^^^^^\n    fix: Write units\n');
        expect(severities(out)).toEqual(['info']);
        expect((await folder.run(['check', 'a.hotroom', '--fail-on', 'never'])).code).toBe(0);
        expect((await folder.run(['cutlist', 'a.hotroom', '--no-stock'])).code).toBe(1);
    });
    test('1: what can never be lowered is refused at its place', async () => {
        const { code, out } = await project({ 'hotroom.json': '{ "severities": { "clearance-beside-too-small": "off" } }', 'a.hotroom': lowRoom }).run(['check', 'a.hotroom']);
        expect(code).toBe(1);
        expect(out).toContain('hotroom.json:1:49: error setting-not-allowed: clearance-beside-too-small cannot be turned off and stays error.');
    });
    test('house rules of the files that are read are known by name', async () => {
        const rule = 'rule aisle_wide "Aisle" { severity warning; require room.inside.width >= 40\'; because "house standard" }\n';
        const folder = project({ 'hotroom.json': { severities: { aisle_wide: 'info', aisle_wid: 'off' } }, 'a.hotroom': rule + lowRoom });
        const { out } = await folder.run(['check', 'a.hotroom']);
        expect(out.match(/hotroom\.json:.*/g)?.filter(line => line.includes('setting-'))).toEqual(['hotroom.json:1:36: error setting-of-unknown-rule: There is no rule aisle_wid. Is aisle_wide meant?']);
        expect(out).toMatch(/: info aisle_wide: /);
    });
    test.each([
        [['--settings', 'gone.json'], 3, 'Cannot read gone.json: there is no such file.'], [['--settings', 'catalogue'], 2, '--settings wants a file; catalogue is none.'],
        [['--settings', 'a.hotroom', '--no-settings'], 2, '--settings and --no-settings do not go together.'], [['--settings', 'latin.json'], 3, 'Cannot read latin.json: it is not a text in UTF-8.'],
        [['--today', '2027-02-29'], 2, '--today wants a day of the calendar such as 2027-01-31, not 2027-02-29.'], [['--today', 'tomorrow'], 2, '--today wants a day of the calendar such as 2027-01-31, not tomorrow.'],
    ])('%j: %i', async (words, code, message) => {
        const folder = project({ 'a.hotroom': lowRoom });
        folder.write('latin.json', Uint8Array.of(0x7b, 0xf6, 0x7d));
        expect(await folder.run(['check', 'a.hotroom', ...words])).toEqual({ code, out: '', err: `hotroom: ${message}\n` });
    });
});

describe('the day', () => {
    const expired = (out: string): boolean => out.includes('waiver-expired');
    test('is the one here, the last day of a waiver included', async () => {
        const folder = project({ 'a.hotroom': waive('2027-03-01') });
        for (const [now, isOver] of [[new Date(2027, 2, 1, 23, 59, 59), false], [new Date(2027, 2, 2, 0, 0, 1), true]] as const) expect(expired((await folder.run(['check', 'a.hotroom'], { now: () => now })).out), String(now)).toBe(isOver);
    });
    test('or the one named', async () => {
        const folder = project({ 'a.hotroom': waive('2027-03-01') });
        expect(expired((await folder.run(['check', 'a.hotroom', '--today', '2027-03-02'])).out)).toBe(true);
        expect(expired((await folder.run(['check', 'a.hotroom', '--today=2027-03-01'], { now: () => new Date(2030, 0, 1) })).out)).toBe(false);
        expect((await folder.run(['cutlist', 'a.hotroom', '--no-stock', '--today', '2027-03-01'])).out).toContain('Accepted by design office until 2027-03-01: head-clearance-too-low (low room, signed).');
    });
});

describe('reports', () => {
    const folder = (): Folder => project({ 'hotroom.json': { severities: { air: 'error' } }, 'a.hotroom': waive('2027-03-01') });
    test('as text say what is accepted, by whom and until when', async () => {
        const { out } = await folder().run(['check', 'a.hotroom', '--fail-on', 'never']);
        expect(out).toMatch(/\nWaivers in force\n {2}head-clearance-too-low, 1 finding: accepted by design office until 2027-03-01: low room, signed\s+\(a\.hotroom:\d+:\d+\)\n/);
    });
    test('say what the settings changed, and count what they turned off', async () => {
        const own = project({ 'hotroom.json': { severities: { 'head-clearance-too-low': 'off' } }, 'a.hotroom': lowRoom });
        expect((await own.run(['check', 'a.hotroom'])).out).toContain('\nSeverities changed by settings\n  head-clearance-too-low, 1 finding: off, by itself warning (hotroom.json:1:41)\n');
        const json = JSON.parse((await own.run(['check', 'a.hotroom', '--format', 'json'])).out) as { settings: string[]; waivers: unknown[]; changedSeverities: unknown[] };
        expect([json.settings, json.waivers]).toEqual([['hotroom.json'], []]);
        expect(json.changedSeverities).toMatchObject([{ rule: 'head-clearance-too-low', from: 'warning', to: 'off', findings: 1, at: { file: 'hotroom.json', start: { line: 1, column: 41 } } }]);
        const sarif = JSON.parse((await own.run(['check', 'a.hotroom', '--format', 'sarif'])).out) as { runs: { results: { ruleId: string; suppressions?: unknown[] }[] }[] };
        expect(sarif.runs[0]?.results.filter(({ suppressions }) => suppressions)).toMatchObject([{ ruleId: 'head-clearance-too-low', level: 'warning', properties: { usualSeverity: 'warning', chosenSeverity: 'off' }, suppressions: [{ kind: 'external', status: 'accepted' }] }]);
    });
    test('as JSON list waivers, as SARIF suppressions in the source', async () => {
        const json = JSON.parse((await folder().run(['check', 'a.hotroom', '--format', 'json', '--fail-on', 'never'])).out) as { waivers: unknown[] };
        expect(json.waivers).toMatchObject([{ rule: 'head-clearance-too-low', because: 'low room, signed', by: 'design office', until: '2027-03-01', findings: 1 }]);
        const sarif = JSON.parse((await folder().run(['check', 'a.hotroom', '--format', 'sarif', '--fail-on', 'never'])).out) as { runs: { results: { ruleId: string; suppressions?: { kind: string }[] }[] }[] };
        expect(sarif.runs[0]?.results.flatMap(({ ruleId, suppressions = [] }) => suppressions.map(({ kind }) => [ruleId, kind]))).toContainEqual(['head-clearance-too-low', 'inSource']);
    });
});

test('units, rounding and rule sets of the project are in the cut list', async () => {
    const folder = project({ 'hotroom.json': { units: 'mm', rules: ['us_dwelling'] }, 'a.hotroom': lowRoom.replace(/^ *rules .*$/m, '') });
    const { out } = await folder.run(['cutlist', 'a.hotroom', '--no-stock']);
    expect(out).toMatch(/\d mm/);
    expect(out).not.toMatch(/^.*\bB\d.* \d+"/m);
    expect(out.replaceAll(/\s+/g, ' ')).toContain('named by the settings of the project, as the job names none.');
    expect((JSON.parse((await folder.run(['cutlist', 'a.hotroom', '--no-stock', '--format', 'json'])).out) as { jobs: unknown[] }).jobs).toMatchObject([{ unit: 'mm', ruleSets: [{ id: 'us_dwelling' }], ruleSetsNamedBy: 'settings' }]);
    folder.write('hotroom.json', '{ "rounding": "drawing" }');
    const drawn = (await folder.run(['cutlist', 'a.hotroom', '--no-stock'])).out;
    expect(drawn).toContain('rounded to 1/16"');
    expect(drawn).not.toMatch(/\d\/32"/);
});
