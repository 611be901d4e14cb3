import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { ScratchRepository } from '../server/cli/scratch-repository.js';

const root = new URL('../../', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, root), 'utf8');

/** The commands of a script as a shell would hand them over: words, the file output goes to, and the one variable the scripts have. */
const commandsOf = (script: string): readonly { readonly words: readonly string[]; readonly to?: string }[] => script.split('\n').filter(line => line.startsWith('hotroom ')).map(line => {
    const [call = '', to] = line.split(' > ');
    return { words: call.split(' ').slice(1).map(word => word.replaceAll('"', '').replace('$base', 'main')), ...(to !== undefined && { to }) };
});
async function runScript(script: string, folder: ScratchRepository): Promise<{ readonly codes: readonly number[]; readonly files: ReadonlyMap<string, string> }> {
    const [codes, files] = [[] as number[], new Map<string, string>()];
    for (const { words, to } of commandsOf(script)) {
        const { code, out, err } = await folder.run(words);
        expect(err).not.toMatch(/has no option|There is no command|wants/);
        codes.push(code);
        if (to !== undefined) files.set(to, out);
    }
    return { codes, files };
}

describe('scripts to copy', () => {
    test('a push: a sound folder passes, and the findings are SARIF', async () => {
        const { codes, files } = await runScript(read('examples/ci/push.sh'), new ScratchRepository());
        expect(codes).toEqual([0, 0, 0]);
        expect(JSON.parse(files.get('findings.sarif')!)).toMatchObject({ version: '2.1.0' });
    });
    test('a push: an untidy file and an error each fail, and the SARIF is written all the same', async () => {
        const folder = new ScratchRepository();
        folder.change('jobs/birch.hotroom', '    from      front 8"', '  from  front 1"');
        const { codes, files } = await runScript(read('examples/ci/push.sh'), folder);
        expect(codes).toEqual([1, 0, 1]);
        expect(files.get('findings.sarif')).toContain('clearance-beside-too-small');
    });
    test('a pull request: the changes, a page with what is new, and a failure for a new error', async () => {
        const folder = new ScratchRepository();
        folder.git('checkout', '-q', '-b', 'nearer');
        folder.change('jobs/birch.hotroom', 'front 8"', 'front 1"');
        folder.commit('nearer');
        const before = folder.git('status', '--porcelain', '--ignored');
        const { codes, files } = await runScript(read('examples/ci/pull-request.sh'), folder);
        expect(codes).toEqual([0, 0, 1]);
        expect(files.get('changes.md')).toContain('stove.from.distance | moved | 8" → 1"');
        expect(folder.read('review.html')).toMatch(/clearance-beside-too-small<\/code> <b class="tag new">new/);
        expect([before, folder.git('status', '--porcelain', '--ignored')]).toEqual(['', '?? review.html\n']);
        expect(folder.git('log', '--format=%s')).toBe('nearer\nfirst\n');
    });
});

test('the hook definitions name commands that exist, take files, and fail as a hook should', async () => {
    const hooks = parse(read('.pre-commit-hooks.yaml')) as { readonly id: string; readonly entry: string; readonly files: string; readonly language: string }[];
    expect(hooks.map(({ id, language }) => [id, language])).toEqual([['hotroom-check', 'system'], ['hotroom-fmt', 'system']]);
    const folder = new ScratchRepository();
    const codes = async (): Promise<readonly number[]> => {
        const found: number[] = [];
        for (const { entry } of hooks) found.push((await folder.run([...entry.split(' ').slice(1), 'jobs/birch.hotroom'])).code);
        return found;
    };
    for (const { files } of hooks) expect(['jobs/birch.hotroom', 'hotroom.json', 'a.hotroom.txt'].filter(name => new RegExp(files).test(name))).toEqual(['jobs/birch.hotroom']);
    expect(await codes()).toEqual([0, 0]);
    folder.change('jobs/birch.hotroom', '    from      front 8"', '  from  front 1"');
    expect(await codes()).toEqual([1, 1]);
});

test('the headings of a line diff name the block, with the pattern of the README', () => {
    const pattern = /diff\.hotroom\.xfuncname '([^']+)'/.exec(read('README.md'))![1]!;
    const folder = new ScratchRepository({ '.gitattributes': '*.hotroom text eol=lf diff=hotroom\n' });
    folder.git('config', 'diff.hotroom.xfuncname', pattern);
    folder.change('jobs/birch.hotroom', 'top       37"', 'top       38"');
    expect(folder.git('diff', '-U0')).toMatch(/^@@ -\d+ \+\d+ @@ bench upper on back/m);
});
