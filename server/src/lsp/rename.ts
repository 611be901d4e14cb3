import { AstUtils, type LangiumDocument } from 'langium';
import type { RenameProvider } from 'langium/lsp';
import { LSPErrorCodes, ResponseError, type Range, type RenameParams, type TextDocumentPositionParams, type WorkspaceEdit } from 'vscode-languageserver';
import * as ast from '../../../language/src/syntax/generated/ast.js';
import { nameOf, parentOf } from '../../../language/src/syntax/words.js';
import { kindWords } from '../../../language/src/editing/describe.js';
import type { HotroomServerServices } from '../services.js';
import { namedPlaceAt } from './declarations.js';
import { placesOfName } from './references.js';

const namePattern = /^[A-Za-z_][A-Za-z0-9_]*(-[A-Za-z][A-Za-z0-9_]*)*$/;

/** Gives a block another name, here and in every file that names it. */
export class HotroomRename implements RenameProvider {
    constructor(private readonly services: HotroomServerServices) {}

    prepareRename(document: LangiumDocument, { position }: TextDocumentPositionParams): Range | undefined {
        return namedPlaceAt(document, document.textDocument.offsetAt(position))?.word.range;
    }

    rename(document: LangiumDocument, { position, newName }: RenameParams): WorkspaceEdit | undefined {
        const offset = document.textDocument.offsetAt(position);
        const place = namedPlaceAt(document, offset);
        if (!place) return undefined;
        const trouble = whyNot(place.block, newName);
        if (trouble !== undefined) throw new ResponseError(LSPErrorCodes.RequestFailed, trouble);
        const changes: NonNullable<WorkspaceEdit['changes']> = {};
        for (const { sourceUri, segment } of placesOfName(this.services, document, offset, { includeDeclaration: true })) (changes[sourceUri.toString()] ??= []).push({ range: segment.range, newText: newName });
        return { changes };
    }
}

/** Why a block cannot have a name, or nothing. */
function whyNot(block: ast.Fact, name: string): string | undefined {
    if (!namePattern.test(name)) return `‘${name}’ is not a name. A name is made of letters, digits and _, and begins with a letter.`;
    if (name === 'on' || name === 'x' || name === 'to') return `‘${name}’ has a meaning of its own and cannot be a name.`;
    const parent = parentOf(block);
    const root = AstUtils.getDocument(block).parseResult.value;
    const siblings = parent ? parent.body : ast.isFile(root) ? root.items : [];
    const taken = siblings.find(other => other !== block && nameOf(other) === name);
    return taken ? `The name ${name} is taken by another ${kindWords(taken.key)}.` : undefined;
}
