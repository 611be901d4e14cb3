import { mkdirSync, symlinkSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { Folder } from './command-line.js';

const first = (text: string): string => text.split('\n')[0] ?? '';
const empty = 'catalogue c {\n}\n';

describe('a used file that is not there', () => {
    const files = { 'jobs/shop/tide.hotroom': empty, 'jobs/shop/stoves.hotroom': empty, 'jobs/node_modules/stove.hotroom': empty };
    test.each([
        ['the nearest on disk beside it, not one that is used', 'use "shop/tide.hotroom"\nuse "shop/stove.hotroom"\n', 'There is no file "shop/stove.hotroom". Is "shop/stoves.hotroom" meant?'],
        ['a misspelt folder', 'use "shoop/stoves.hotroom"\n', 'There is no file "shoop/stoves.hotroom". Is "shop/stoves.hotroom" meant?'],
        ['a forgotten folder', 'use "tide.hotroom"\n', 'There is no file "tide.hotroom". Is "shop/tide.hotroom" meant?'],
        ['nothing like it', 'use "shop/tide.hotroom"\nuse "shop/zzzzzz.hotroom"\n', 'There is no file "shop/zzzzzz.hotroom". The path is counted from the folder of this file. There is near it "shop/stoves.hotroom".'],
    ])('%s', async (_, text, message) => {
        const { out } = await new Folder({ ...files, 'jobs/a.hotroom': text }).run(['check', 'jobs/a.hotroom']);
        expect(first(out).replace(/^.*use-not-found: /, '')).toBe(message);
    });
    test('a file alone in its folder', async () => {
        expect(first((await new Folder({ 'a.hotroom': 'use "b.hotroom"\n' }).run(['check', 'a.hotroom'])).out))
            .toBe('a.hotroom:1:5: error use-not-found: There is no file "b.hotroom". The path is counted from the folder of this file, and no other job file lies near it.');
    });
    test('what lies outside the root, or behind a link, is not offered', async () => {
        const folder = new Folder({ 'shop/tide.hotroom': empty, 'jobs/a.hotroom': 'use "tid.hotroom"\n' });
        symlinkSync('../shop', folder.at('jobs/linked'));
        expect((await folder.run(['check', 'jobs/a.hotroom', '--root', 'jobs'])).out).toContain('no other job file lies near it');
        expect((await folder.run(['check', 'jobs/a.hotroom'])).out).not.toContain('linked/');
    });
});

describe('a used file outside the folder', () => {
    test('names the folder and the switch, in every format', async () => {
        const folder = new Folder({ 'shop/cat.hotroom': empty, 'jobs/a.hotroom': 'use "../shop/cat.hotroom"\n' });
        mkdirSync(folder.at('elsewhere'));
        const words = ['check', '../jobs/a.hotroom'];
        const message = `"../shop/cat.hotroom" lies outside the folder jobs; a file may use files inside that only. Open a folder that holds both, or copy the file in. That folder is ${folder.at('jobs')} here; --root DIR names another.`;
        expect(first((await folder.run(words, { cwd: folder.at('elsewhere') })).out)).toBe(`${folder.at('jobs')}/a.hotroom:1:5: error use-outside-workspace: ${message}`);
        const { findings } = JSON.parse((await folder.run([...words, '--format', 'json'], { cwd: folder.at('elsewhere') })).out) as { findings: { message: string }[] };
        expect(findings.map(finding => finding.message)).toEqual([message]);
        expect((await folder.run([...words, '--root', '..'], { cwd: folder.at('elsewhere') })).code).toBe(0);
    });
});
