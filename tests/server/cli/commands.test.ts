import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { languageRules } from '../../../language/src/model/language-rules.js';
import { allRules } from '../../../language/src/rules/index.js';
import { settingsRules } from '../../../language/src/settings/settings-rules.js';
import { commands } from '../../../server/src/cli/run.js';
import { exitCodes } from '../../../server/src/cli/exit-codes.js';
import { version } from '../../../server/src/cli/version.js';
import { Folder, misspelt } from './command-line.js';

const answer = (words: readonly string[]) => new Folder().run(words);

describe('help', () => {
    test('of the program names every command and exit code', async () => {
        const { code, out, err } = await answer(['--help']);
        expect([code, err]).toEqual([0, '']);
        for (const { name, summary } of commands) expect(out).toMatch(new RegExp(`  ${name} .*${summary.replace(/[.]/g, '\\.')}`));
        for (const number of Object.values(exitCodes)) expect(out).toMatch(new RegExp(`^  ${number}  `, 'm'));
        expect(out).toContain('Nothing this program prints is an approval');
        expect(await answer(['-h'])).toMatchObject({ code: 0, out });
        expect(await answer(['help'])).toMatchObject({ code: 0, out });
    });
    test.each(commands.map(command => [command.name, command] as const))('of %s names every option', async (name, command) => {
        const { code, out } = await answer([name, '--help']);
        expect(code).toBe(0);
        for (const { name: option } of command.options) expect(out).toContain(`--${option}`);
        expect(out).toContain(command.summary);
        expect(await answer([name, '-h'])).toMatchObject({ out });
        expect(await answer(['help', name])).toMatchObject({ code: 0, out });
    });
    test('fits a narrow terminal', async () => {
        const { out } = await new Folder().run(['cutlist', '--help'], { isTTY: true, columns: 72 });
        const long = out.split('\n').filter(line => line.length > 72 && !line.startsWith('  hotroom '));
        expect(long).toEqual([]);
    });
    test('the version is the package\'s', async () => {
        const manifest = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8')) as { version: string };
        expect(version).toBe(manifest.version);
        expect(await answer(['--version'])).toEqual({ code: 0, out: `hotroom ${version}\n`, err: '' });
    });
});

describe('wrong words', () => {
    test.each([
        [[], 'A command is missing: check, cutlist, diff, draw, explain, export, fmt, review, schedule, serve. hotroom --help says more.'],
        [['chek'], 'There is no command chek. Is check meant?'],
        [['cut-list'], 'There is no command cut-list. Is cutlist meant?'],
        [['zebra'], 'There is no command zebra. There are check, cutlist, diff, draw, explain, export, fmt, review, schedule, serve.'],
        [['--format', 'json'], 'A command comes first: check, cutlist, diff, draw, explain, export, fmt, review, schedule, serve; then its options. --format is no command.'],
        [['help', 'explane'], 'There is no command explane. Is explain meant?'],
        [['check', '--formt', 'json'], 'hotroom check has no option --formt. Is --format meant?'],
        [['check', '--zebra'], 'hotroom check has no option --zebra.'],
        [['check', '-q'], 'hotroom check has no option -q.'],
        [['check', '--no-format'], 'hotroom check has no option --no-format.'],
        [['check', '--format'], '--format wants a value: --format FORMAT.'],
        [['check', '--format='], '--format wants a value: --format FORMAT.'],
        [['check', '--format', '--root', 'x'], '--format wants a value: --format FORMAT.'],
        [['check', '--format', 'jsn'], '--format takes text, json, sarif, not jsn. Is json meant?'],
        [['check', '--fail-on', 'fatal'], '--fail-on takes error, warning, info, hint, never, not fatal.'],
        [['check', '--help=yes'], '--help takes no value.'],
        [['fmt', '--check=no', 'a'], '--check takes no value.'],
        [['serve'], 'hotroom serve wants --stdio.'],
        [['serve', '--stdio', 'a.hotroom'], 'hotroom serve takes no files; the editor names them.'],
        [['\u001b[2J'], 'There is no command \\u{1b}[2J. There are check, cutlist, diff, draw, explain, export, fmt, review, schedule, serve.'],
    ])('%j', async (words, message) => {
        const { code, out, err } = await answer(words);
        expect([code, out]).toEqual([2, '']);
        expect(err).toMatch(/^hotroom: [^\n]*\n$/);
        expect(err.startsWith(`hotroom: ${message}`), err).toBe(true);
    });
    test('the last of an option given twice holds', async () => {
        const { code } = await new Folder({ 'a.hotroom': misspelt }).run(['check', 'a.hotroom', '--fail-on', 'error', '--fail-on', 'never']);
        expect(code).toBe(0);
    });
    test('what stands behind -- is a file', async () => {
        expect((await answer(['check', '--', '--format'])).err).toBe('hotroom: Cannot read --format: there is no such file.\n');
    });
});

describe('explain', () => {
    test('without a name lists the families with their counts and how to read on; the families together list every rule once', async () => {
        const { code, out } = await answer(['explain']);
        expect(code).toBe(0);
        const families = [...out.matchAll(/^ {2}(\S+) +(\d+) {2}\S/gm)].map(([, family, count]) => [family!, Number(count)] as const);
        expect(families.map(([family]) => family).sort()).toEqual([...new Set(allRules.map(({ family }) => family)), 'language', 'settings'].sort());
        for (const words of ['hotroom explain FAMILY', 'hotroom explain RULE']) expect(out).toContain(words);
        const listed: string[] = [];
        for (const [family, count] of families) {
            const rules = [...(await answer(['explain', family])).out.matchAll(/^(\S+) +(?:error|warning|info|hint) /gm)].map(match => match[1]!);
            expect(rules.length, family).toBe(count);
            listed.push(...rules);
        }
        expect(listed.sort()).toEqual([...allRules.map(({ id }) => id), ...Object.keys(languageRules), ...Object.keys(settingsRules)].sort());
    });
    test('a family has no rule of its own name', () => {
        const families = new Set<string>([...allRules.map(({ family }) => family), 'language']);
        expect(allRules.filter(({ id }) => families.has(id))).toEqual([]);
    });
    test('a mistake of the language', async () => {
        const { code, out } = await answer(['explain', 'unit-missing']);
        expect(code).toBe(0);
        for (const words of ['unit-missing (language)', 'A figure without its unit', 'cannot be waived', 'Wrong\n    top 37\n', 'Right\n    top 37"\n']) expect(out).toContain(words);
    });
    test('a rule with its sources, also by its family', async () => {
        const [rule] = allRules;
        const { code, out } = await answer(['explain', `${rule!.family}/${rule!.id}`]);
        expect(code).toBe(0);
        for (const words of [rule!.id, rule!.title, 'Sources', rule!.isWaivable ? 'can be waived' : 'can never be waived']) expect(out).toContain(words);
    });
    test.each([
        ['slat_gap', 'slat_gap in bench build: Least and greatest gap between slats.'], ['let', 'let aisle = room.inside.width - 2 * 20"'], ['round_up', 'round_up(value, step)'],
        ['heater_model', 'heater_model NAME ["TITLE"] [is OTHER] { … }'], ['when', 'leaves the block out'],
    ])('the word %s of the language', async (word, part) => {
        const { code, out } = await answer(['explain', word]);
        expect(code).toBe(0);
        expect(out.replaceAll(/\s+/g, ' ')).toContain(part);
    });
    test('a misspelt rule', async () => {
        expect(await answer(['explain', 'unit-mising'])).toEqual({ code: 2, out: '', err: 'hotroom: There is no rule and no word called unit-mising. Is unit-missing meant?\n' });
        expect((await answer(['explain', 'zzzzzzzz'])).err).toBe('hotroom: There is no rule and no word called zzzzzzzz. hotroom explain lists the families of rules.\n');
        expect((await answer(['explain', 'bnch'])).err).toBe('hotroom: There is no rule and no word called bnch. Is bench meant?\n');
        expect((await answer(['explain', 'head'])).err).toMatch(/^hotroom: There is no rule and no word called head\. Rules with that word: .*head-clearance-too-low/);
    });
});

describe('serve', () => {
    test('hands over to the server', async () => {
        let served = 0;
        expect(await new Folder().run(['serve', '--stdio'], { serve: async () => { served++; } })).toEqual({ code: 0, out: '', err: '' });
        expect(served).toBe(1);
    });
});
