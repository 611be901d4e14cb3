import { AstUtils, type LangiumDocument } from 'langium';
import type { DefinitionProvider } from 'langium/lsp';
import type { DefinitionParams, LocationLink } from 'vscode-languageserver';
import { nameWord } from '../../../language/src/syntax/words.js';
import type { HotroomServerServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';
import { namedPlaceAt } from './declarations.js';

/** From a name to the block of that name, from the path of a `use` to the file. */
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
        const place = namedPlaceAt(document, offset);
        const name = place && (nameWord(place.block)?.$cstNode ?? place.block.$cstNode);
        if (!place || !name) return undefined;
        const target = AstUtils.getDocument(place.block);
        return [{
            originSelectionRange: place.word.range, targetUri: target.uri.toString(), targetRange: place.block.$cstNode?.range ?? name.range, targetSelectionRange: name.range,
        }];
    }
}
