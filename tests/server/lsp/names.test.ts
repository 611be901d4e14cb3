import { describe, expect, test } from 'vitest';
import type { LangiumDocument } from 'langium';
import { ServerWorkspace, applyEdits, at, textIn } from './server-workspace.js';

const catalogue = 'catalogue c "C" {\n    bench_build Slatted {\n        slat      alder\n    }\n    stock alder {\n        section   3/4" x 3 1/2"\n    }\n}\n';
const job = 'use "c.hotroom"\n\njob a {\n    bench upper on back {\n        build     Slatted\n    }\n    bench lower on back {\n        build     Slatted\n        in_front_of upper\n    }\n}\n';
async function workspace(): Promise<{ workspace: ServerWorkspace; home: LangiumDocument; document: LangiumDocument }> {
    const server = new ServerWorkspace();
    const home = await server.add('c.hotroom', catalogue);
    const document = await server.add('a.hotroom', job);
    return { workspace: server, home, document };
}

describe('definition', () => {
    test('from a reference to the block in another file', async () => {
        const { workspace: server, home, document } = await workspace();
        const [link] = await server.hotroom.lsp.DefinitionProvider?.getDefinition(document, at(document, 'Slatted', 3)) ?? [];
        expect(link?.targetUri).toBe(server.uri('c.hotroom'));
        expect(link && textIn(home, link.targetSelectionRange)).toBe('Slatted');
        expect(link && textIn(home, link.targetRange)).toMatch(/^bench_build Slatted \{[^}]*\}$/);
    });
    test('from a use to its file', async () => {
        const { workspace: server, document } = await workspace();
        const [link] = await server.hotroom.lsp.DefinitionProvider?.getDefinition(document, at(document, 'c.hotroom', 2)) ?? [];
        expect(link?.targetUri).toBe(server.uri('c.hotroom'));
    });
    test('nothing from a word that names nothing', async () => {
        const { workspace: server, document } = await workspace();
        expect(await server.hotroom.lsp.DefinitionProvider?.getDefinition(document, at(document, 'build', 1))).toBeUndefined();
    });
});

describe('references and highlights', () => {
    test('every file that names a catalogue entry', async () => {
        const { workspace: server, home } = await workspace();
        const found = await server.hotroom.lsp.ReferencesProvider?.findReferences(home, { ...at(home, 'Slatted'), context: { includeDeclaration: true } }) ?? [];
        expect(found.map(place => place.uri).sort()).toEqual([server.uri('a.hotroom'), server.uri('a.hotroom'), server.uri('c.hotroom')]);
    });
    test('within a job, without the name itself when not asked for', async () => {
        const { workspace: server, document } = await workspace();
        const found = await server.hotroom.lsp.ReferencesProvider?.findReferences(document, { ...at(document, 'upper', 5), context: { includeDeclaration: false } }) ?? [];
        expect(found.map(({ range }) => range.start.line)).toEqual([8]);
    });
    test('highlights stay in the file', async () => {
        const { workspace: server, document } = await workspace();
        expect((await server.hotroom.lsp.DocumentHighlightProvider?.getDocumentHighlight(document, at(document, 'Slatted')))?.length).toBe(2);
        expect((await server.hotroom.lsp.DocumentHighlightProvider?.getDocumentHighlight(document, at(document, 'upper on')))?.map(({ kind }) => kind)).toEqual([3, 2]);
    });
});

describe('rename', () => {
    test.each([['start', 0], ['middle', 3], ['end', 7]])('from the %s of a reference, in every file', async (_, shift) => {
        const { workspace: server, document } = await workspace();
        const place = at(document, 'Slatted', shift);
        const range = await server.hotroom.lsp.RenameProvider?.prepareRename(document, place);
        expect(range && 'start' in range && textIn(document, range)).toBe('Slatted');
        const edit = await server.hotroom.lsp.RenameProvider?.rename(document, { ...place, newName: 'Open' });
        expect(applyEdits(catalogue, edit?.changes?.[server.uri('c.hotroom')] ?? [])).toBe(catalogue.replace('Slatted', 'Open'));
        expect(applyEdits(job, edit?.changes?.[server.uri('a.hotroom')] ?? [])).toBe(job.replaceAll('Slatted', 'Open'));
    });
    test('of a block nobody refers to', async () => {
        const { workspace: server, document } = await workspace();
        const edit = await server.hotroom.lsp.RenameProvider?.rename(document, { ...at(document, 'lower', 2), newName: 'foot' });
        expect(applyEdits(job, edit?.changes?.[server.uri('a.hotroom')] ?? [])).toBe(job.replace('lower', 'foot'));
    });
    test.each([['upper', 'The name upper is taken by another bench.'], ['2nd', '‘2nd’ is not a name. A name is made of letters, digits and _, and begins with a letter.'], ['on', '‘on’ has a meaning of its own and cannot be a name.']])('not to %s', async (newName, message) => {
        const { workspace: server, document } = await workspace();
        expect(() => server.hotroom.lsp.RenameProvider?.rename(document, { ...at(document, 'lower'), newName })).toThrow(message);
    });
    test('not of a fact, a word or a figure', async () => {
        const { workspace: server, document, home } = await workspace();
        expect(await server.hotroom.lsp.RenameProvider?.prepareRename(document, at(document, 'build', 1))).toBeUndefined();
        expect(await server.hotroom.lsp.RenameProvider?.prepareRename(document, at(document, 'back {', 1))).toBeUndefined();
        expect(await server.hotroom.lsp.RenameProvider?.prepareRename(home, at(home, '3/4"', 1))).toBeUndefined();
    });
});

test('moving a file takes the uses that lead to it and out of it along', async () => {
    const { workspace: server } = await workspace();
    await server.add('catalogue/d.hotroom', 'use "../c.hotroom"\n');
    const edit = await server.shared.lsp.FileOperationHandler?.willRenameFiles?.({ files: [{ oldUri: server.uri('c.hotroom'), newUri: server.uri('catalogue/c.hotroom') }] });
    const changed = Object.entries(edit?.changes ?? {}).map(([uri, edits]) => [uri, edits.map(({ newText }) => newText)]);
    expect(changed.sort()).toEqual([[server.uri('a.hotroom'), ['"catalogue/c.hotroom"']], [server.uri('catalogue/d.hotroom'), ['"c.hotroom"']]]);
    const folder = await server.shared.lsp.FileOperationHandler?.willRenameFiles?.({ files: [{ oldUri: server.uri('catalogue'), newUri: server.uri('old/catalogue') }] });
    expect(Object.entries(folder?.changes ?? {}).map(([uri, edits]) => [uri, edits.map(({ newText }) => newText)])).toEqual([[server.uri('catalogue/d.hotroom'), ['"../../c.hotroom"']]]);
});

test('symbols of the workspace are jobs, blocks and entries by name', async () => {
    const { workspace: { shared } } = await workspace();
    const names = async (query: string): Promise<string[]> => (await shared.lsp.WorkspaceSymbolProvider?.getSymbols({ query }) ?? []).map(({ name, containerName }) => `${name}, ${containerName ?? ''}`);
    expect(await names('slat')).toEqual(['Slatted, bench build in c']);
    expect(await names('upper')).toEqual(['upper, bench in a']);
    expect((await names('')).length).toBe(6);
});

test('the path of a use is a link when its file is there', async () => {
    const { workspace: server, document } = await workspace();
    const links = await server.hotroom.lsp.DocumentLinkProvider?.getDocumentLinks(document, { textDocument: { uri: document.uri.toString() } }) ?? [];
    expect(links.map(({ range, target }) => [textIn(document, range), target])).toEqual([['c.hotroom', server.uri('c.hotroom')]]);
    const lost = await server.add('lost.hotroom', 'use "nowhere.hotroom"\n');
    expect(await server.hotroom.lsp.DocumentLinkProvider?.getDocumentLinks(lost, { textDocument: { uri: lost.uri.toString() } })).toEqual([]);
});

describe('across a series and its jobs', () => {
    const line = 'series cottage "Cottage" {\n    parameter w { takes length; otherwise 84" }\n    let step = w / 4\n    bench upper on back { top 37"; depth step }\n}\n';
    const made = 'use "line.hotroom"\n\njob one is cottage(w = 96") {\n    bench upper { top 36" }\n    let step = upper.top / 2\n    waive bench-too-high on upper because "a" by "b" until 2027-01-01\n}\n';
    async function both(): Promise<{ server: ServerWorkspace; series: LangiumDocument; document: LangiumDocument }> {
        const server = new ServerWorkspace();
        const series = await server.add('line.hotroom', line);
        return { server, series, document: await server.add('one.hotroom', made) };
    }
    test.each([['w = 96', 0, 'w'], ['upper { top', 3, 'upper'], ['upper.top', 5, 'upper'], ['on upper', 4, 'upper'], ['step = upper', 1, 'step']])('rename from %s', async (needle, shift, name) => {
        const { server, document } = await both();
        const edit = await server.hotroom.lsp.RenameProvider?.rename(document, { ...at(document, needle, shift), newName: 'zz' });
        const renamed = (text: string): string => text.replace(new RegExp(`\\b${name}\\b`, 'g'), 'zz');
        expect(applyEdits(line, edit?.changes?.[server.uri('line.hotroom')] ?? [])).toBe(renamed(line));
        expect(applyEdits(made, edit?.changes?.[server.uri('one.hotroom')] ?? [])).toBe(renamed(made));
    });
    test('from a fact to the one it wins over, and back', async () => {
        const { server, series, document } = await both();
        const [down] = await server.hotroom.lsp.DefinitionProvider?.getDefinition(document, at(document, 'top 36')) ?? [];
        expect(down && [down.targetUri, textIn(series, down.targetRange)]).toEqual([server.uri('line.hotroom'), 'top 37"']);
        const [up] = await server.hotroom.lsp.DefinitionProvider?.getDefinition(series, at(series, 'top 37', 1)) ?? [];
        expect(up && [up.targetUri, textIn(document, up.targetRange), textIn(document, up.targetSelectionRange)]).toEqual([server.uri('one.hotroom'), 'top 36"', 'top']);
    });
    test('references and highlights', async () => {
        const { server, series, document } = await both();
        const found = await server.hotroom.lsp.ReferencesProvider?.findReferences(series, { ...at(series, 'upper'), context: { includeDeclaration: false } }) ?? [];
        expect(found.map(({ uri, range }) => [uri, range.start.line])).toEqual([3, 4, 5].map(number => [server.uri('one.hotroom'), number]));
        expect((await server.hotroom.lsp.DocumentHighlightProvider?.getDocumentHighlight(document, at(document, 'upper.top')))?.map(({ kind }) => kind)).toEqual([3, 2, 2]);
    });
    test('why not is told before a new name is asked for', async () => {
        const { server, document } = await both();
        const free = await server.add('free.hotroom', 'job a {\n    let a = nobody.top\n}\n');
        expect(() => server.hotroom.lsp.RenameProvider?.prepareRename(free, at(free, 'nobody'))).toThrow('Nothing in sight is called nobody, so there is nothing to rename.');
        expect(await server.hotroom.lsp.RenameProvider?.prepareRename(document, at(document, '"a"', 1))).toBeUndefined();
    });
});
