import { AstUtils, UriUtils, type LangiumDocument, type ReferenceDescription } from 'langium';
import type { DocumentHighlightProvider, ReferencesProvider } from 'langium/lsp';
import { DocumentHighlightKind, type DocumentHighlight, type DocumentHighlightParams, type Location, type ReferenceParams } from 'vscode-languageserver';
import type { HotroomServerServices } from '../services.js';
import { namedPlaceAt } from './declarations.js';

/** Every place that names the block whose name an offset touches. */
export function placesOfName(services: HotroomServerServices, document: LangiumDocument, offset: number, options: { readonly includeDeclaration: boolean }): readonly ReferenceDescription[] {
    const place = namedPlaceAt(document, offset);
    return place ? services.references.References.findReferences(place.block, options).toArray() : [];
}

export class HotroomReferences implements ReferencesProvider {
    constructor(private readonly services: HotroomServerServices) {}

    findReferences(document: LangiumDocument, { position, context }: ReferenceParams): Location[] {
        return placesOfName(this.services, document, document.textDocument.offsetAt(position), context).map(({ sourceUri, segment }) => ({ uri: sourceUri.toString(), range: segment.range }));
    }
}

/** The same within one file; the name itself is written, the others read. */
export class HotroomDocumentHighlights implements DocumentHighlightProvider {
    constructor(private readonly services: HotroomServerServices) {}

    getDocumentHighlight(document: LangiumDocument, { position }: DocumentHighlightParams): DocumentHighlight[] {
        const offset = document.textDocument.offsetAt(position);
        const home = namedPlaceAt(document, offset);
        const isOwn = home !== undefined && UriUtils.equals(AstUtils.getDocument(home.block).uri, document.uri);
        return placesOfName(this.services, document, offset, { includeDeclaration: isOwn }).filter(({ sourceUri }) => UriUtils.equals(sourceUri, document.uri))
            .map(({ segment, sourcePath, targetPath }) => ({ range: segment.range, kind: sourcePath === targetPath ? DocumentHighlightKind.Write : DocumentHighlightKind.Read }));
    }
}
