import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { jobCounts } from '../../../language/src/analysis/kept-jobs.js';
import { readComparison, type ComparisonExport } from '../../../language/src/compare/comparison-json.js';
import { readModel } from '../../../language/src/exports/model-schema.js';
import { findRevision, readRevision, type Contents } from '../../../server/src/git/revision.js';
import { RevisionWorkspace, type OpenedFile } from '../../../server/src/git/revision-workspace.js';
import { runGit } from '../../../server/src/git/run-git.js';
import { exampleText } from '../../support/workspace.js';
import { birchPoint, Folder } from './command-line.js';
import { ScratchRepository } from './scratch-repository.js';

const keys = (comparison: ComparisonExport): string[] => comparison.jobs.flatMap(({ changes }) => changes.map(({ consequence, what, says, from, to }) => `${consequence}: ${what} ${to?.key ?? from!.key} ${says.join(', ')}`));
const compared = async (folder: Folder, ...words: readonly string[]): Promise<ComparisonExport> => {
    const { out, err } = await folder.run(['diff', '--format', 'json', ...words]);
    expect(err).toBe('');
    return readComparison(JSON.parse(out));
};
const taller = (text: string): string => text.replace('top       37"', 'top       38"');

describe('files and folders, without git', () => {
    test('two files that mean the same', async () => {
        const folder = birchPoint();
        folder.write('again.hotroom', `// Another layout.\n${folder.read('birch-point.hotroom').replace('84"', "7'").replaceAll('    ', '\t')}`);
        expect(await folder.run(['diff', 'birch-point.hotroom', 'again.hotroom'])).toEqual({ code: 0, err: '', out: 'birch-point.hotroom → again.hotroom\n\n1 job: 1 without a change of meaning.\n' });
    });
    test('two files that do not, as text', async () => {
        const folder = birchPoint();
        folder.write('taller.hotroom', taller(folder.read('birch-point.hotroom')));
        const { code, out, err } = await folder.run(['diff', 'birch-point.hotroom', 'taller.hotroom']);
        expect([code, err]).toEqual([1, '']);
        for (const words of ['birch_point in taller.hotroom', 'Cut again', 'part UPPER-LEG-1, bench rear leg: resized. length 33 1/4" → 34 1/4"', 'Drawing only', 'upper.top: changed. 37" → 38" (taller.hotroom:42)', 'upper.head_clearance, bench top to ceiling lining: changed. 43 1/4" → 42 1/4"', '1 job: 1 changed.']) expect(out.replaceAll(/\n {6}/g, ' ')).toContain(words);
    });
    test('as markdown, with every name escaped', async () => {
        const folder = birchPoint();
        folder.write('other.hotroom', folder.read('birch-point.hotroom').replace('"Birch Point bathhouse"', '"<b>|Birch"'));
        const { out } = await folder.run(['diff', 'birch-point.hotroom', 'other.hotroom', '--format', 'markdown']);
        expect(out).toContain('### Drawing only\n\n| What | How | Detail | Where |\n| --- | --- | --- | --- |\n| its title | changed | "Birch Point bathhouse" → "\\<b\\>\\|Birch" |');
    });
    test('lengths in the unit of the job', async () => {
        const folder = birchPoint();
        const metric = exampleText('birch-point.hotroom').replace('width     84"', 'width     2133.6 mm');
        folder.write('metric.hotroom', metric);
        folder.write('deeper.hotroom', taller(metric));
        const { out } = await folder.run(['diff', 'metric.hotroom', 'deeper.hotroom'], { columns: 200, isTTY: true });
        expect(out).toContain('upper.top: changed. 939.8 mm → 965.2 mm (deeper.hotroom:42)');
        expect(out).toContain('stock alder_2x4 38.1 mm x 88.9 mm: changed.');
    });
    test('facts of a block and of a catalogue entry that came or went stand in one row', async () => {
        const folder = birchPoint();
        folder.write('other.hotroom', folder.read('birch-point.hotroom').replace(/ {4}bench lower on back \{[^}]*\}\n/, '').replace('Tarn60', 'Tarn45'));
        const { out } = await folder.run(['diff', 'birch-point.hotroom', 'other.hotroom']);
        expect(out.match(/^ {4}- (lower|catalogue Tarn).*$/gm)).toEqual(['    - catalogue Tarn45: added. heater model "4.5 kW wall heater" (catalogue/heaters.hotroom:9)', '    - catalogue Tarn60: gone. heater model "6 kW wall heater" (catalogue/heaters.hotroom:42)', '    - lower: gone. bench on back (birch-point.hotroom:45)']);
    });
    test('folders: jobs that came, went and stayed, and what a catalogue does to each job', async () => {
        const job = exampleText('birch-point.hotroom');
        const named = (name: string): string => job.replace('job birch_point', `job ${name}`).replaceAll('"catalogue/', '"../catalogue/');
        const catalogue = { 'a/catalogue/skerry.hotroom': exampleText('catalogue/skerry.hotroom'), 'a/catalogue/heaters.hotroom': exampleText('catalogue/heaters.hotroom') };
        const folder = new Folder({
            ...catalogue, ...Object.fromEntries(Object.entries(catalogue).map(([path, text]) => [path.replace('a/', 'b/'), text.replace(/(stock alder_1x4[^}]*?lengths )/, '$116\', ')])),
            'a/jobs/one.hotroom': named('one'), 'a/jobs/two.hotroom': named('two'), 'a/jobs/gone.hotroom': named('old'), 'b/jobs/one.hotroom': named('one'), 'b/elsewhere/two.hotroom': named('two'), 'b/jobs/new.hotroom': named('fresh'),
        });
        const { jobs } = await compared(folder, 'a', 'b');
        expect(jobs.map(({ is, before, after }) => [is, before?.name, before?.file, after?.name, after?.file])).toEqual([
            ['changed', 'two', 'jobs/two.hotroom', 'two', 'elsewhere/two.hotroom'], ['added', undefined, undefined, 'fresh', 'jobs/new.hotroom'], ['changed', 'one', 'jobs/one.hotroom', 'one', 'jobs/one.hotroom'],
            ['gone', 'old', 'jobs/gone.hotroom', undefined, undefined],
        ]);
        const [first] = jobs;
        expect(first!.changes.map(({ what, to, consequence }) => `${consequence}: ${what} ${to!.key}`)).toEqual(['order: catalogue alder_1x4.lengths']);
    });
    test('two jobs of other names, one a file', async () => {
        const folder = birchPoint();
        folder.write('gull.hotroom', exampleText('gull-watch.hotroom'));
        const { jobs } = await compared(folder, 'birch-point.hotroom', 'gull.hotroom');
        expect(jobs.map(({ is, before, after }) => [is, before?.name, after?.name])).toEqual([['changed', 'birch_point', 'gull_watch']]);
    });
    test('settings count on both sides', async () => {
        const folder = birchPoint();
        folder.write('b/birch-point.hotroom', folder.read('birch-point.hotroom').replaceAll('"catalogue/', '"../catalogue/'));
        folder.write('b/hotroom.json', '{ "severities": { "feet-below-stones": "warning" } }');
        expect(keys(await compared(folder, 'birch-point.hotroom', 'b/birch-point.hotroom'))).toEqual(['approve: finding feet-below-stones on stove.stone_top changed']);
        expect(keys(await compared(folder, 'birch-point.hotroom', 'b/birch-point.hotroom', '--no-settings'))).toEqual([]);
    });
    test('exit codes', async () => {
        const folder = birchPoint();
        folder.write('taller.hotroom', taller(folder.read('birch-point.hotroom')));
        folder.write('wrong.hotroom', folder.read('birch-point.hotroom').replace('from      front 8"', 'from      front 1"'));
        const code = async (...words: readonly string[]): Promise<number> => (await folder.run(['diff', ...words])).code;
        expect(await code('birch-point.hotroom', 'birch-point.hotroom')).toBe(0);
        expect(await code('birch-point.hotroom', 'taller.hotroom')).toBe(1);
        expect(await code('birch-point.hotroom', 'taller.hotroom', '--fail-on', 'errors')).toBe(0);
        expect(await code('birch-point.hotroom', 'wrong.hotroom', '--fail-on', 'errors')).toBe(1);
        expect(await code('wrong.hotroom', 'birch-point.hotroom', '--fail-on', 'errors')).toBe(0);
        expect(await code('birch-point.hotroom', 'wrong.hotroom', '--fail-on', 'never')).toBe(0);
        expect(await code()).toBe(2);
        expect(await code('birch-point.hotroom', 'taller.hotroom', 'wrong.hotroom')).toBe(2);
        expect(await code('birch-point.hotroom', 'nothing.hotroom')).toBe(3);
    });
    test('where no repository is, a revision is refused with what can be done', async () => {
        const { code, err } = await birchPoint().run(['diff', 'main', 'birch-point.hotroom']);
        expect(code).toBe(3);
        expect(err).toContain('this is no git repository. Files and folders can be compared without one.');
    });
});

describe('git revisions', () => {
    test('two commits, one path alone, a part of a revision, and where two lines of work parted', async () => {
        const repository = new ScratchRepository();
        repository.git('checkout', '-q', '-b', 'work');
        repository.change('jobs/birch.hotroom', 'top       37"', 'top       38"');
        repository.commit('higher');
        repository.git('checkout', '-q', 'main');
        repository.change('jobs/birch.hotroom', 'revision  "B"', 'revision  "C"');
        repository.commit('revision');
        repository.git('checkout', '-q', 'work');
        const expected = keys(await compared(repository, 'main...work'));
        expect(expected).toContain('drawing: given upper.top changed');
        expect(expected).not.toContain('drawing: job revision changed');
        expect(keys(await compared(repository, 'main..HEAD', '--', 'jobs'))).toEqual(expect.arrayContaining([...expected, 'drawing: job revision changed']));
        expect(keys(await compared(repository, 'main:jobs', 'work:jobs/birch.hotroom'))).toContain('drawing: job revision changed');
        expect(keys(await compared(repository, 'HEAD~1', 'HEAD'))).toEqual(expected);
        repository.change('jobs/birch.hotroom', 'top       38"', 'top       39"');
        expect(keys(await compared(repository, 'jobs/birch.hotroom'))).toEqual(expect.arrayContaining(['drawing: given upper.top changed']));
        expect(keys(await compared(repository, 'HEAD', 'jobs'))).toContain('drawing: given upper.top changed');
        const { out } = await repository.run(['diff', 'HEAD', 'jobs']);
        expect(out).toContain('HEAD:jobs → jobs');
        expect(out).toContain('(jobs/birch.hotroom:42)');
    });
    test('what two revisions have in common is read and analysed once; a changed catalogue is not in common', async () => {
        const job = (name: string): string => exampleText('birch-point.hotroom').replace('job birch_point', `job ${name}`).replaceAll('"catalogue/', '"../catalogue/');
        const repository = new ScratchRepository({ 'jobs/one.hotroom': job('one'), 'jobs/two.hotroom': job('two') });
        repository.change('jobs/birch.hotroom', 'top       37"', 'top       38"');
        repository.commit('higher');
        const contents: Contents = new Map();
        const options = { today: { year: 2026, month: 11, day: 25 }, textOf: (bytes: Uint8Array) => new TextDecoder().decode(bytes), tooDeep: (name: string) => new Error(name) };
        const open = async (name: string, like?: RevisionWorkspace): Promise<{ readonly workspace: RevisionWorkspace; readonly opened: readonly OpenedFile[] }> => {
            const files = await readRevision(await findRevision(name, repository.path), contents);
            const workspace = new RevisionWorkspace(files, name, options);
            return { workspace, opened: await workspace.models([...files.keys()].filter(file => file.startsWith('jobs/')).sort(), like) };
        };
        const old = await open('HEAD~1');
        const read = contents.size;
        const now = await open('HEAD', old.workspace);
        expect(contents.size).toBe(read + 1);
        expect(now.opened.map(({ path, models }, i) => [path, models === old.opened[i]?.models])).toEqual([['jobs/birch.hotroom', false], ['jobs/one.hotroom', true], ['jobs/two.hotroom', true]]);
        expect(now.workspace.sources.textOf(now.opened[1]!.models[0]!.places.get('job one')!.uri)).toBe(job('one'));
        repository.change('catalogue/heaters.hotroom', 'power', 'note "changed below"\n        power');
        repository.commit('catalogue');
        const later = await open('HEAD', now.workspace);
        expect(later.opened.map(({ models }, i) => models === now.opened[i]?.models)).toEqual([false, false, false]);
        repository.write('hotroom.json', '{ "severities": { "feet-below-stones": "warning" } }');
        repository.commit('settings');
        expect((await open('HEAD', later.workspace)).opened.map(({ models }, i) => models === later.opened[i]?.models)).toEqual([false, false, false]);
    });
    test('a comparison does not analyse the files for the editor as well', async () => {
        const folder = birchPoint();
        folder.write('taller.hotroom', taller(folder.read('birch-point.hotroom')));
        const before = jobCounts.analysed;
        await folder.run(['diff', 'birch-point.hotroom', 'taller.hotroom']);
        expect(jobCounts.analysed).toBe(before);
    });
    test('the catalogue and the settings are those of each revision', async () => {
        const repository = new ScratchRepository();
        repository.change('catalogue/heaters.hotroom', 'power', 'note "changed below"\n        power');
        repository.write('hotroom.json', '{ "severities": { "feet-below-stones": "warning" } }');
        repository.commit('settings');
        const changes = keys(await compared(repository, 'HEAD~1', 'HEAD', 'jobs'));
        expect(changes).toContain('approve: finding feet-below-stones on stove.stone_top changed');
    });
    test('a revision that is not there, and words that are none', async () => {
        const repository = new ScratchRepository();
        const answer = async (...words: readonly string[]): Promise<string> => { const { code, err } = await repository.run(['diff', ...words]); return `${code} ${err}`; };
        expect(await answer('nowhere', 'HEAD')).toBe('3 hotroom: Cannot read nowhere: there is no such revision.\n');
        expect(await answer('nowhere..HEAD')).toBe('3 hotroom: Cannot read nowhere: there is no such revision.\n');
        expect(await answer('HEAD', 'HEAD:../x')).toMatch(/^2 /);
        expect(await answer('HEAD', 'HEAD', '../..')).toMatch(/^2 .*does not lie in the repository/);
        expect(await answer('HEAD', 'HEAD', 'nothing-here')).toMatch(/^2 hotroom: There is no job on either side/);
    });
    test.each(['--output=OWNED', '-oOWNED', '--upload-pack=touch OWNED', '--end-of-options', '$(touch OWNED)', '`touch OWNED`', 'HEAD;touch OWNED', '|touch OWNED', 'HEAD\ntouch OWNED', 'HEAD\u0000', '..', '...', ':/first', '@{u}', 'HEAD^{/(a+)+$}'])('a hostile name of a revision does nothing: %j', async name => {
        const repository = new ScratchRepository();
        for (const words of [['--', name, 'HEAD'], ['--', 'HEAD', name], ['--', `${name}..HEAD`], ['--', `HEAD..${name}`], ['--', `${name}:jobs`, 'HEAD'], ['--', 'HEAD', 'HEAD', name]]) {
            const { code, err } = await repository.run(['diff', ...words]);
            expect([0, 2, 3], `${JSON.stringify(words)} ${err}`).toContain(code);
            expect(err).not.toContain('a defect of the program');
        }
        expect(existsSync(repository.at('OWNED'))).toBe(false);
    });
    test('a repository that names programs to run gets none run, and nothing of it is written', async () => {
        const repository = new ScratchRepository({ '.gitattributes': '*.hotroom filter=own diff=own\n' });
        const touch = `touch ${repository.at('OWNED')}`;
        for (const key of ['core.fsmonitor', 'core.pager', 'core.editor', 'core.sshCommand', 'diff.external', 'diff.own.textconv', 'diff.own.command', 'filter.own.smudge', 'filter.own.clean', 'pager.ls-tree', 'pager.cat-file', 'pager.rev-parse', 'alias.ls-tree', 'core.alternateRefsCommand']) repository.git('config', key, key.startsWith('alias') ? `!${touch}` : touch);
        repository.git('config', 'core.hooksPath', repository.at('hooks'));
        for (const hook of ['post-checkout', 'post-index-change', 'reference-transaction', 'pre-auto-gc']) repository.write(`hooks/${hook}`, `#!/bin/sh\n${touch}\n`);
        const { code } = await repository.run(['diff', 'HEAD', 'jobs']);
        expect(code).toBe(0);
        expect((await repository.run(['diff', 'HEAD..HEAD'])).code).toBe(0);
        expect(existsSync(repository.at('OWNED'))).toBe(false);
        expect(existsSync(repository.at('.git/index.lock'))).toBe(false);
    });
    test('a watcher of files a repository names is not run, even by a command that would ask it', async () => {
        const repository = new ScratchRepository();
        repository.git('config', 'core.fsmonitor', `touch ${repository.at('OWNED')}`);
        await runGit(['status', '--porcelain'], repository.path);
        expect(existsSync(repository.at('OWNED'))).toBe(false);
        repository.git('status');
        expect(existsSync(repository.at('OWNED'))).toBe(true);
    });
    test('a file of a revision that is no text', async () => {
        const repository = new ScratchRepository();
        repository.write('jobs/raw.hotroom', new Uint8Array([0xff, 0xfe, 0x00, 0xc3]));
        repository.commit('raw');
        expect(await repository.run(['diff', 'HEAD~1..HEAD'])).toEqual({ code: 3, out: '', err: 'hotroom: Cannot read HEAD:jobs/raw.hotroom: it is not a text in UTF-8.\n' });
    });
    test('hostile names of files in a revision: links are not followed, and no name leads out', async () => {
        const repository = new ScratchRepository();
        repository.write('jobs/-rf $(touch OWNED) \u{1f600}.hotroom', repository.read('jobs/birch.hotroom').replace('job birch_point', 'job other'));
        repository.git('add', '-A');
        const blob = repository.git('rev-parse', ':jobs/birch.hotroom').trim();
        repository.git('update-index', '--add', '--cacheinfo', `120000,${blob},jobs/link.hotroom`);
        repository.git('update-index', '--add', '--cacheinfo', `100644,${blob},.hidden/x.hotroom`);
        repository.git('commit', '-q', '-m', 'names');
        const { jobs } = await compared(repository, 'HEAD~1..HEAD');
        expect(jobs.map(({ is, after }) => [is, after?.file])).toEqual([['added', 'jobs/-rf $(touch OWNED) \u{1f600}.hotroom'], ['same', 'jobs/birch.hotroom']]);
        expect(existsSync(repository.at('OWNED'))).toBe(false);
    });
});

describe('export', () => {
    test('a model that is read back, of one job', async () => {
        const folder = birchPoint();
        const { code, out, err } = await folder.run(['export', 'birch-point.hotroom', '--job', 'birch_point']);
        expect([code, err]).toEqual([0, '']);
        const read = readModel(out);
        expect(read.ok && read.model.jobs.map(({ job }) => job.name)).toEqual(['birch_point']);
        expect(await folder.run(['export', 'birch-point.hotroom', '--out', 'model.json'])).toEqual({ code: 0, out: '', err: '' });
        expect(folder.read('model.json')).toBe(out);
    });
    test('what it refuses', async () => {
        const folder = birchPoint();
        expect((await folder.run(['export'])).code).toBe(2);
        expect(await folder.run(['export', 'birch-point.hotroom', '--job', 'birch_pint'])).toEqual({ code: 2, out: '', err: 'hotroom: There is no job called birch_pint. Is birch_point meant?\n' });
        expect((await folder.run(['export', 'birch-point.hotroom', '--out', 'birch-point.hotroom'])).code).toBe(2);
    });
});
