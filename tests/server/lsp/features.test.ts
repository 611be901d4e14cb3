import { describe, expect, test } from 'vitest';
import { CompletionItemKind, InsertTextFormat, type CompletionList, type DocumentSymbol, type Hover, type MarkupContent, type SelectionRange, type SemanticTokens } from 'vscode-languageserver';
import { selectionRanges } from '../../../server/src/lsp/folding.js';
import { ServerWorkspace, applyEdits, at, textIn } from './server-workspace.js';

const options = { tabSize: 4, insertSpaces: true };

describe('completion', () => {
    const textBefore = 'use "c.hotroom"\njob a {\n    bench upper on back {\n        build     \n        t\n    }\n}\n';
    async function complete(needle: string, shift: number, { snippets = true } = {}): Promise<CompletionList | undefined> {
        const server = new ServerWorkspace();
        server.hotroom.editing.client.hasSnippets = snippets;
        await server.add('c.hotroom', 'catalogue c {\n    bench_build Slatted "Slats" { slat alder }\n    stock alder { section 1" x 2" }\n}\n');
        const document = await server.add('a.hotroom', textBefore);
        return await server.hotroom.lsp.CompletionProvider?.getCompletion(document, at(document, needle, shift));
    }
    test('names come from used files and say so', async () => {
        const list = await complete('build     ', 10);
        expect(list?.items.map(({ label, kind, detail, documentation }) => [label, kind, detail, (documentation as MarkupContent).value])).toEqual([['Slatted', CompletionItemKind.Reference, 'bench build “Slats”', 'From c.hotroom.']]);
    });
    test('an offer replaces the word it completes, with its documentation', async () => {
        const list = await complete('        t\n', 9);
        const top = list?.items.find(({ label }) => label === 'top');
        expect(top).toMatchObject({ insertTextFormat: InsertTextFormat.Snippet, textEdit: { newText: 'top       ${1:34 3/4"}', range: { start: { line: 4, character: 8 }, end: { line: 4, character: 9 } } } });
        expect((top?.documentation as MarkupContent).value).toContain('Finished top over the finished floor.');
        expect(list?.items.map(({ sortText }) => sortText)).toEqual([...list?.items ?? []].map(({ sortText }) => sortText).sort());
    });
    test('an editor without snippets gets the word', async () => {
        const list = await complete('        t\n', 9, { snippets: false });
        expect(list?.items.find(({ label }) => label === 'top')).toMatchObject({ insertTextFormat: InsertTextFormat.PlainText, textEdit: { newText: 'top' } });
    });
});

describe('formatting', () => {
    const text = 'job a {\nnumber "1"\n  revision "B"\n}\n';
    test('the file, a range, and the line just left', async () => {
        const server = new ServerWorkspace();
        const document = await server.add('a.hotroom', text);
        const textDocument = { uri: document.uri.toString() };
        const { Formatter } = server.hotroom.lsp;
        expect(applyEdits(text, await Formatter?.formatDocument(document, { textDocument, options }) ?? [])).toBe('job a {\n    number    "1"\n    revision  "B"\n}\n');
        expect(applyEdits(text, await Formatter?.formatDocumentRange(document, { textDocument, options, range: { start: { line: 1, character: 0 }, end: { line: 2, character: 0 } } }) ?? [])).toBe('job a {\n    number    "1"\n  revision "B"\n}\n');
        expect(applyEdits(text, await Formatter?.formatDocumentOnType(document, { textDocument, options, ch: '\n', position: { line: 3, character: 0 } }) ?? [])).toBe('job a {\nnumber "1"\n    revision  "B"\n}\n');
        expect(applyEdits(text, await Formatter?.formatDocument(document, { textDocument, options: { tabSize: 8, insertSpaces: false } }) ?? [])).toBe('job a {\n\tnumber    "1"\n\trevision  "B"\n}\n');
        expect(await Formatter?.formatDocumentOnType(document, { textDocument, options, ch: '\n', position: { line: 0, character: 0 } })).toEqual([]);
    });
});

describe('colours', () => {
    test('whole, a range, and the difference to the last time', async () => {
        const server = new ServerWorkspace();
        const document = await server.add('a.hotroom', 'job a {\n    number "1"\n}\n');
        const textDocument = { uri: document.uri.toString() };
        const provider = server.hotroom.lsp.SemanticTokenProvider;
        const { tokenTypes, tokenModifiers } = provider!.semanticTokensOptions.legend;
        const whole = await provider?.semanticHighlight(document, { textDocument }) as SemanticTokens;
        const shown = Array.from({ length: whole.data.length / 5 }, (_, i) => { const [line, char, length, type, modifiers] = whole.data.slice(5 * i, 5 * i + 5); return [line, char, length, tokenTypes[type!], modifiers ? tokenModifiers[0] : '']; });
        expect(shown).toEqual([[0, 0, 3, 'keyword', ''], [0, 4, 1, 'variable', 'declaration'], [1, 4, 6, 'property', ''], [0, 7, 3, 'string', '']]);
        const part = await provider?.semanticHighlightRange(document, { textDocument, range: { start: { line: 1, character: 0 }, end: { line: 2, character: 0 } } }) as SemanticTokens;
        expect(part.data).toEqual([1, 4, 6, 1, 0, 0, 7, 3, 6, 0]);
        const delta = await provider?.semanticHighlightDelta(document, { textDocument, previousResultId: whole.resultId ?? '' });
        expect(delta).toMatchObject({ edits: [] });
    });
});

test('symbols of a document nest, each within its parent', async () => {
    const server = new ServerWorkspace();
    const document = await server.addExamples();
    const symbols = await server.hotroom.lsp.DocumentSymbolProvider?.getSymbols(document, { textDocument: { uri: document.uri.toString() } }) ?? [];
    expect(symbols.map(({ name, detail }) => [name, detail])).toEqual([['birch_point', 'job · Birch Point bathhouse']]);
    expect(symbols[0]?.children?.map(({ name }) => name)).toEqual(expect.arrayContaining(['site', 'room', 'entry', 'upper', 'lower', 'stove', 'stove_feed']));
    const check = (symbol: DocumentSymbol): void => {
        const inner = [symbol.selectionRange, ...(symbol.children ?? []).map(({ range }) => range)];
        for (const { start, end } of inner) expect(document.textDocument.offsetAt(start) >= document.textDocument.offsetAt(symbol.range.start) && document.textDocument.offsetAt(end) <= document.textDocument.offsetAt(symbol.range.end)).toBe(true);
        symbol.children?.forEach(check);
    };
    symbols.forEach(check);
});

test('folds and selections', async () => {
    const server = new ServerWorkspace();
    const document = await server.add('a.hotroom', '// one\n// two\njob a {\n    number "1"\n}\n');
    expect(await server.hotroom.lsp.FoldingRangeProvider?.getFoldingRanges(document, { textDocument: { uri: document.uri.toString() } })).toEqual([{ startLine: 0, endLine: 1, kind: 'comment' }, { startLine: 2, endLine: 3 }]);
    const [first] = selectionRanges(server.hotroom, document, [at(document, 'number', 2).position]);
    const grown: string[] = [];
    for (let range: SelectionRange | undefined = first; range; range = range.parent) grown.push(textIn(document, range.range));
    expect(grown.slice(0, 2)).toEqual(['number', 'number "1"']);
    expect(grown.at(-1)).toBe(document.textDocument.getText());
});

describe('settings', () => {
    const everywhere = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };
    test('hints can be turned off, and their unit chosen', async () => {
        const server = new ServerWorkspace();
        const document = await server.addExamples();
        const textDocument = { uri: document.uri.toString() };
        const labels = async (): Promise<string[]> => (await server.hotroom.lsp.InlayHintProvider?.getInlayHints(document, { textDocument, range: everywhere }) ?? []).map(({ label }) => label as string);
        const change = (hotroom: unknown): void => { server.shared.workspace.ConfigurationProvider.updateConfiguration({ settings: { hotroom } }); };
        expect((await labels()).join()).toMatch(/inside volume [\d.]+ ft3/);
        change({ displayUnits: 'metric', inlayHints: { enabled: true } });
        expect((await labels()).join()).toMatch(/inside volume [\d.]+ m3/);
        change({ inlayHints: { enabled: false } });
        expect(await labels()).toEqual([]);
        change({ displayUnits: 7, inlayHints: 'never' });
        expect((await labels()).join()).toMatch(/inside volume [\d.]+ ft3/);
    });
    test('hovers answer in the chosen unit', async () => {
        const server = new ServerWorkspace();
        const document = await server.addExamples();
        const value = async (): Promise<string> => ((await server.hotroom.lsp.HoverProvider?.getHoverContent(document, at(document, 'room {')) as Hover).contents as MarkupContent).value;
        expect(await value()).toMatch(/inside volume: [\d.]+ ft3 \([\d.]+ m3\)/);
        server.shared.workspace.ConfigurationProvider.updateConfiguration({ settings: { hotroom: { displayUnits: 'metric' } } });
        expect(await value()).toMatch(/inside volume: [\d.]+ m3 \([\d.]+ ft3\)/);
    });
});

test('a job has its lenses, the second of which asks for its cut list', async () => {
    const server = new ServerWorkspace();
    const document = await server.addExamples();
    const lenses = await server.hotroom.lsp.CodeLensProvider?.provideCodeLens(document, { textDocument: { uri: document.uri.toString() } }) ?? [];
    expect(lenses.map(({ range, command }) => [textIn(document, range), command?.command, command?.arguments])).toEqual([
        ['job birch_point', '', undefined], ['job birch_point', 'hotroom.showCutList', [{ uri: document.uri.toString(), job: 'birch_point' }]],
    ]);
});
