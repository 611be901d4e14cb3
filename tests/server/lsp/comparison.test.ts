import { execFileSync } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { Cancellation } from 'langium';
import { describe, expect, test } from 'vitest';
import { jobListSchema, tablesDocumentSchema, type TablesDocument } from '../../../client/src/tables-document.js';
import { readRevisionAddress, revisionAddress } from '../../../server/src/git/revision-address.js';
import type { Commands } from '../../../server/src/lsp/commands.js';
import { exampleText } from '../../support/workspace.js';
import { ScratchRepository } from '../cli/scratch-repository.js';
import { Folder } from '../cli/command-line.js';
import { ServerWorkspace } from './server-workspace.js';

const standard = exampleText('birch-point.hotroom');
const higher = standard.replace('top       37"', 'top       38"');
const now = (): Date => new Date(2026, 10, 25, 12);

class Opened {
    readonly server: ServerWorkspace;
    constructor(folder = 'memory:/jobs') { this.server = new ServerWorkspace({ now }, folder); }
    get commands(): Commands { return this.server.shared.lsp.ExecuteCommandHandler as Commands; }
    async add(files: Readonly<Record<string, string>>): Promise<this> {
        for (const name of ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']) await this.server.add(name, exampleText(name));
        for (const [name, text] of Object.entries(files)) await this.server.add(name, text);
        await this.server.shared.workspace.WorkspaceManager.initializeWorkspace([]);
        await this.server.build();
        return this;
    }
    ask(name: string, argument: unknown, token?: Cancellation.CancellationToken): Promise<unknown> { return this.commands.executeCommand(`hotroom.server.${name}`, [argument], token); }
    async compare(file: string, wanted: object, job?: string): Promise<TablesDocument> {
        return tablesDocumentSchema.parse(await this.ask('compare', { uri: this.server.uri(file), ...(job !== undefined && { job }), with: wanted }));
    }
    text(file: string): string { return this.server.shared.workspace.LangiumDocuments.all.find(({ uri }) => uri.toString() === this.server.uri(file))!.textDocument.getText(); }
}
const lines = ({ tables }: TablesDocument): string[] => tables.flatMap(({ caption, rows }) => rows.map(({ cells }) => `${caption}: ${cells.map(({ text }) => text).join(' | ')}`));
const rowNamed = ({ tables }: TablesDocument, name: string): TablesDocument['tables'][number]['rows'][number] => tables.flatMap(({ rows }) => rows).find(({ cells }) => cells[0]?.text === name)!;
const lineAt = (text: string, place: { readonly range: { readonly start: { readonly line: number } } } | undefined): string => text.split('\n')[place?.range.start.line ?? -1]?.trim() ?? '';

describe('with another job or file, without git', () => {
    test('both sides, by consequence, each row leading to either source', async () => {
        const opened = await new Opened().add({ 'old.hotroom': standard, 'new.hotroom': `// One line lower.\n${higher}` });
        const { server } = opened;
        const answer = await opened.compare('new.hotroom', { kind: 'file', uri: server.uri('old.hotroom') });
        expect(answer.title).toBe('Birch Point bathhouse: what changed');
        expect(answer.subtitle).toMatch(/^old\.hotroom → new\.hotroom: \d+ changes$/);
        expect(answer.tables.map(({ caption }) => caption)).toEqual(['Figures', 'Cut again', 'Order again', 'Approve again', 'Drawing only']);
        expect(lines(answer)).toEqual(expect.arrayContaining([
            'Cut again: part UPPER-LEG-1, bench rear leg | resized | length 33 1/4" | length 34 1/4"', 'Drawing only: upper.top | changed | 37" | 38"',
            'Figures: Bench top to ceiling lining, upper | -1" | 43 1/4" | 42 1/4"', 'Figures: Panels | no change | 18 | 18', 'Figures: Circuit, stove | no change | 25 A, 35 A device, 2 × 8 AWG + 10 AWG ground, 0.52 % voltage drop | 25 A, 35 A device, 2 × 8 AWG + 10 AWG ground, 0.52 % voltage drop',
        ]));
        expect(lines(answer).find(line => line.startsWith('Figures: Wood as cut'))).toMatch(/^Figures: Wood as cut, before waste \| \+\d+\.\d\d USD \| \d+\.\d\d USD/);
        const top = rowNamed(answer, 'upper.top');
        expect([top.before?.uri, lineAt(standard, top.before), top.at?.uri, top.at!.range.start.line - top.before!.range.start.line]).toEqual([server.uri('old.hotroom'), 'top       37"', server.uri('new.hotroom'), 1]);
        expect(top.cells.map(({ place }) => place)).toEqual([undefined, undefined, 'line 42', 'line 43']);
        expect(lineAt(standard, rowNamed(answer, 'part UPPER-LEG-1, bench rear leg').before)).toBe('bench upper on back {');
        for (const { rows } of answer.tables) for (const row of rows) expect([row.at !== undefined || row.before !== undefined, row.cells[0]?.text]).toEqual([true, row.cells[0]?.text]);
        expect(answer.markdown).toContain('- bench top to ceiling lining, upper: 43 1/4" → 42 1/4" (-1")');
        expect(answer.markdown).toContain('### Cut again\n\n| What | How | Detail | Where |');
    });
    test('the other way round the sides are changed over', async () => {
        const opened = await new Opened().add({ 'old.hotroom': standard, 'new.hotroom': higher });
        const back = await opened.compare('old.hotroom', { kind: 'file', uri: opened.server.uri('new.hotroom') });
        expect(lines(back)).toContain('Drawing only: upper.top | changed | 38" | 37"');
    });
    test('one job of a file with another of the same file, and all of one file with all of another', async () => {
        const both = `${standard}\n${standard.slice(standard.indexOf('job birch_point')).replace('job birch_point', 'job second').replace('top       37"', 'top       38"')}`;
        const opened = await new Opened().add({ 'both.hotroom': both, 'one.hotroom': standard });
        const uri = opened.server.uri('both.hotroom');
        const jobs = await opened.compare('both.hotroom', { kind: 'file', uri, job: 'birch_point' }, 'second');
        expect(jobs.subtitle).toMatch(/^birch_point in both\.hotroom → second in both\.hotroom: /);
        expect(lines(jobs)).toContain('Drawing only: upper.top | changed | 37" | 38"');
        const files = await opened.compare('both.hotroom', { kind: 'file', uri: opened.server.uri('one.hotroom') });
        expect([files.title, files.tables, files.notes.filter(note => note.startsWith('Job'))]).toEqual(['2 jobs: what changed', [], ['Job second is new: there is nothing to compare it with.']]);
        expect(files.subtitle).toContain('1 job new');
    });
    test('nothing changed', async () => {
        const opened = await new Opened().add({ 'old.hotroom': standard, 'new.hotroom': standard.replaceAll('    ', '\t') });
        const answer = await opened.compare('new.hotroom', { kind: 'file', uri: opened.server.uri('old.hotroom') });
        expect([answer.subtitle, answer.tables.map(({ id }) => id)]).toEqual(['old.hotroom → new.hotroom: no change of meaning', ['figures']]);
    });
    test('what somebody can pick: jobs and variants of every file', async () => {
        const opened = await new Opened().add({ 'a.hotroom': standard, 'b.hotroom': 'job two "Two" {\n    variant low { }\n}\nseries s { }\n' });
        expect(jobListSchema.parse(await opened.ask('jobs', undefined)).map(({ uri, job, title }) => [uri.split('/').at(-1), job, title])).toEqual([
            ['a.hotroom', 'birch_point', 'Birch Point bathhouse'], ['b.hotroom', 'two', 'Two'], ['b.hotroom', 'two-low', 'Two'],
        ]);
    });
    test('what is not there, and what is no question', async () => {
        const opened = await new Opened().add({ 'a.hotroom': standard, 'empty.hotroom': '// nothing\n' });
        const uri = opened.server.uri('a.hotroom');
        expect(await opened.ask('compare', { uri, job: 'no_such_job', with: { kind: 'last-commit' } })).toBeNull();
        expect(await opened.ask('compare', { uri: opened.server.uri('empty.hotroom'), with: { kind: 'last-commit' } })).toBeNull();
        await expect(opened.ask('compare', { uri, with: { kind: 'last-commit' } })).rejects.toThrow('Cannot compare with the last commit: this text is no file on disk. It can be compared with another job.');
        await expect(opened.ask('compare', { uri, with: { kind: 'file', uri: opened.server.uri('empty.hotroom') } })).rejects.toThrow('There is no job in empty.hotroom to compare with.');
        await expect(opened.ask('compare', { uri, with: { kind: 'file', uri: opened.server.uri('nowhere.hotroom') } })).rejects.toThrow(/not open/);
        for (const wrong of ['x', { uri }, { uri, with: { kind: 'shell' } }, { uri: '', with: { kind: 'last-commit' } }]) await expect(opened.ask('compare', wrong)).rejects.toThrow(/A comparison is asked for/);
    });
    test('a comparison that is cancelled ends as cancelled', async () => {
        const opened = await new Opened().add({ 'old.hotroom': standard, 'new.hotroom': higher });
        const source = new Cancellation.CancellationTokenSource();
        source.cancel();
        await expect(opened.ask('compare', { uri: opened.server.uri('new.hotroom'), with: { kind: 'file', uri: opened.server.uri('old.hotroom') } }, source.token).catch((error: unknown) => String(error))).resolves.toMatch(/OperationCancelled/);
    });
});

describe('with a revision', () => {
    /** The server with the files of the repository as they are on disk, and the job as the editor has it. */
    const inRepository = async (repository: ScratchRepository, text: string): Promise<Opened> => {
        const opened = new Opened(pathToFileURL(repository.path).href);
        return opened.add({ 'jobs/birch.hotroom': text });
    };
    const here = (text: string): string => text.replaceAll('"catalogue/', '"../catalogue/');

    test('the last commit, with what is typed and not saved; the old text comes from the address', async () => {
        const repository = new ScratchRepository();
        const opened = await inRepository(repository, here(higher));
        const answer = await opened.compare('jobs/birch.hotroom', { kind: 'last-commit' });
        const short = repository.git('rev-parse', '--short=7', 'HEAD').trim();
        expect(answer.subtitle).toMatch(new RegExp(`^the last commit, ${short} → birch\\.hotroom: \\d+ changes$`));
        const top = rowNamed(answer, 'upper.top');
        expect(top.cells.map(({ text, place }) => [text, place])).toEqual([['upper.top', undefined], ['changed', undefined], ['37"', 'line 42'], ['38"', 'line 42']]);
        expect(top.before!.uri).toMatch(/^hotroom-revision:\/jobs\/birch/);
        const text = await opened.ask('revisionText', top.before!.uri);
        expect(text).toBe(here(standard));
        expect([lineAt(text as string, top.before), lineAt(here(higher), top.at)]).toEqual(['top       37"', 'top       38"']);
        // What is saved meanwhile on disk does not count; what the editor has does.
        expect(repository.read('jobs/birch.hotroom')).toBe(here(standard));
    });
    test('the catalogue of a revision is the old one, and leads there', async () => {
        const repository = new ScratchRepository();
        repository.change('catalogue/heaters.hotroom', 'Tarn 60 installation sheet, demo edition 2', 'Tarn 60 installation sheet, demo edition 1');
        repository.commit('an older manual');
        const opened = await inRepository(repository, here(standard));
        const answer = await opened.compare('jobs/birch.hotroom', { kind: 'last-commit' });
        const [row] = answer.tables.flatMap(({ rows }) => rows).filter(({ cells: [cell] }) => cell?.text.startsWith('catalogue ') === true);
        expect(row?.cells.map(({ text }) => text)).toEqual(['catalogue Tarn60.manual', 'changed', '"Tarn 60 installation sheet, demo edition 1"', '"Tarn 60 installation sheet, demo edition 2"']);
        expect(row?.cells.map(({ place }) => place)).toEqual([undefined, undefined, '../catalogue/heaters.hotroom:43', '../catalogue/heaters.hotroom:43']);
        expect(lineAt(await opened.ask('revisionText', row!.before!.uri) as string, row!.before)).toBe('manual    "Tarn 60 installation sheet, demo edition 1"');
    });
    test('a file that was renamed is found by its job, and one that is new has nothing to compare', async () => {
        const repository = new ScratchRepository();
        rmSync(repository.at('jobs/birch.hotroom'));
        const opened = await new Opened(pathToFileURL(repository.path).href).add({ 'jobs/renamed.hotroom': here(higher), 'jobs/fresh.hotroom': here(standard).replace('job birch_point', 'job fresh') });
        expect(lines(await opened.compare('jobs/renamed.hotroom', { kind: 'last-commit' }))).toContain('Drawing only: upper.top | changed | 37" | 38"');
        const fresh = await opened.compare('jobs/fresh.hotroom', { kind: 'last-commit' });
        expect([fresh.tables, fresh.notes[0]]).toEqual([[], 'Job fresh is new: there is nothing to compare it with.']);
    });
    test('where the branch left the first branch, by its usual name, by the repository it was fetched from, and none', async () => {
        const repository = new ScratchRepository();
        repository.git('checkout', '-q', '-b', 'work');
        repository.change('jobs/birch.hotroom', 'top       37"', 'top       38"');
        repository.commit('higher');
        repository.git('checkout', '-q', 'main');
        repository.change('jobs/birch.hotroom', 'revision  "B"', 'revision  "C"');
        repository.commit('revision');
        repository.git('checkout', '-q', 'work');
        const opened = await inRepository(repository, repository.read('jobs/birch.hotroom'));
        const answer = await opened.compare('jobs/birch.hotroom', { kind: 'branch-base' });
        expect(answer.subtitle).toMatch(/^where the branch left main, [0-9a-f]{7} → /);
        expect(lines(answer)).toContain('Drawing only: upper.top | changed | 37" | 38"');
        expect(lines(answer).join('\n')).not.toContain('revision');

        // Another repository says which its first branch is.
        repository.git('update-ref', 'refs/remotes/origin/develop', 'work~1');
        repository.git('symbolic-ref', 'refs/remotes/origin/HEAD', 'refs/remotes/origin/develop');
        expect((await opened.compare('jobs/birch.hotroom', { kind: 'branch-base' })).subtitle).toMatch(/^where the branch left origin\/develop, /);
        // No branch checked out.
        repository.git('checkout', '-q', '--detach');
        expect((await opened.compare('jobs/birch.hotroom', { kind: 'branch-base' })).subtitle).toMatch(/^where the branch left origin\/develop, /);

        repository.git('checkout', '-q', 'main');
        for (const ref of ['refs/remotes/origin/HEAD', 'refs/remotes/origin/develop', 'refs/heads/work']) execFileSync('git', ['update-ref', '--no-deref', '-d', ref], { cwd: repository.path });
        await expect(opened.compare('jobs/birch.hotroom', { kind: 'branch-base' })).rejects.toThrow('Cannot compare with the base of the branch: there is no other branch this one could have started from. The last commit can be compared with.');
    });
    test('a tag by its name', async () => {
        const repository = new ScratchRepository();
        repository.git('tag', 'rev-B');
        const opened = await inRepository(repository, here(higher));
        expect((await opened.compare('jobs/birch.hotroom', { kind: 'revision', name: 'rev-B' })).subtitle).toMatch(/^rev-B, [0-9a-f]{7} → birch\.hotroom: /);
        await expect(opened.compare('jobs/birch.hotroom', { kind: 'revision', name: 'rev-C' })).rejects.toThrow('Cannot compare with rev-C: there is no such revision.');
    });
    test('no repository, and one without a commit', async () => {
        const folder = new Folder({ 'jobs/birch.hotroom': here(standard) });
        const opened = await new Opened(pathToFileURL(folder.path).href).add({ 'jobs/birch.hotroom': here(higher), 'jobs/other.hotroom': here(standard) });
        await expect(opened.compare('jobs/birch.hotroom', { kind: 'last-commit' })).rejects.toThrow('Cannot compare with the last commit: this is no git repository. Files and folders can be compared without one.');
        expect((await opened.compare('jobs/birch.hotroom', { kind: 'file', uri: opened.server.uri('jobs/other.hotroom') })).subtitle).toContain('changes');
        execFileSync('git', ['init', '-q'], { cwd: folder.path });
        await expect(opened.compare('jobs/birch.hotroom', { kind: 'last-commit' })).rejects.toThrow('nothing has been committed in this repository yet.');
    });
    test.each(['--output=OWNED', '-oOWNED', '--upload-pack=touch OWNED', '$(touch OWNED)', '`touch OWNED`', 'HEAD;touch OWNED', 'HEAD\ntouch OWNED', 'HEAD\u0000', '..', 'HEAD:jobs', ':/first', '@{u}', ''])('a hostile name of a revision does nothing: %j', async name => {
        const repository = new ScratchRepository();
        const opened = await inRepository(repository, here(standard));
        await expect(opened.compare('jobs/birch.hotroom', { kind: 'revision', name })).rejects.toThrow(/^Cannot compare with /);
        expect(existsSync(repository.at('OWNED'))).toBe(false);
    });
    test('hostile names of files and branches: a job is found by its whole name, whatever it looks like', async () => {
        const name = '-rf $(touch OWNED) \u{1f600}.hotroom';
        const repository = new ScratchRepository({ [`jobs/${name}`]: here(standard) });
        repository.git('branch', '-m', 'main', '$(touch.OWNED)');
        const uri = pathToFileURL(repository.at(`jobs/${name}`)).href;
        const opened = new Opened(pathToFileURL(repository.path).href);
        await opened.add({});
        await opened.server.add(`jobs/${encodeURIComponent(name)}`, here(higher));
        await opened.server.build();
        const document = opened.server.shared.workspace.LangiumDocuments.all.find(({ uri: { fsPath } }) => fsPath === repository.at(`jobs/${name}`));
        expect([document?.uri.fsPath, uri.startsWith('file:')]).toEqual([repository.at(`jobs/${name}`), true]);
        const answer = tablesDocumentSchema.parse(await opened.ask('compare', { uri: document!.uri.toString(), with: { kind: 'last-commit' } }));
        const top = rowNamed(answer, 'upper.top');
        expect(await opened.ask('revisionText', top.before!.uri)).toBe(here(standard));
        await expect(opened.ask('compare', { uri: document!.uri.toString(), with: { kind: 'branch-base' } })).rejects.toThrow(/no other branch/);
        expect(existsSync(repository.at('OWNED'))).toBe(false);
    });
    test('a file of a revision that is no text is refused by its name', async () => {
        const repository = new ScratchRepository();
        repository.write('jobs/birch.hotroom', new Uint8Array([0xff, 0xfe, 0x00, 0xc3]));
        repository.commit('raw');
        const opened = await inRepository(repository, here(standard));
        await expect(opened.compare('jobs/birch.hotroom', { kind: 'last-commit' })).rejects.toThrow(/jobs\/birch\.hotroom is not a text in UTF-8\.$/);
    });
});

describe('addresses of old files', () => {
    const tree = 'a'.repeat(40);
    const near = 'file:///jobs/birch.hotroom';
    test('are read back, and name the revision for people', () => {
        const address = revisionAddress({ near, tree, path: 'jobs/birch.hotroom' }, '3f2a1c9');
        expect(decodeURIComponent(address)).toContain('/jobs/birch (3f2a1c9).hotroom?');
        expect(readRevisionAddress(address)).toEqual({ near, tree, path: 'jobs/birch.hotroom' });
    });
    test.each([
        'file:///etc/passwd', 'hotroom-revision:/x', 'hotroom-revision:/x?{}', 'nonsense', '',
        ...[{ near, tree: 'HEAD', path: 'a.hotroom' }, { near, tree: `--output=${tree}`, path: 'a.hotroom' }, { near: 'https://example.invalid/', tree, path: 'a.hotroom' },
            ...['../a.hotroom', '/etc/passwd', '.git/config', 'a/.git/x.hotroom', 'a\\..\\b.hotroom', 'secrets.txt', 'a\u0000.hotroom'].map(path => ({ near, tree, path }))].map(query => `hotroom-revision:/x.hotroom?${encodeURIComponent(JSON.stringify(query))}`),
    ])('one that was tampered with is refused: %s', async address => {
        expect(readRevisionAddress(address)).toBeUndefined();
        const opened = await new Opened().add({});
        await expect(opened.ask('revisionText', address)).rejects.toThrow('This is no address of a file in a revision.');
    });
    test('a tree that is not there, and a file the tree has not', async () => {
        const repository = new ScratchRepository();
        const opened = await new Opened().add({});
        const there = repository.git('rev-parse', 'HEAD^{tree}').trim();
        const address = (own: string, path: string): string => revisionAddress({ near: pathToFileURL(repository.at('jobs/birch.hotroom')).href, tree: own, path }, 'x');
        expect(await opened.ask('revisionText', address(there, 'jobs/none.hotroom'))).toBeNull();
        expect(await opened.ask('revisionText', address(there, 'jobs/birch.hotroom'))).toBe(repository.read('jobs/birch.hotroom'));
        await expect(opened.ask('revisionText', address('b'.repeat(40), 'jobs/birch.hotroom'))).rejects.toThrow(/Cannot compare with the revision/);
    });
});
