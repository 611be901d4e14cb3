import type { LangiumDocument } from 'langium';
import type { RenameProvider } from 'langium/lsp';
import { LSPErrorCodes, ResponseError, type Range, type RenameParams, type TextDocumentPositionParams, type WorkspaceEdit } from 'vscode-languageserver';
import { renamable, rename } from '../../../language/src/editing/rename.js';
import type { HotroomServerServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';
import { NamesInSight } from './names.js';

/** Gives a name another spelling, here and in every file that means the same by it, or says why not. */
export class HotroomRename implements RenameProvider {
    constructor(private readonly services: HotroomServerServices) {}

    prepareRename(document: LangiumDocument, { position }: TextDocumentPositionParams): Range | undefined {
        const found = renamable(document.uri.toString(), document.textDocument.offsetAt(position), new NamesInSight(this.services).renaming(document));
        if (found && 'refused' in found) throw new ResponseError(LSPErrorCodes.RequestFailed, found.refused);
        return found && rangeIn(document.textDocument, found.start, found.end);
    }

    rename(document: LangiumDocument, { position, newName }: RenameParams): WorkspaceEdit | undefined {
        const found = rename(document.uri.toString(), document.textDocument.offsetAt(position), newName, new NamesInSight(this.services).renaming(document));
        if (!found) return undefined;
        if ('refused' in found) throw new ResponseError(LSPErrorCodes.RequestFailed, found.refused);
        return { changes: this.services.editing.Places.changes(found.edits.map(({ uri, start, end, newText }) => ({ span: { uri, start, end }, newText }))) };
    }
}
