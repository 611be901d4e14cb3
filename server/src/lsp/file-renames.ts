import { URI } from 'langium';
import type { FileOperationHandler } from 'langium/lsp';
import type { FileOperationOptions, RenameFilesParams, WorkspaceEdit } from 'vscode-languageserver';
import type { HotroomServerSharedServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';
import { relativePath } from './relative-path.js';

/** When files or folders are moved, the `use` lines that lead to them, and those that lead out of them, go along. */
export class FileRenames implements FileOperationHandler {
    readonly fileOperationOptions: FileOperationOptions = {
        willRename: { filters: [{ scheme: 'file', pattern: { glob: '**/*.hotroom', matches: 'file' } }, { scheme: 'file', pattern: { glob: '**', matches: 'folder' } }] },
    };

    constructor(private readonly services: HotroomServerSharedServices) {}

    willRenameFiles({ files }: RenameFilesParams): WorkspaceEdit {
        const { LangiumDocuments, Imports } = this.services.workspace;
        const moves = files.map(({ oldUri, newUri }) => ({ from: URI.parse(oldUri).toString(), to: URI.parse(newUri).toString() }));
        const after = (uri: URI): URI => {
            const key = uri.toString();
            const move = moves.find(({ from }) => key === from || key.startsWith(`${from}/`));
            return move ? URI.parse(move.to + key.slice(move.from.length)) : uri;
        };
        const changes: NonNullable<WorkspaceEdit['changes']> = {};
        for (const document of LangiumDocuments.all) {
            for (const { node, written, target } of Imports.uses(document)) {
                const cst = node.$cstNode;
                if (!cst || target.kind !== 'file') continue;
                const isMoved = after(document.uri).toString() !== document.uri.toString() || after(target.uri).toString() !== target.uri.toString();
                const path = relativePath(after(document.uri), after(target.uri));
                if (isMoved && path !== written) (changes[document.uri.toString()] ??= []).push({ range: rangeIn(document.textDocument, cst.offset, cst.end), newText: `"${path}"` });
            }
        }
        return { changes };
    }
}
