import type { LangiumDocument } from 'langium';
import type { CompletionProvider, CompletionProviderOptions } from 'langium/lsp';
import { CompletionItemKind, CompletionTriggerKind, InsertTextFormat, type CompletionItem, type CompletionList, type CompletionParams } from 'vscode-languageserver';
import { completionsAt } from '../../../language/src/editing/complete.js';
import type { Offer } from '../../../language/src/editing/offer.js';
import type { HotroomServerServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';

const kinds: Readonly<Record<Offer['kind'], CompletionItemKind>> = {
    block: CompletionItemKind.Struct, fact: CompletionItemKind.Property, word: CompletionItemKind.EnumMember, name: CompletionItemKind.Reference,
    wall: CompletionItemKind.Constant, unit: CompletionItemKind.Unit, file: CompletionItemKind.File, value: CompletionItemKind.Variable,
    function: CompletionItemKind.Function, operator: CompletionItemKind.Operator,
};

export class HotroomCompletion implements CompletionProvider {
    readonly completionOptions: CompletionProviderOptions = { triggerCharacters: [' ', '"', '/', ',', '.', '(', '='] };

    constructor(private readonly services: HotroomServerServices) {}

    getCompletion(document: LangiumDocument, { position, context }: CompletionParams): CompletionList {
        const { Reader } = this.services.editing;
        const offset = document.textDocument.offsetAt(position);
        const isTyped = context?.triggerKind === CompletionTriggerKind.TriggerCharacter;
        // A space that indents a line, or a quote that opens a title, asks for nothing.
        const offers = completionsAt(Reader.raw(document), offset, Reader.sight(document)).filter(offer => !isTyped || (offer.kind !== 'fact' && offer.kind !== 'block' && !(offer.isQuiet && context.triggerCharacter === ' ')));
        const useSnippets = this.services.editing.client.hasSnippets;
        const items = offers.map((offer, i): CompletionItem => ({
            label: offer.label, kind: kinds[offer.kind], detail: offer.detail, sortText: String(i).padStart(4, '0'),
            ...(offer.doc !== '' && { documentation: { kind: 'markdown', value: offer.doc } }),
            filterText: offer.filter ?? (offer.kind === 'file' ? offer.text : offer.label),
            // Only an editor that says it knows the command is told to ask again behind the point.
            ...(offer.leadsOn && this.services.editing.client.asksAgain && { command: { title: 'Go on with the name', command: 'editor.action.triggerSuggest' } }),
            insertTextFormat: offer.isSnippet && useSnippets ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
            textEdit: { range: rangeIn(document.textDocument, offer.start, offer.end), newText: offer.isSnippet && !useSnippets ? offer.label : offer.text },
        }));
        return { isIncomplete: false, items };
    }
}
