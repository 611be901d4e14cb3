import { URI, type LangiumDocument } from 'langium';
import type { RenameContext } from '../../../language/src/editing/rename.js';
import type { NameLibrary } from '../../../language/src/editing/name-texts.js';
import * as ast from '../../../language/src/syntax/generated/ast.js';
import type { HotroomServerServices } from '../services.js';
import { relativePath } from './relative-path.js';

/** The files of the workspace as names are looked up in them, as they are at the moment of asking. */
export class NamesInSight {
    readonly library: NameLibrary;
    readonly uris: readonly string[];
    private readonly documents: ReadonlyMap<string, LangiumDocument>;

    constructor(private readonly services: HotroomServerServices) {
        const { LangiumDocuments, Imports } = services.shared.workspace;
        this.documents = new Map(LangiumDocuments.all.map(document => [document.uri.toString(), document] as const).toArray());
        this.uris = [...this.documents.keys()].sort();
        this.library = {
            root: uri => { const root = this.documents.get(uri)?.parseResult.value; return root && ast.isFile(root) ? root : undefined; },
            visible: uri => { const document = this.documents.get(uri); return document ? Imports.visible(document).map(other => other.toString()) : []; },
        };
    }

    /** What renaming from a document needs. */
    renaming(from: LangiumDocument): RenameContext {
        const { roots } = this.services.shared.workspace.Imports;
        const own = from.uri.toString();
        return {
            library: this.library, uris: this.uris,
            textOf: uri => this.documents.get(uri)?.textDocument.getText() ?? '',
            read: text => { const { value } = this.services.parser.LangiumParser.parse(text); return ast.isFile(value) ? value : undefined; },
            mayChange: uri => uri === own || roots.length === 0 || roots.some(root => uri.startsWith(`${root.toString().replace(/\/$/, '')}/`)),
            nameOfFile: uri => uri === own ? 'this file' : relativePath(from.uri, URI.parse(uri)),
        };
    }
}
