import type { LangiumDocument } from 'langium';
import type { DefinitionProvider } from 'langium/lsp';
import type { DefinitionParams, LocationLink } from 'vscode-languageserver';
import { leadsAt } from '../../../language/src/editing/name-index.js';
import type { HotroomServerServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';
import { NamesInSight } from './names.js';

/** From a name to what declares it, from a fact to the one it wins over and back, from the path of a `use` to the file. */
export class HotroomDefinition implements DefinitionProvider {
    constructor(private readonly services: HotroomServerServices) {}

    getDefinition(document: LangiumDocument, { position }: DefinitionParams): LocationLink[] | undefined {
        const offset = document.textDocument.offsetAt(position);
        const { LangiumDocuments, Imports } = this.services.shared.workspace;
        for (const { node, target } of Imports.uses(document)) {
            const cst = node.$cstNode;
            if (!cst || target.kind !== 'file' || offset < cst.offset || offset > cst.end || !LangiumDocuments.hasDocument(target.uri)) continue;
            const head = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };
            return [{ originSelectionRange: rangeIn(document.textDocument, cst.offset, cst.end), targetUri: target.uri.toString(), targetRange: head, targetSelectionRange: head }];
        }
        const { library, uris } = new NamesInSight(this.services);
        const found = leadsAt(document.uri.toString(), offset, uris, library);
        const { Places } = this.services.editing;
        return found?.leads.map(({ uri, fact, start, end }) => ({
            originSelectionRange: rangeIn(document.textDocument, found.start, found.end), targetUri: uri,
            targetRange: Places.range({ uri, start: fact.$cstNode?.offset ?? start, end: fact.$cstNode?.end ?? end }), targetSelectionRange: Places.range({ uri, start, end }),
        }));
    }
}
