import { mkdirSync, symlinkSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { reasonOf } from '../../../server/src/cli/files.js';
import { birchPoint, Folder, misspelt } from './command-line.js';

/** A file that jobs could use, of which there is nothing to say. */
const sound = 'catalogue made {\n}\n';
const first = (text: string): string => text.split('\n')[0] ?? '';

describe('exit codes', () => {
    test('0: nothing to report', async () => {
        expect(await birchPoint().run(['check', 'birch-point.hotroom', '--fail-on', 'error'])).toMatchObject({ code: 0, err: '' });
    });
    test('1: a finding as grave as --fail-on', async () => {
        const { code, out, err } = await new Folder({ 'a.hotroom': misspelt }).run(['check', 'a.hotroom']);
        expect([code, err]).toEqual([1, '']);
        expect(first(out)).toMatch(/^a\.hotroom:2:5: error unknown-word: ‘topp’/);
        expect(out).toContain('  2 |     topp 37"\n    |     ^^^^\n');
        expect(out).toMatch(/\n\d+ errors? in 1 file\.\n$/);
    });
    test('never fails when told so', async () => { expect((await new Folder({ 'a.hotroom': misspelt }).run(['check', 'a.hotroom', '--fail-on', 'never'])).code).toBe(0); });
    test('a warning fails only from warning on', async () => {
        const folder = new Folder({ 'a.hotroom': 'catalogue c {\n    screw s { length 2’6” }\n}\n' });
        expect((await folder.run(['check', 'a.hotroom'])).code).toBe(0);
        expect((await folder.run(['check', 'a.hotroom', '--fail-on', 'warning'])).code).toBe(1);
        expect((await folder.run(['check', 'a.hotroom', '--fail-on=hint'])).code).toBe(1);
    });
    test.each([
        [['check'], 'hotroom check wants files or folders, such as hotroom check birch-point.hotroom.'],
        [['check', 'a.txt'], 'a.txt is not a job file; those end in .hotroom.'],
        [['check', 'empty'], 'There is no .hotroom file in empty.'],
        [['check', ''], 'An empty name is not a file.'],
        [['check', 'a.hotroom', '--root', 'empty'], 'a.hotroom does not lie in the root empty.'],
        [['check', 'a.hotroom', '--root', 'a.txt'], '--root wants a folder; a.txt is none.'],
    ])('2: %j', async (words, message) => {
        const folder = new Folder({ 'a.txt': '', 'a.hotroom': '', 'empty/readme.md': '' });
        expect(await folder.run(words)).toEqual({ code: 2, out: '', err: `hotroom: ${message}\n` });
    });
    test.each([
        ['gone.hotroom', 'Cannot read gone.hotroom: there is no such file.'],
        ['a.hotroom/b.hotroom', 'Cannot read a.hotroom/b.hotroom: part of its path is not a folder.'],
        ['ring.hotroom', 'Cannot read ring.hotroom: its links lead round in a ring.'],
        ['latin.hotroom', 'Cannot read latin.hotroom: it is not a text in UTF-8.'],
        ['huge.hotroom', 'Cannot read huge.hotroom: it is larger than 8 MB, which no job file is.'],
        [`${'n'.repeat(300)}.hotroom`, `Cannot read ${'n'.repeat(300)}.hotroom: its name is too long.`],
    ])('3: %s', async (name, message) => {
        const folder = new Folder({ 'a.hotroom': '', 'latin.hotroom': Uint8Array.of(0x6a, 0xf6, 0x62), 'huge.hotroom': ' '.repeat(8_000_001) });
        symlinkSync('ring.hotroom', folder.at('ring.hotroom'));
        expect(await folder.run(['check', name])).toEqual({ code: 3, out: '', err: `hotroom: ${message}\n` });
    });
    test.each([
        ['birch-pint.hotroom', 'Is birch-point.hotroom meant?'], ['birch-point', 'Is birch-point.hotroom meant?'], ['jobs/a', 'Is jobs/a.hotroom meant?'], ['../zz.hotroom', ''], ['zzzzzz.hotroom', ''],
    ])('3: %s, with the file that is meant', async (name, meant) => {
        const folder = new Folder({ 'birch-point.hotroom': '', 'jobs/a.hotroom': '', 'birch-paint.txt': '' });
        expect((await folder.run(['check', name])).err).toBe(`hotroom: Cannot read ${name}: there is no such file.${meant === '' ? '' : ` ${meant}`}\n`);
    });
    // whoever runs the tests may be allowed everything, so these are told from the system's own error codes
    test.each([['EACCES', 'it may not be read or written'], ['EPERM', 'it may not be read or written'], ['EISDIR', 'it is a folder'], ['ENOSPC', 'the disk is full'], ['EROFS', 'the disk can only be read'], ['EIO', 'EIO: trouble']])('3: trouble %s in words', (code, words) => {
        expect(reasonOf(Object.assign(new Error(`${code}: trouble`), { code }))).toBe(words);
    });
    test('3: brackets nested past all reading', async () => {
        const folder = new Folder({ 'deep.hotroom': `job j {\n    depth ${'('.repeat(60_000)}1"\n}` });
        const { code, err } = await folder.run(['check', 'deep.hotroom', '--fail-on', 'never']);
        expect([0, 3]).toContain(code);
        expect(err).not.toContain('defect');
    });
    test('4: a defect is one line, with its stack only when asked for', async () => {
        const serve = (): Promise<void> => Promise.reject(new Error('the unforeseen'));
        const { code, out, err } = await new Folder().run(['serve', '--stdio'], { serve });
        expect([code, out]).toEqual([4, '']);
        expect(err).toMatch(/^hotroom: a defect of the program: the unforeseen\. Please report it with version [\d.]+, the command \(serve --stdio\) and the file; HOTROOM_DEBUG=1 adds where it happened\.\n$/);
        expect((await new Folder().run(['serve', '--stdio'], { serve, env: { HOTROOM_DEBUG: '1' } })).err).toMatch(/\n\s+at .*check\.test/);
    });
});

describe('files', () => {
    test.each([['with nothing in it', ''], ['with a remark only', '// to be written\n'], ['that only uses another', 'use "c.hotroom"\n']])('a file %s is told apart from a sound one, and does not fail', async (_, text) => {
        const { code, out } = await new Folder({ 'a.hotroom': text, 'c.hotroom': sound }).run(['check', '.', '--fail-on', 'warning']);
        expect([code, first(out).split(': ')[0], out.split('\n').at(-2)]).toEqual([0, 'a.hotroom:1:1', '1 info in 2 files.']);
    });
    test('a used file with nothing in it is told when it is checked itself', async () => {
        const folder = new Folder({ 'a.hotroom': `use "b.hotroom"\n${sound}`, 'b.hotroom': '' });
        expect((await folder.run(['check', 'a.hotroom'])).out).toBe('No findings in 1 file.\n');
        expect(first((await folder.run(['check', 'b.hotroom'])).out)).toMatch(/^b\.hotroom:1:1: info file-without-a-job: /);
    });
    test('a folder is searched in the order of names, past node_modules and dot folders', async () => {
        const folder = new Folder(Object.fromEntries(['jobs/b.hotroom', 'jobs/a/z.hotroom', 'jobs/.hidden/h.hotroom', 'jobs/node_modules/n.hotroom', 'jobs/notes.txt', 'jobs/c.hotroom'].map(name => [name, misspelt])));
        const { out } = await folder.run(['check', 'jobs', '--format', 'json']);
        expect((JSON.parse(out) as { files: string[] }).files).toEqual(['jobs/a/z.hotroom', 'jobs/b.hotroom', 'jobs/c.hotroom']);
    });
    test('links in a folder are not followed', async () => {
        const folder = new Folder({ 'jobs/a.hotroom': sound, 'other/b.hotroom': misspelt });
        symlinkSync('..', folder.at('jobs/up'));
        symlinkSync('../other/b.hotroom', folder.at('jobs/b.hotroom'));
        expect(await folder.run(['check', 'jobs'])).toMatchObject({ code: 0, out: 'No findings in 1 file.\n' });
    });
    test('a file named twice is checked once', async () => {
        expect((await new Folder({ 'jobs/a.hotroom': sound }).run(['check', 'jobs/a.hotroom', 'jobs', './jobs/../jobs/a.hotroom'])).out).toBe('No findings in 1 file.\n');
    });
    test('what a file uses is read from disk, through any number of files', async () => {
        const folder = birchPoint();
        folder.write('sub/job.hotroom', folder.read('birch-point.hotroom').replaceAll('"catalogue/', '"../catalogue/'));
        expect((await folder.run(['check', 'sub/job.hotroom', '--fail-on', 'error'])).code).toBe(0);
    });
    test('errors in the text of a used file are printed where they stand', async () => {
        const folder = new Folder({ 'a.hotroom': `use "b.hotroom"\n${sound}`, 'b.hotroom': 'catalogue c {\n    nonsense 3\n}\n' });
        const { code, out } = await folder.run(['check', 'a.hotroom']);
        expect([code, first(out).split(' ')[0]]).toEqual([1, 'b.hotroom:2:5:']);
    });
    test('files that use each other end', async () => {
        const folder = new Folder({ 'a.hotroom': 'use "b.hotroom"\n', 'b.hotroom': 'use "a.hotroom"\n' });
        expect((await folder.run(['check', 'a.hotroom'])).code).toBe(0);
    });
    test('a missing used file is a finding, not a failure', async () => {
        const { code, out } = await new Folder({ 'a.hotroom': 'use "gone.hotroom"\n' }).run(['check', 'a.hotroom']);
        expect([code, first(out)]).toEqual([1, expect.stringMatching(/^a\.hotroom:1:5: error use-not-found: /)]);
    });
    test('a folder with the name of a used file cannot be read', async () => {
        const folder = new Folder({ 'a.hotroom': 'use "b.hotroom"\n', 'b.hotroom/c.txt': '' });
        expect(await folder.run(['check', 'a.hotroom'])).toEqual({ code: 3, out: '', err: 'hotroom: Cannot read b.hotroom: it is not a file.\n' });
    });
});

describe('root', () => {
    const files = { 'shop/cat.hotroom': 'catalogue c {\n}\n', 'jobs/a.hotroom': 'use "../shop/cat.hotroom"\n' };
    test('a file in the working folder may use what lies in that folder', async () => { expect((await new Folder(files).run(['check', 'jobs/a.hotroom'])).code).toBe(0); });
    test('a file elsewhere stays in its own folder', async () => {
        const folder = new Folder(files);
        mkdirSync(folder.at('elsewhere'));
        const { code, out } = await folder.run(['check', '../jobs/a.hotroom'], { cwd: folder.at('elsewhere') });
        expect(code).toBe(1);
        expect(out).toContain('use-outside-workspace');
    });
    test('--root widens it', async () => {
        const folder = new Folder(files);
        mkdirSync(folder.at('elsewhere'));
        expect((await folder.run(['check', '../jobs/a.hotroom', '--root', '..'], { cwd: folder.at('elsewhere') })).code).toBe(0);
    });
    test('--root narrows it', async () => { expect((await new Folder(files).run(['check', 'jobs/a.hotroom', '--root', 'jobs'])).out).toContain('use-outside-workspace'); });
    test('a link cannot leave it', async () => {
        const folder = new Folder({ 'secret/s.hotroom': 'catalogue c {\n    nonsense 3\n}\n', 'work/a.hotroom': 'use "s.hotroom"\nuse "inside/s.hotroom"\n' });
        symlinkSync('../secret/s.hotroom', folder.at('work/s.hotroom'));
        symlinkSync('../secret', folder.at('work/inside'));
        const { out, err } = await folder.run(['check', 'a.hotroom'], { cwd: folder.at('work') });
        expect(out).not.toContain('nonsense');
        expect(err).toBe('hotroom: s.hotroom is a link that leads out of the root and was not read.\nhotroom: inside/s.hotroom is a link that leads out of the root and was not read.\n');
    });
    test('nor can a name that begins like it', async () => {
        const folder = new Folder({ 'work/a.hotroom': 'use "../workshop/b.hotroom"\n', 'workshop/b.hotroom': '' });
        expect((await folder.run(['check', 'work/a.hotroom', '--root', 'work'])).out).toContain('use-outside-workspace');
    });
});

describe('places', () => {
    test.each([
        ['CR LF', 'job j {\r\n    topp 37"\r\n}\r\n', '2:5'], ['tabs', 'job j {\n\t\ttopp 37"\n}\n', '2:3'], ['a byte order mark', `\ufeff${misspelt}`, '2:5'],
        ['emoji before it', 'job j {\n    number "🔥🔥"; topp 37"\n}\n', '2:20'], ['no line end', 'job j {\n    topp 37" }', '2:5'],
    ])('%s', async (_, text, place) => {
        expect((await new Folder({ 'a.hotroom': text }).run(['check', 'a.hotroom'])).out).toContain(`a.hotroom:${place}: error unknown-word`);
    });
    test.each(['sp ace.hotroom', 'ümläut 🔥.hotroom', 'a:1:2.hotroom', "quote'.hotroom", '-dash.hotroom', '#hash%41?.hotroom', '..dots.hotroom'])('a file called %s', async name => {
        const { code, out } = await new Folder({ [name]: misspelt }).run(['check', '--', name]);
        expect([code, first(out).startsWith(`${name}:2:5: `)]).toEqual([1, true]);
    });
    test('a name that would command the terminal is written out', async () => {
        const { out } = await new Folder({ 'a\u001b[31m\n.hotroom': misspelt }).run(['check', '.']);
        expect(first(out)).toMatch(/^a\\u\{1b\}\[31m\\u\{a\}\.hotroom:2:5: error/);
        const { err } = await new Folder().run(['check', 'b\u001b]0;x\u0007']);
        expect(err).not.toMatch(/[\u001b\u0007]/);
    });
});

describe('output', () => {
    const folder = (): Folder => new Folder({ 'a b.hotroom': misspelt });
    test('colours on a terminal only, and not against NO_COLOR', async () => {
        const isColoured = async (setting: Parameters<Folder['run']>[1]): Promise<boolean> => (await folder().run(['check', 'a b.hotroom'], setting)).out.includes('\u001b[');
        expect(await isColoured({})).toBe(false);
        expect(await isColoured({ isTTY: true })).toBe(true);
        expect(await isColoured({ isTTY: true, env: { NO_COLOR: '1' } })).toBe(false);
        expect(await isColoured({ isTTY: true, env: { NO_COLOR: '' } })).toBe(true);
        expect(await isColoured({ isTTY: true, env: { TERM: 'dumb' } })).toBe(false);
    });
    test('json names every file checked and counts from 1', async () => {
        const { code, out } = await folder().run(['check', '.', '--format', 'json'], { isTTY: true });
        expect(code).toBe(1);
        expect(JSON.parse(out)).toMatchObject({ format: 'hotroom-findings', version: 1, files: ['a b.hotroom'], findings: [{ rule: 'unknown-word', at: { file: 'a b.hotroom', start: { line: 2, column: 5, offset: 12 } } }] });
    });
    test('sarif holds the same finding', async () => {
        const { code, out } = await folder().run(['check', '.', '--format=sarif']);
        expect(code).toBe(1);
        expect(JSON.parse(out)).toMatchObject({ version: '2.1.0', runs: [{ results: [{ ruleId: 'unknown-word', level: 'error', locations: [{ physicalLocation: { artifactLocation: { uri: 'a%20b.hotroom' }, region: { startLine: 2, startColumn: 5 } } }] }] }] });
    });
    test('twice the same is the same', async () => {
        const one = birchPoint();
        for (const format of ['text', 'json', 'sarif']) expect(await one.run(['check', '.', '--format', format])).toEqual(await one.run(['check', '.', '--format', format]));
    });
});
