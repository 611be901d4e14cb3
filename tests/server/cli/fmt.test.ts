import { chmodSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { expect, test } from 'vitest';
import { Folder, birchPoint } from './command-line.js';

const untidy = 'job j {\n  number   "1"   \n\n\n\n}';

test('brings a file into shape, names it, and finds nothing more to do', async () => {
    const folder = new Folder({ 'a.hotroom': untidy, 'b.hotroom': '' });
    expect(await folder.run(['fmt', '.'])).toEqual({ code: 0, out: 'a.hotroom\n1 of 2 files changed.\n', err: '' });
    const tidy = folder.read('a.hotroom');
    expect(tidy).not.toBe(untidy);
    expect(tidy.replaceAll(/\s/g, '')).toBe(untidy.replaceAll(/\s/g, ''));
    expect(await folder.run(['fmt', 'a.hotroom', '--check'])).toEqual({ code: 0, out: '1 file, nothing to change.\n', err: '' });
    expect(readdirSync(folder.path)).toEqual(['a.hotroom', 'b.hotroom']);
});
test('--check changes nothing and fails when there is something to change', async () => {
    const folder = new Folder({ 'a.hotroom': untidy });
    expect(await folder.run(['fmt', '--check', 'a.hotroom'])).toEqual({ code: 1, out: 'a.hotroom\n1 of 1 file would change.\n', err: '' });
    expect(folder.read('a.hotroom')).toBe(untidy);
});
test('kinds of line end, a byte order mark and permissions stay', async () => {
    const folder = new Folder({ 'a.hotroom': `\ufeff${untidy.replaceAll('\n', '\r\n')}` });
    chmodSync(folder.at('a.hotroom'), 0o640);
    expect((await folder.run(['fmt', 'a.hotroom'])).code).toBe(0);
    const bytes = readFileSync(folder.at('a.hotroom'));
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(folder.read('a.hotroom')).not.toMatch(/[^\r]\n/);
    if (process.platform !== 'win32') expect(statSync(folder.at('a.hotroom')).mode & 0o777).toBe(0o640);
});
test('one file that cannot be read leaves all as they were', async () => {
    const folder = new Folder({ 'a.hotroom': untidy, 'b.hotroom': Uint8Array.of(0xff, 0xfe) });
    expect((await folder.run(['fmt', '.'])).code).toBe(3);
    expect(folder.read('a.hotroom')).toBe(untidy);
});
test.each([
    ['a block that is not closed', 'job j {\n  number   "1"\n'], ['a brace too many', 'job j {\n  number   "1"\n}\n}\n'], ['a text without an end', 'job j {\n  number   "1\n}\n'],
])('a file with %s is left alone, named and told apart from a tidy one', async (_, text) => {
    for (const words of [['fmt', '.'], ['fmt', '--check', '.']]) {
        const folder = new Folder({ 'a.hotroom': text, 'b.hotroom': 'job j {\n    number    "1"\n}\n' });
        const { code, out, err } = await folder.run(words);
        expect([code, out]).toEqual([1, '2 files, nothing to change.\n']);
        expect(err).toMatch(/^hotroom: a\.hotroom:\d+:\d+: .* The file is left as it is\.\n$/);
        expect(folder.read('a.hotroom')).toBe(text);
    }
});
test('no files', async () => { expect((await new Folder().run(['fmt'])).err).toBe('hotroom: hotroom fmt wants files or folders, such as hotroom fmt birch-point.hotroom.\n'); });
test('the examples are in shape', async () => {
    expect(await birchPoint().run(['fmt', '--check', '.'])).toEqual({ code: 0, out: '3 files, nothing to change.\n', err: '' });
});
