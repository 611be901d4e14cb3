import { spoken } from '../../../language/src/core/show.js';
import type { LangiumDocument } from 'langium';
import type { CallHierarchyProvider } from 'langium/lsp';
import { SymbolKind, type CallHierarchyIncomingCall, type CallHierarchyIncomingCallsParams, type CallHierarchyItem, type CallHierarchyOutgoingCall, type CallHierarchyOutgoingCallsParams, type CallHierarchyPrepareParams } from 'vscode-languageserver';
import type { TextLayer } from '../../../language/src/editing/name-texts.js';
import { callOf, callableAt, callableFrom, madeFrom } from '../../../language/src/editing/series-calls.js';
import * as ast from '../../../language/src/syntax/generated/ast.js';
import { nameWord, textOf } from '../../../language/src/syntax/words.js';
import type { HotroomServerServices } from '../services.js';
import { NamesInSight } from './names.js';

/** A series is called by the jobs and series made from it. */
export class HotroomCallHierarchy implements CallHierarchyProvider {
    constructor(private readonly services: HotroomServerServices) {}

    prepareCallHierarchy(document: LangiumDocument, { position }: CallHierarchyPrepareParams): CallHierarchyItem[] | undefined {
        const { library } = new NamesInSight(this.services);
        const found = callableAt(document.uri.toString(), document.textDocument.offsetAt(position), library);
        return found && [this.item(found)];
    }

    incomingCalls({ item }: CallHierarchyIncomingCallsParams): CallHierarchyIncomingCall[] | undefined {
        const { library, uris } = new NamesInSight(this.services);
        const own = this.found(item, library);
        return own && madeFrom(own.fact, uris, library).map(({ other, from }) => ({ from: this.item(other), fromRanges: [this.services.editing.Places.range({ uri: other.uri, ...from })] }));
    }

    outgoingCalls({ item }: CallHierarchyOutgoingCallsParams): CallHierarchyOutgoingCall[] | undefined {
        const { library } = new NamesInSight(this.services);
        const own = this.found(item, library);
        const call = own && callOf(own.fact, own.uri, library);
        return call && [{ to: this.item(call.other), fromRanges: [this.services.editing.Places.range({ uri: item.uri, ...call.from })] }];
    }

    /** The text an item was made of, as it is now. */
    private found({ uri, range }: CallHierarchyItem, library: NamesInSight['library']): TextLayer | undefined {
        const text = this.services.editing.Places.text(uri);
        return text && callableFrom(uri, text.offsetAt(range.start), library);
    }

    private item({ fact, uri }: TextLayer): CallHierarchyItem {
        const { Places } = this.services.editing;
        const [whole, word] = [fact.$cstNode, nameWord(fact)];
        const span = { uri, start: whole?.offset ?? 0, end: whole?.end ?? 0 };
        const name = word?.$cstNode;
        const title = fact.phrases[0]?.terms.find(ast.isText);
        return {
            name: word?.ref.$refText ?? spoken(fact.key), kind: fact.key === 'series' ? SymbolKind.Class : SymbolKind.Package, uri,
            detail: [spoken(fact.key), title ? textOf(title) : ''].filter(Boolean).join(' · '), range: Places.range(span),
            selectionRange: Places.range(name ? { uri, start: name.offset, end: name.end } : { ...span, end: span.start + fact.key.length }),
        };
    }
}
