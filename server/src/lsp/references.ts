import type { LangiumDocument } from 'langium';
import type { DocumentHighlightProvider, ReferencesProvider } from 'langium/lsp';
import { DocumentHighlightKind, type DocumentHighlight, type DocumentHighlightParams, type Location, type ReferenceParams } from 'vscode-languageserver';
import { nameAt, namesOf, samePlaces, type PlacedName } from '../../../language/src/editing/name-index.js';
import type { HotroomServerServices } from '../services.js';
import { NamesInSight } from './names.js';

/** Every place, among some files or all, that names what the name at an offset means. */
function placesOfName(services: HotroomServerServices, document: LangiumDocument, offset: number, among?: readonly string[]): readonly PlacedName[] {
    const { library, uris } = new NamesInSight(services);
    const names = namesOf(document.uri.toString(), library);
    const name = names && nameAt(names, offset);
    return name ? samePlaces(name.key, among ?? uris, library) : [];
}

export class HotroomReferences implements ReferencesProvider {
    constructor(private readonly services: HotroomServerServices) {}

    findReferences(document: LangiumDocument, { position, context }: ReferenceParams): Location[] {
        return placesOfName(this.services, document, document.textDocument.offsetAt(position))
            .filter(({ role }) => context.includeDeclaration || role !== 'declaration').map(place => this.services.editing.Places.location(place));
    }
}

/** The same within one file; where the name is declared or said more of it is written, elsewhere read. */
export class HotroomDocumentHighlights implements DocumentHighlightProvider {
    constructor(private readonly services: HotroomServerServices) {}

    getDocumentHighlight(document: LangiumDocument, { position }: DocumentHighlightParams): DocumentHighlight[] {
        return placesOfName(this.services, document, document.textDocument.offsetAt(position), [document.uri.toString()])
            .map(place => ({ range: this.services.editing.Places.range(place), kind: place.role === 'use' ? DocumentHighlightKind.Read : DocumentHighlightKind.Write }));
    }
}
