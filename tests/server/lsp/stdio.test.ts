import { execFileSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
    CodeActionRequest, CompletionRequest, DidChangeTextDocumentNotification, DidChangeWatchedFilesNotification, DidChangeWorkspaceFoldersNotification, DidCloseTextDocumentNotification, DocumentFormattingRequest,
    ExecuteCommandRequest, FileChangeType, HoverRequest, PublishDiagnosticsNotification, ReferencesRequest, RenameRequest, SelectionRangeRequest, SemanticTokensRequest, type CodeAction, type CompletionList, type Diagnostic, type MarkupContent, type Position,
} from 'vscode-languageserver-protocol';
import { tablesDocumentSchema } from '../../../client/src/tables-document.js';
import { exampleText } from '../../support/workspace.js';
import { bundleServer, folderWith, StdioServer } from './stdio-server.js';

const standard = exampleText('birch-point.hotroom');
const files = { 'birch-point.hotroom': standard, 'catalogue/skerry.hotroom': exampleText('catalogue/skerry.hotroom'), 'catalogue/heaters.hotroom': exampleText('catalogue/heaters.hotroom') };
const built = folderWith({});
let bundle = '';
beforeAll(async () => { bundle = await bundleServer(built.folder); }, 60_000);
afterAll(() => { built.remove(); });

async function served(options: ConstructorParameters<typeof StdioServer>[2], content: Readonly<Record<string, string>>, run: (server: StdioServer) => Promise<void>): Promise<void> {
    const { folder, remove } = folderWith(content);
    const server = new StdioServer(bundle, folder, options);
    try {
        await server.result;
        await run(server);
        expect(await server.end()).toBe(0);
    } finally {
        server.kill();
        remove();
    }
}
const placeIn = (text: string, needle: string, shift = 0): Position => {
    const before = text.slice(0, text.indexOf(needle) + shift).split('\n');
    return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
};
const codes = (diagnostics: readonly Diagnostic[]): unknown[] => diagnostics.map(({ code }) => code);

describe('a server over its streams', { timeout: 60_000 }, () => {
    test('from the first file to the end', () => served({}, files, async server => {
        const { capabilities, serverInfo } = await server.result;
        expect(serverInfo?.name).toBe('hotroom');
        expect(capabilities).toMatchObject({
            positionEncoding: 'utf-16', selectionRangeProvider: true, renameProvider: { prepareProvider: true }, executeCommandProvider: { commands: ['hotroom.server.cutList', 'hotroom.server.compare', 'hotroom.server.review', 'hotroom.server.jobs', 'hotroom.server.revisionText'] },
            codeActionProvider: { codeActionKinds: ['quickfix', 'refactor.rewrite', 'refactor.extract', 'refactor.move', 'source.fixAll.hotroom'] }, semanticTokensProvider: { full: { delta: true }, range: true }, documentOnTypeFormattingProvider: { firstTriggerCharacter: '}' },
            workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
        });
        const uri = server.uri('birch-point.hotroom');
        const textDocument = { uri };
        const text = standard.replace('height    7\'0"', 'heigth    7\'0"');
        await server.open(uri, text);
        const diagnostics = await server.diagnostics(uri);
        const mistake = diagnostics.find(({ code }) => code === 'unknown-word');
        expect(mistake).toMatchObject({ source: 'hotroom', severity: 1, range: { start: placeIn(text, 'heigth'), end: placeIn(text, 'heigth', 6) } });

        const { connection } = server;
        const hover = await connection.sendRequest(HoverRequest.type, { textDocument, position: placeIn(text, 'Tarn60', 2) });
        expect((hover?.contents as MarkupContent).value).toContain('heater model Tarn60');
        const list = await connection.sendRequest(CompletionRequest.type, { textDocument, position: placeIn(text, 'floor     tile', 10) }) as CompletionList;
        expect(list.items.map(({ label }) => label)).toContain('concrete');
        const [action] = await connection.sendRequest(CodeActionRequest.type, { textDocument, range: mistake!.range, context: { diagnostics: [mistake!] } }) as CodeAction[];
        expect(action).toMatchObject({ title: 'Write height', kind: 'quickfix', edit: { changes: { [uri]: [{ newText: 'height' }] } } });
        const renamed = await connection.sendRequest(RenameRequest.type, { textDocument, position: placeIn(text, 'upper on'), newName: 'top_bench' });
        expect(renamed?.changes?.[uri]?.length).toBe(2);
        await expect(connection.sendRequest(RenameRequest.type, { textDocument, position: placeIn(text, 'upper on'), newName: 'lower' })).rejects.toThrow('The name lower is taken by another bench.');
        expect(await connection.sendRequest(DocumentFormattingRequest.type, { textDocument, options: { tabSize: 4, insertSpaces: true } })).toEqual([]);
        expect((await connection.sendRequest(SemanticTokensRequest.type, { textDocument }))?.data.length).toBeGreaterThan(500);
        expect((await connection.sendRequest(SelectionRangeRequest.type, { textDocument, positions: [placeIn(text, 'Tarn60')] }))?.length).toBe(1);

        server.forget(uri);
        await connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 2 }, contentChanges: [{ range: mistake!.range, text: 'height' }] });
        expect(codes(await server.diagnostics(uri))).not.toContain('unknown-word');
        expect(server.logged).toEqual([]);
    }));

    test('a job is compared with the last commit, unsaved text and all, and its old text is handed out', () => served({}, files, async server => {
        const git = (...words: readonly string[]): string => execFileSync('git', ['-c', 'user.name=Design Office', '-c', 'user.email=office@example.invalid', ...words], { cwd: server.folder, encoding: 'utf8', env: { PATH: process.env['PATH'] ?? '', GIT_CONFIG_GLOBAL: '/dev/null' } });
        git('init', '-q', '-b', 'main');
        git('add', '-A');
        git('commit', '-q', '-m', 'first');
        const uri = server.uri('birch-point.hotroom');
        await server.open(uri, standard.replace('top       37"', 'top       38"'));
        const ask = (command: string, argument: unknown): Promise<unknown> => server.connection.sendRequest(ExecuteCommandRequest.type, { command, arguments: [argument] });
        const compared = tablesDocumentSchema.parse(await ask('hotroom.server.compare', { uri, job: 'birch_point', with: { kind: 'last-commit' } }));
        const top = compared.tables.flatMap(({ rows }) => rows).find(({ cells: [cell] }) => cell?.text === 'upper.top');
        expect(top?.at).toEqual({ uri, range: { start: placeIn(standard, 'top       37"'), end: placeIn(standard, 'top       37"', 13) } });
        expect(await ask('hotroom.server.revisionText', top?.before?.uri)).toBe(standard);
        await expect(ask('hotroom.server.compare', { uri, with: { kind: 'revision', name: '--output=x' } })).rejects.toThrow(/^Cannot compare with --output=x: it is no name of a revision\.$/);
    }));
    test('a cut list, and the last sound one while the file has errors', () => served({}, files, async server => {
        const uri = server.uri('birch-point.hotroom');
        await server.open(uri, standard);
        await server.diagnostics(uri, diagnostics => diagnostics.every(({ severity }) => severity !== 1));
        const ask = async (): Promise<ReturnType<typeof tablesDocumentSchema.parse>> =>
            tablesDocumentSchema.parse(await server.connection.sendRequest(ExecuteCommandRequest.type, { command: 'hotroom.server.cutList', arguments: [{ uri, job: 'birch_point' }], workDoneToken: 'one' }));
        const sound = await ask();
        expect(sound.stale).toBeUndefined();
        expect(sound.tables.length).toBeGreaterThan(1);
        expect(JSON.stringify(sound)).not.toContain('quick plan');
        const wrong = standard.replace('hinge     left', 'hinge     lift');
        server.forget(uri);
        await server.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 2 }, contentChanges: [{ text: wrong }] });
        expect(codes(await server.diagnostics(uri))).toContain('value-of-another-kind');
        expect(await ask()).toEqual({ ...sound, stale: true });
    }));
});

describe('files come and go', { timeout: 60_000 }, () => {
    test('a used file is read from disk when no folder is open', () => served({ hasFolder: false }, files, async server => {
        const uri = server.uri('birch-point.hotroom');
        await server.open(uri, standard);
        expect(codes(await server.diagnostics(uri, diagnostics => !codes(diagnostics).includes('use-not-found')))).not.toContain('unknown-name');
    }));
    test('a file that is not saved anywhere', () => served({}, files, async server => {
        const uri = 'untitled:Untitled-1';
        await server.open(uri, 'job a {\n    rulse iec\n}\n');
        expect(codes(await server.diagnostics(uri))).toContain('unknown-word');
        await server.connection.sendNotification(DidCloseTextDocumentNotification.type, { textDocument: { uri } });
        expect(await server.diagnostics(uri, diagnostics => diagnostics.length === 0)).toEqual([]);
    }));
    test('a catalogue that is changed, deleted and written again on disk', () => served({}, files, async server => {
        const uri = server.uri('birch-point.hotroom');
        const heaters = server.uri('catalogue/heaters.hotroom');
        const tell = (type: FileChangeType): Promise<void> => server.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes: [{ uri: heaters, type }] });
        await server.open(uri, standard);
        await server.diagnostics(uri);
        writeFileSync(path.join(server.folder, 'catalogue/heaters.hotroom'), files['catalogue/heaters.hotroom'].replace('heater_model Tarn60', 'heater_model Tarn61'));
        await tell(FileChangeType.Changed);
        expect(codes(await server.diagnostics(uri, diagnostics => codes(diagnostics).includes('unknown-name')))).not.toContain('use-not-found');
        rmSync(path.join(server.folder, 'catalogue/heaters.hotroom'));
        await tell(FileChangeType.Deleted);
        await server.diagnostics(uri, diagnostics => codes(diagnostics).includes('use-not-found'));
        writeFileSync(path.join(server.folder, 'catalogue/heaters.hotroom'), files['catalogue/heaters.hotroom']);
        await tell(FileChangeType.Created);
        await server.diagnostics(uri, diagnostics => !codes(diagnostics).some(code => code === 'use-not-found' || code === 'unknown-name'));
        await tell(FileChangeType.Changed);
        await tell(FileChangeType.Deleted);
        await tell(FileChangeType.Created);
        await server.diagnostics(uri, diagnostics => !codes(diagnostics).some(code => code === 'use-not-found' || code === 'unknown-name'));
    }));
    test('an edit of a catalogue reaches the open files that use it, through others too', () => served({}, {
        'a.hotroom': 'catalogue a {\n    stock alder { section 1" x 2"; lengths 8\' }\n}\n',
        'b.hotroom': 'use "a.hotroom"\ncatalogue b {\n    light_model l { body 1" x 1"; depth 1" }\n    door_model d { leaf 1" x 1"; clear 1" x 1"; section 1"; catch roller; frame alder }\n}\n',
    }, async server => {
        const [a, b] = [server.uri('a.hotroom'), server.uri('b.hotroom')];
        await server.open(a, 'catalogue a {\n    stock alder { section 1" x 2"; lengths 8\' }\n}\n');
        await server.diagnostics(b, diagnostics => diagnostics.length === 0);
        server.forget(b);
        await server.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri: a, version: 2 }, contentChanges: [{ text: 'catalogue a {\n    stock elder { section 1" x 2"; lengths 8\' }\n}\n' }] });
        expect(codes(await server.diagnostics(b, diagnostics => diagnostics.length > 0))).toEqual(['unknown-name']);
    }));
    test('an edit of a shared catalogue: the open file first, and every file that names an entry is found meanwhile', () => {
        const jobs = Object.fromEntries(Array.from({ length: 60 }, (_, i) => [`jobs/job-${String(i).padStart(2, '0')}.hotroom`, standard.replaceAll('"catalogue/', '"../catalogue/').replace('birch_point', `job_${i}`)]));
        return served({}, { ...jobs, ...files }, async server => {
            const open = server.uri('jobs/job-37.hotroom');
            const catalogue = server.uri('catalogue/skerry.hotroom');
            await server.open(open, jobs['jobs/job-37.hotroom'] ?? '');
            await server.open(catalogue, files['catalogue/skerry.hotroom']);
            await Promise.all([...Object.keys(jobs), ...Object.keys(files)].map(name => server.diagnostics(server.uri(name))));
            const order: string[] = [];
            server.connection.onNotification(PublishDiagnosticsNotification.type, ({ uri }) => { order.push(uri); });
            const text = files['catalogue/skerry.hotroom'];
            await server.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri: catalogue, version: 2 }, contentChanges: [{ text: text.replace('edition   "demo 1"', 'edition   "demo 2"') }] });
            const position = placeIn(text, 'Slatted', 2);
            const places = await server.connection.sendRequest(ReferencesRequest.type, { textDocument: { uri: catalogue }, position, context: { includeDeclaration: false } });
            expect(new Set(places?.map(({ uri }) => uri)).size).toBe(61);
            await expect.poll(() => order.length, { timeout: 20_000 }).toBeGreaterThanOrEqual(63);
            expect(order.slice(0, 3)).toEqual(expect.arrayContaining([open, catalogue]));
        });
    });
    test('a folder that is added and taken away again', () => served({}, { 'one/a.hotroom': 'job a { }\n' }, async server => {
        const other = folderWith({ 'b.hotroom': 'job b {\n    rulse iec\n}\n' });
        const folder = { uri: `file://${other.folder}`, name: 'other' };
        const uri = `file://${other.folder}/b.hotroom`;
        await server.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, { event: { added: [folder], removed: [] } });
        expect(codes(await server.diagnostics(uri))).toContain('unknown-word');
        await server.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, { event: { added: [], removed: [folder] } });
        expect(await server.diagnostics(uri, diagnostics => diagnostics.length === 0)).toEqual([]);
        other.remove();
    }));
});

describe('nothing stops the server', { timeout: 120_000 }, () => {
    test('200 edits at random places, with questions in between, end as if the text had been opened so', () => served({}, files, async server => {
        const uri = server.uri('birch-point.hotroom');
        const textDocument = { uri };
        let text = standard;
        let seed = 20260914;
        const random = (below: number): number => { seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0; return seed % below; };
        const bits = ['{', '}', '"', '\'', '\n', ' ', ';', ',', '(', ')', '-', 'x', '37', 'bench', 'upper', '//', '/*', '=', '🌲', '\u0000', 'use "', '7\'6"', '\r'];
        await server.open(uri, text);
        const asked: Promise<unknown>[] = [];
        for (let version = 2; version < 202; version++) {
            const start = random(text.length + 1);
            const end = Math.min(text.length, start + random(12));
            const insert = Array.from({ length: random(3) }, () => bits[random(bits.length)] ?? '').join('');
            const range = { start: placeAt(text, start), end: placeAt(text, end) };
            text = text.slice(0, start) + insert + text.slice(end);
            await server.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version }, contentChanges: [{ range, text: insert }] });
            const position = placeAt(text, random(text.length + 1));
            if (version % 5 === 0) asked.push(server.connection.sendRequest(HoverRequest.type, { textDocument, position }).catch(cancelled));
            if (version % 5 === 1) asked.push(server.connection.sendRequest(CompletionRequest.type, { textDocument, position }).catch(cancelled));
            if (version % 7 === 0) asked.push(server.connection.sendRequest(DocumentFormattingRequest.type, { textDocument, options: { tabSize: 4, insertSpaces: true } }).catch(cancelled));
            if (version % 7 === 1) asked.push(server.connection.sendRequest(SemanticTokensRequest.type, { textDocument }).catch(cancelled));
        }
        await Promise.all(asked);
        server.forget(uri);
        await server.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 999 }, contentChanges: [{ text: standard.replace('depth     79', 'dephth    79') }] });
        expect(codes(await server.diagnostics(uri, diagnostics => codes(diagnostics).length === 1))).toEqual(['unknown-word']);
        expect(server.logged).toEqual([]);
    }));
    test.each([
        ['nothing at all', ''], ['one brace', '{'], ['half a header', 'job'], ['a picture', '\u0089PNG\r\n\u001a\n\u0000'], ['thousands of braces', '{'.repeat(3000)],
        ['ten thousand brackets', `job a { room { width ${'('.repeat(10_000)}`], ['one very long line', `job a { number "${'x'.repeat(200_000)}" }`],
    ])('%s', (_, text) => served({}, {}, async server => {
        const uri = server.uri('odd.hotroom');
        await server.open(uri, text);
        await server.diagnostics(uri);
        const position = { line: 0, character: Math.min(5, text.length) };
        await server.connection.sendRequest(CompletionRequest.type, { textDocument: { uri }, position });
        await server.connection.sendRequest(DocumentFormattingRequest.type, { textDocument: { uri }, options: { tabSize: 4, insertSpaces: true } });
        await server.open(server.uri('good.hotroom'), 'job good {\n    rulse iec\n}\n');
        expect(codes(await server.diagnostics(server.uri('good.hotroom')))).toContain('unknown-word');
    }));
});

function placeAt(text: string, offset: number): Position {
    // Lines end as the protocol counts them: with \n, \r\n or \r.
    const before = text.slice(0, offset).split(/\r\n|\n|\r/);
    const isInLineEnd = text[offset - 1] === '\r' && text[offset] === '\n';
    return isInLineEnd ? placeAt(text, offset - 1) : { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}
/** A question overtaken by an edit has no answer, which is as it should be. */
function cancelled(error: unknown): void {
    const code = (error as { code?: number }).code;
    if (code !== -32800 && code !== -32801 && code !== -32802) throw error;
}
