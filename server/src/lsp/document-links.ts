import type { LangiumDocument } from 'langium';
import type { DocumentLinkProvider } from 'langium/lsp';
import type { DocumentLink } from 'vscode-languageserver';
import type { HotroomServerServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';

/** The paths of `use` lines that lead to a file. */
export class HotroomDocumentLinks implements DocumentLinkProvider {
    constructor(private readonly services: HotroomServerServices) {}

    getDocumentLinks(document: LangiumDocument): DocumentLink[] {
        const { Imports, LangiumDocuments } = this.services.shared.workspace;
        return Imports.uses(document).flatMap(({ node, target }) => {
            const cst = node.$cstNode;
            if (!cst || target.kind !== 'file' || !LangiumDocuments.hasDocument(target.uri)) return [];
            return [{ range: rangeIn(document.textDocument, cst.offset + 1, cst.end - 1), target: target.uri.toString(), tooltip: 'Open this file' }];
        });
    }
}
