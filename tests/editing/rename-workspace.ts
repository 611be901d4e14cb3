import { readFileSync } from 'node:fs';
import type { RenameContext } from '../../language/src/editing/rename.js';
import type { NameLibrary } from '../../language/src/editing/name-texts.js';
import * as ast from '../../language/src/syntax/generated/ast.js';
import { TestWorkspace } from '../support/workspace.js';

const folder = new URL('names/', import.meta.url);
/** Files that use every construct that has names, by path. */
export const nameFiles: Readonly<Record<string, string>> = Object.fromEntries(['house', 'line', 'jobs'].map(name => [`names/${name}.hotroom`, readFileSync(new URL(`${name}.hotroom`, folder), 'utf8')]));

/** Files in memory as names are looked up in them, with the catalogues of the examples beside them. */
export async function nameWorkspace(files: Readonly<Record<string, string>> = nameFiles): Promise<{ readonly workspace: TestWorkspace; readonly context: RenameContext; readonly library: NameLibrary; readonly uris: readonly string[] }> {
    const workspace = new TestWorkspace();
    workspace.addCatalogues();
    for (const [path, text] of Object.entries(files)) workspace.add(path, text);
    await workspace.build();
    const { LangiumDocuments, Imports } = workspace.shared.workspace;
    const documents = new Map(LangiumDocuments.all.map(document => [document.uri.toString(), document] as const).toArray());
    const fileIn = (value: unknown): ast.File | undefined => ast.isFile(value) ? value : undefined;
    const library: NameLibrary = {
        root: uri => fileIn(documents.get(uri)?.parseResult.value),
        visible: uri => { const document = documents.get(uri); return document ? Imports.visible(document).map(other => other.toString()) : []; },
    };
    const uris = [...documents.keys()];
    return {
        workspace, library, uris,
        context: {
            library, uris, mayChange: () => true, textOf: uri => documents.get(uri)?.textDocument.getText() ?? '',
            read: text => fileIn(workspace.hotroom.parser.LangiumParser.parse(text).value), nameOfFile: uri => uri.replace('memory:/jobs/', ''),
        },
    };
}
