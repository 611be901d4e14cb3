import { describe, expect, test } from 'vitest';
import type { CompletionList, Hover, InitializeParams, MarkupContent, SemanticTokens } from 'vscode-languageserver';
import { ServerWorkspace, at } from './server-workspace.js';

const series = 'rule tall { require room.height > 1"; because "house" }\nseries cottage "Cottage" {\n    parameter w { takes length; least 60"; otherwise 84"; doc "Outside width" }\n    parameter side { takes wall; otherwise right }\n    room { width w; height 7\'0" }\n    bench upper on back { top 37"; depth 20" }\n}\n';
const text = 'use "series.hotroom"\njob one is cottage(96", side = left) {\n    let aisle = upper.depth + room.width\n    bench upper { top 36" }\n}\n';

async function open(own = text): Promise<{ server: ServerWorkspace; document: Awaited<ReturnType<ServerWorkspace['add']>> }> {
    const server = new ServerWorkspace();
    server.hotroom.editing.client.hasSnippets = true;
    await server.add('series.hotroom', series);
    return { server, document: await server.add('job.hotroom', own) };
}

describe('a job made from a series of another file', () => {
    test.each<[string, number, string | undefined, number]>([['cottage(96', 8, 'cottage(w, side)', 0], ['side = left', 11, 'cottage(w, side)', 1], ['job one', 2, undefined, 0]])('values in brackets at %s', async (needle, shift, label, active) => {
        const { server, document } = await open();
        const help = await server.hotroom.lsp.SignatureHelp?.provideSignatureHelp(document, at(document, needle, shift));
        expect(help?.signatures[0]?.label).toBe(label);
        if (label !== undefined) expect(help?.activeParameter).toBe(active);
        if (label !== undefined) expect(help?.signatures[0]?.parameters).toEqual([
            { label: [8, 9], documentation: 'Outside width. w takes a length: at least 60"; otherwise 84".' }, { label: [11, 15], documentation: 'side takes a wall: otherwise right.' },
        ]);
    });
    test('half-typed, the help and the offers are there', async () => {
        const { server, document } = await open('use "series.hotroom"\njob one is cottage(\n');
        expect((await server.hotroom.lsp.SignatureHelp?.provideSignatureHelp(document, at(document, 'cottage(', 8)))?.signatures[0]?.label).toBe('cottage(w, side)');
        const list = await server.hotroom.lsp.CompletionProvider?.getCompletion(document, at(document, 'cottage(', 8)) as CompletionList;
        expect(list.items.slice(0, 2).map(({ label }) => label)).toEqual(['84"', '60"']);
    });
    test('names below a point have their values, and a name that needs one asks for more', async () => {
        const { server, document } = await open(text.replace('upper.depth + room.width', 'upper.'));
        const list = await server.hotroom.lsp.CompletionProvider?.getCompletion(document, at(document, 'upper.', 6)) as CompletionList;
        expect(list.items.find(({ label }) => label === 'depth')).toMatchObject({ detail: '20"' });
        const other = await open(text.replace('upper.depth + room.width', ''));
        for (const asksAgain of [true, false]) {
            other.server.hotroom.editing.client.asksAgain = asksAgain;
            const heads = await other.server.hotroom.lsp.CompletionProvider?.getCompletion(other.document, at(other.document, 'aisle = ', 8)) as CompletionList;
            const room = heads.items.find(({ label }) => label === 'room');
            expect(room).toMatchObject({ textEdit: { newText: 'room.' } });
            expect(room?.command?.command).toBe(asksAgain ? 'editor.action.triggerSuggest' : undefined);
        }
    });
    test('a space brings no list of names to choose from, and asking does', async () => {
        const { server, document } = await open(text.replace('top 36"', 'top '));
        const ask = (triggerKind: 1 | 2): Promise<string[]> => Promise.resolve(server.hotroom.lsp.CompletionProvider?.getCompletion(document, { ...at(document, 'top ', 4), context: { triggerKind, triggerCharacter: ' ' } })).then(list => list?.items.map(({ label }) => label) ?? []);
        expect(await ask(2)).toEqual([]);
        expect(await ask(1)).toEqual(expect.arrayContaining(['w', 'room', 'max']));
    });
    test('hover tells the series and its values', async () => {
        const { server, document } = await open();
        const value = async (needle: string, shift = 0): Promise<string> => ((await server.hotroom.lsp.HoverProvider?.getHoverContent(document, at(document, needle, shift)) as Hover).contents as MarkupContent).value;
        expect(await value('cottage(96')).toMatch(/^\*\*series cottage\(w, side\)\*\* “Cottage” {2}\nw = 96"/);
        expect(await value('top 36')).toContain('Said before: `37"`. This one wins.');
        expect(await value('upper.depth', 7)).toContain('20" (508 mm)');
    });
    test('house rules of a used file are offered to a waiver', async () => {
        const { server, document } = await open(text.replace('bench upper', 'waive \n    bench upper'));
        const list = await server.hotroom.lsp.CompletionProvider?.getCompletion(document, at(document, 'waive ', 6)) as CompletionList;
        expect(list.items.map(({ label }) => label)).toContain('tall');
    });
});

test('colours of the new words', async () => {
    const server = new ServerWorkspace();
    const document = await server.add('a.hotroom', 'series s {\n    parameter w { takes length }\n    let a = max(w, upper.top)\n}\njob j is s\n');
    const { tokenTypes } = server.hotroom.lsp.SemanticTokenProvider!.semanticTokensOptions.legend;
    const { data } = await server.hotroom.lsp.SemanticTokenProvider?.semanticHighlight(document, { textDocument: { uri: document.uri.toString() } }) as SemanticTokens;
    expect(Array.from({ length: data.length / 5 }, (_, i) => tokenTypes[data[5 * i + 3]!])).toEqual([
        'keyword', 'variable', 'keyword', 'variable', 'property', 'enumMember', 'keyword', 'variable', 'operator', 'function', 'parameter', 'variable', 'property', 'keyword', 'variable', 'keyword', 'class',
    ]);
});

test('the server says that it helps with values in brackets', async () => {
    const server = new ServerWorkspace();
    const { capabilities } = await server.shared.lsp.LanguageServer.initialize({ processId: null, capabilities: {} } as unknown as InitializeParams);
    expect(capabilities.signatureHelpProvider).toMatchObject({ triggerCharacters: ['(', ','] });
    expect(capabilities.completionProvider?.triggerCharacters).toEqual(expect.arrayContaining(['.', '(', '=']));
});
