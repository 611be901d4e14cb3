import { spoken } from '../../../language/src/core/show.js';
import type { LangiumDocument } from 'langium';
import type { DocumentSymbolProvider, WorkspaceSymbolProvider } from 'langium/lsp';
import { SymbolKind, type DocumentSymbol, type WorkspaceSymbol, type WorkspaceSymbolParams } from 'vscode-languageserver';
import { outlineOf, type OutlineEntry } from '../../../language/src/editing/outline.js';
import * as ast from '../../../language/src/syntax/generated/ast.js';
import { baseTermOf, contextOf, nameWord } from '../../../language/src/syntax/words.js';
import { isStatement } from '../../../language/src/vocabulary/statements.js';
import { isBlockKind, isShared } from '../../../language/src/vocabulary/index.js';
import type { HotroomServerServices, HotroomServerSharedServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';

function symbolKind(kind: string): SymbolKind {
    switch (kind) {
        case 'job': case 'catalogue': return SymbolKind.Package;
        case 'variant': return SymbolKind.EnumMember;
        case 'parameter': return SymbolKind.TypeParameter;
        case 'let': return SymbolKind.Constant;
        case 'rule': return SymbolKind.Interface;
        case 'waive': return SymbolKind.Event;
        default:
    }
    return isShared(kind) ? SymbolKind.Class : SymbolKind.Object;
}

/** Jobs, series, catalogues and what stands in them, as the outline shows them. */
export class HotroomDocumentSymbols implements DocumentSymbolProvider {
    constructor(private readonly services: HotroomServerServices) {}

    getSymbols(document: LangiumDocument): DocumentSymbol[] {
        const toSymbol = (entry: OutlineEntry): DocumentSymbol => ({
            name: entry.name, detail: entry.detail, kind: symbolKind(entry.kind), children: entry.children.map(toSymbol),
            range: rangeIn(document.textDocument, entry.start, entry.end), selectionRange: rangeIn(document.textDocument, entry.headStart, entry.headEnd),
        });
        return outlineOf(this.services.editing.Reader.raw(document)).map(toSymbol);
    }
}

/** The word a fact goes by: the name of a block or a `let`, the finding a waiver accepts. */
function symbolWord(fact: ast.Fact): ast.Word | undefined {
    if (fact.key !== 'let' && fact.key !== 'waive') return nameWord(fact);
    const [word] = fact.phrases[0]?.terms ?? [];
    return !fact.braced && isStatement(contextOf(fact), fact.key) && ast.isWord(word) && word.ref.$refText !== '' ? word : undefined;
}

/** Named jobs, series, blocks, `let`s, house rules and waivers of every file. */
export class HotroomWorkspaceSymbols implements WorkspaceSymbolProvider {
    constructor(private readonly services: HotroomServerSharedServices) {}

    getSymbols({ query }: WorkspaceSymbolParams): WorkspaceSymbol[] {
        const { LangiumDocuments } = this.services.workspace;
        return LangiumDocuments.all.toArray().flatMap(document => {
            const root = document.parseResult.value;
            return ast.isFile(root) ? root.items.flatMap(item => this.within(item, undefined, document.uri.toString(), query)) : [];
        });
    }

    private within(fact: ast.Fact, container: string | undefined, uri: string, query: string): WorkspaceSymbol[] {
        const word = symbolWord(fact);
        const name = word?.ref.$refText;
        const range = word?.$cstNode?.range;
        const isMeant = name !== undefined && range !== undefined && (fact.braced || !isBlockKind(fact.key) || baseTermOf(fact) !== undefined) && this.services.lsp.FuzzyMatcher.match(query, name);
        return [
            ...(isMeant ? [{ name, kind: symbolKind(fact.key), location: { uri, range }, containerName: [fact.key === 'waive' ? 'waived' : spoken(fact.key), container && `in ${container}`].filter(Boolean).join(' ') }] : []),
            ...fact.body.flatMap(inner => this.within(inner, isBlockKind(fact.key) ? name ?? container : container, uri, query)),
        ];
    }
}
