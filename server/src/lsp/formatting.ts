import type { LangiumDocument } from 'langium';
import type { Formatter } from 'langium/lsp';
import type { DocumentFormattingParams, DocumentOnTypeFormattingOptions, DocumentOnTypeFormattingParams, DocumentRangeFormattingParams, FormattingOptions, TextEdit } from 'vscode-languageserver';
import { formatText } from '../../../language/src/editing/format.js';
import type { HotroomServerServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';

export class HotroomFormatter implements Formatter {
    readonly formatOnTypeOptions: DocumentOnTypeFormattingOptions = { firstTriggerCharacter: '}', moreTriggerCharacter: ['\n'] };

    constructor(private readonly services: HotroomServerServices) {}

    formatDocument(document: LangiumDocument, { options }: DocumentFormattingParams): TextEdit[] {
        return this.format(document, options);
    }

    formatDocumentRange(document: LangiumDocument, { options, range }: DocumentRangeFormattingParams): TextEdit[] {
        // A selection of whole lines ends at the beginning of the next.
        const last = range.end.character === 0 && range.end.line > range.start.line ? range.end.line - 1 : range.end.line;
        return this.format(document, options, { first: range.start.line, last });
    }

    /** The line just closed with a brace, or the line just left; never the one the cursor is on after a line end. */
    formatDocumentOnType(document: LangiumDocument, { options, position, ch }: DocumentOnTypeFormattingParams): TextEdit[] {
        const line = ch === '}' ? position.line : position.line - 1;
        return line < 0 ? [] : this.format(document, options, { first: line, last: line });
    }

    private format(document: LangiumDocument, { insertSpaces, tabSize }: FormattingOptions, lines?: { first: number; last: number }): TextEdit[] {
        const { Reader } = this.services.editing;
        const indent = insertSpaces ? ' '.repeat(Math.min(Math.max(1, tabSize), 16)) : '\t';
        return formatText(Reader.raw(document), Reader.lexer, { indent, ...(lines && { lines }) })
            .map(({ start, end, newText }) => ({ range: rangeIn(document.textDocument, start, end), newText }));
    }
}
