import { afterAll, beforeAll, expect, test } from 'vitest';
import { DidChangeTextDocumentNotification, DiagnosticRefreshRequest, DocumentDiagnosticRequest, WorkspaceDiagnosticRequest, type DocumentDiagnosticReport, type WorkspaceDocumentDiagnosticReport } from 'vscode-languageserver-protocol/node';
import { StdioServer, bundleServer, folderWith } from './stdio-server.js';

const built = folderWith({});
let bundle = '';
beforeAll(async () => { bundle = await bundleServer(built.folder); }, 60_000);
afterAll(() => { built.remove(); });

const files = { 'c.hotroom': 'catalogue c {\n    stock alder { section 1" x 2" }\n}\n', 'a.hotroom': 'use "c.hotroom"\n\njob a {\n    room { widht 72" }\n}\n', 'b.hotroom': 'job b {\n    nubmer "2"\n}\n' };

async function served(options: ConstructorParameters<typeof StdioServer>[2], run: (server: StdioServer) => Promise<void>): Promise<void> {
    const { folder, remove } = folderWith(files);
    const server = new StdioServer(bundle, folder, options);
    try {
        await server.result;
        await run(server);
    } finally {
        server.kill();
        remove();
    }
}
const codes = (report: DocumentDiagnosticReport | WorkspaceDocumentDiagnosticReport | undefined): unknown => report?.kind === 'full' ? report.items.map(({ code }) => code) : report?.kind;

test('an editor that asks is answered, and not told as well', () => served({ asks: true }, async server => {
    expect((await server.result).capabilities.diagnosticProvider).toEqual({ identifier: 'hotroom', interFileDependencies: true, workspaceDiagnostics: true });
    const uri = server.uri('a.hotroom');
    await server.open(uri, files['a.hotroom']);
    const ask = (previousResultId?: string): Promise<DocumentDiagnosticReport> => server.connection.sendRequest(DocumentDiagnosticRequest.type, { textDocument: { uri }, ...(previousResultId !== undefined && { previousResultId }) });
    const first = await ask();
    expect(codes(first)).toContain('unknown-word');
    expect(codes(await ask(first.resultId))).toBe('unchanged');
    await server.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 2 }, contentChanges: [{ text: files['a.hotroom'].replace('widht', 'width') }] });
    expect(codes(await ask(first.resultId))).not.toContain('unknown-word');
    await expect(Promise.race([server.diagnostics(uri), server.diagnostics(server.uri('b.hotroom')), new Promise(resolve => { setTimeout(() => { resolve('silence'); }, 500); })])).resolves.toBe('silence');
}), 60_000);

test('the whole workspace can be asked for, closed files too', () => served({ asks: true }, async server => {
    const ask = async (previous: readonly WorkspaceDocumentDiagnosticReport[] = []): Promise<readonly WorkspaceDocumentDiagnosticReport[]> =>
        (await server.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds: previous.flatMap(({ uri, resultId }) => resultId === undefined ? [] : [{ uri, value: resultId }]) })).items;
    await server.open(server.uri('a.hotroom'), files['a.hotroom']);
    await server.connection.sendRequest(DocumentDiagnosticRequest.type, { textDocument: { uri: server.uri('a.hotroom') } });
    const all = await ask();
    const of = (name: string, reports = all): WorkspaceDocumentDiagnosticReport | undefined => reports.find(({ uri }) => uri === server.uri(name));
    expect([codes(of('b.hotroom')), of('b.hotroom')?.version, of('a.hotroom')?.version]).toEqual([expect.arrayContaining(['unknown-word']), null, 1]);
    const again = await ask([...all, { kind: 'full', uri: server.uri('gone.hotroom'), version: null, resultId: 'x', items: [] }]);
    expect([...new Set(again.filter(({ uri }) => !uri.endsWith('gone.hotroom')).map(({ kind }) => kind))]).toEqual(['unchanged']);
    expect(codes(of('gone.hotroom', again))).toEqual([]);
}), 60_000);

test('an edit of another file makes the editor ask again', () => served({ asks: true }, async server => {
    const refreshed = new Promise<string>(resolve => { server.connection.onRequest(DiagnosticRefreshRequest.type, () => { resolve('refreshed'); }); });
    await server.open(server.uri('a.hotroom'), files['a.hotroom']);
    await server.open(server.uri('c.hotroom'), files['c.hotroom']);
    await server.connection.sendRequest(DocumentDiagnosticRequest.type, { textDocument: { uri: server.uri('a.hotroom') } });
    await server.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri: server.uri('c.hotroom'), version: 2 }, contentChanges: [{ text: files['c.hotroom'].replace('alder', 'birch') }] });
    expect(await refreshed).toBe('refreshed');
}), 60_000);

test.each([['cannot ask', { asks: false }], ['could ask and rather is told', { asks: true, initializationOptions: { pushDiagnostics: true } }]])('an editor that %s is told', (_, options) => served(options, async server => {
    expect((await server.result).capabilities.diagnosticProvider).toBeUndefined();
    await server.open(server.uri('b.hotroom'), files['b.hotroom']);
    expect((await server.diagnostics(server.uri('b.hotroom'))).map(({ code }) => code)).toContain('unknown-word');
}), 60_000);
