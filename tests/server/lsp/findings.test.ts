import { describe, expect, test } from 'vitest';
import { DocumentState, URI } from 'langium';
import { CodeActionKind, DiagnosticSeverity, type CodeAction, type CodeActionContext, type Range } from 'vscode-languageserver';
import { analyze } from '../../../language/src/analyze.js';
import { fixAllKind } from '../../../server/src/lsp/code-actions.js';
import { toDiagnostic } from '../../../server/src/lsp/diagnostics.js';
import { ServerWorkspace, applyEdits, textIn } from './server-workspace.js';

const everywhere: Range = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };
async function actions(server: ServerWorkspace, document: Awaited<ReturnType<ServerWorkspace['add']>>, context: Partial<CodeActionContext> = {}, range = everywhere): Promise<CodeAction[]> {
    return await server.hotroom.lsp.CodeActionProvider?.getCodeActions(document, { textDocument: { uri: document.uri.toString() }, range, context: { diagnostics: document.diagnostics ?? [], ...context } }) as CodeAction[];
}
const misspelt = 'job a {\n    rules     us_dwelling\n    site {\n        widht     96"\n        flor      tile\n    }\n}\n';

describe('diagnostics', () => {
    test('have their rule, place, source and what can be done', async () => {
        const document = await new ServerWorkspace().add('a.hotroom', misspelt);
        const found = document.diagnostics?.find(({ range }) => textIn(document, range) === 'widht');
        expect(found).toMatchObject({ code: 'unknown-word', source: 'hotroom', severity: DiagnosticSeverity.Error, data: { rule: 'unknown-word', fixes: ['Write width'] } });
    });
    test('lead to other places', async () => {
        const server = new ServerWorkspace();
        const document = await server.add('a.hotroom', 'job a {\n    site { floor tile; floor wood }\n}\n');
        const found = document.diagnostics?.find(({ code }) => code === 'fact-repeated');
        expect(found?.relatedInformation?.map(({ location }) => [location.uri, textIn(document, location.range)])).toEqual([[server.uri('a.hotroom'), 'floor']]);
    });
    test('count characters as UTF-16 does', async () => {
        const document = await new ServerWorkspace().add('a.hotroom', 'job a "🌲🌲" { widht 1" }\n');
        expect(document.diagnostics?.find(({ code }) => code === 'unknown-word')?.range).toEqual({ start: { line: 0, character: 15 }, end: { line: 0, character: 20 } });
    });
    test('have the page of their rule, where there is one', async () => {
        const document = await new ServerWorkspace({ handbook: rule => rule === 'unknown-word' ? 'file:///pages/unknown-word.md' : undefined }).add('a.hotroom', misspelt);
        expect(document.diagnostics?.map(({ code, codeDescription }) => [code, codeDescription?.href])).toContainEqual(['unknown-word', 'file:///pages/unknown-word.md']);
        expect(document.diagnostics?.filter(({ code }) => code !== 'unknown-word').every(({ codeDescription }) => codeDescription === undefined)).toBe(true);
    });
    test('of another file stand at the head and lead there', async () => {
        const server = new ServerWorkspace();
        const other = await server.add('b.hotroom', 'catalogue b { }\n');
        const found = toDiagnostic({ rule: 'r', severity: 'info', message: 'm', at: { uri: other.uri.toString(), start: 10, end: 11 } }, server.uri('a.hotroom'), server.hotroom.editing.Places, () => undefined);
        expect(found).toMatchObject({ range: { start: { line: 0, character: 0 } }, severity: DiagnosticSeverity.Information, relatedInformation: [{ location: { uri: other.uri.toString(), range: { start: { line: 0, character: 10 } } } }] });
    });
    test('follow a used file: what was missing is there, what was there is gone', async () => {
        const server = new ServerWorkspace();
        const document = await server.add('a.hotroom', 'use "c.hotroom"\ncatalogue a { bench_build b { slat alder } }\n');
        const codes = (): unknown[] => [...new Set(document.diagnostics?.map(({ code }) => code))].filter(code => code !== 'fact-missing');
        expect(codes()).toEqual(['use-not-found']);
        const builder = server.shared.workspace.DocumentBuilder;
        const used = server.shared.workspace.LangiumDocumentFactory.fromString('catalogue c { stock alder { } }\n', URI.parse(server.uri('c.hotroom')));
        server.shared.workspace.LangiumDocuments.addDocument(used);
        builder.resetToState(document, DocumentState.ComputedScopes);
        await server.build();
        expect(codes()).toEqual([]);
    });
});

describe('fixes', () => {
    test('of the finding under the cursor, with its diagnostic', async () => {
        const server = new ServerWorkspace();
        const document = await server.add('a.hotroom', misspelt);
        const found = document.diagnostics?.find(({ range }) => textIn(document, range) === 'widht');
        const offered = await actions(server, document, {}, found!.range);
        expect(offered.map(({ title, kind, isPreferred, diagnostics }) => [title, kind, isPreferred, diagnostics?.length])).toEqual([['Write width', CodeActionKind.QuickFix, true, 1]]);
        expect(applyEdits(misspelt, offered[0]?.edit?.changes?.[document.uri.toString()] ?? [])).toBe(misspelt.replace('widht', 'width'));
    });
    test('come from the text as it is, not from an old diagnostic', async () => {
        const server = new ServerWorkspace();
        const document = await server.add('a.hotroom', misspelt);
        expect((await actions(server, document, { diagnostics: [], only: ['quickfix'] })).map(({ title }) => title)).toEqual(['Write width', 'Write floor']);
    });
    test('all that keep the meaning, as one action, when asked for', async () => {
        const server = new ServerWorkspace();
        const document = await server.add('a.hotroom', misspelt);
        expect((await actions(server, document)).map(({ kind }) => kind)).not.toContain(fixAllKind);
        for (const only of ['source.fixAll', fixAllKind, 'source']) {
            const offered = await actions(server, document, { only: [only] });
            expect(offered.map(({ kind }) => kind)).toEqual([fixAllKind]);
            expect(applyEdits(misspelt, offered[0]?.edit?.changes?.[document.uri.toString()] ?? [])).toBe(misspelt.replace('widht', 'width').replace('flor', 'floor'));
        }
        expect((await actions(server, document, { only: ['refactor'] })).every(({ kind }) => kind?.startsWith('refactor.'))).toBe(true);
        expect((await actions(server, document, { only: ['refactor.extract'] })).map(({ title }) => title)).toEqual(['Extract a series from a']);
    });
});

describe('trouble inside', () => {
    test('a failing analysis is one diagnostic of that file, a line in the log, and no end', async () => {
        const isBroken = { yes: true };
        const server = new ServerWorkspace({ analyze: (...args) => { if (isBroken.yes) throw new Error('injected'); return analyze(...args); } });
        const document = await server.add('a.hotroom', 'job a { rules iec }\n');
        expect(document.diagnostics?.map(({ code, severity }) => [code, severity])).toEqual([['check-failed', DiagnosticSeverity.Error]]);
        expect(document.diagnostics?.[0]?.message).toContain('injected');
        expect(server.logged[0]).toMatch(/Checking memory:\/jobs\/a\.hotroom \(version 0\) failed: Error: injected/);
        isBroken.yes = false;
        const other = await server.add('b.hotroom', 'job b { rules iec }\n');
        expect(other.diagnostics?.map(({ code }) => code)).not.toContain('check-failed');
    });
    test('brackets nested by the thousand are one diagnostic', async () => {
        const server = new ServerWorkspace();
        const document = await server.add('a.hotroom', `job a { room { width ${'('.repeat(20_000)}1"${')'.repeat(20_000)} } }\n`);
        expect(document.diagnostics?.map(({ code }) => code)).toEqual(['file-too-large']);
        const other = await server.add('b.hotroom', 'job b { rules iec }\n');
        expect(other.diagnostics?.map(({ code }) => code)).not.toContain('file-too-large');
    });
});
