import { TextDocument, URI, type LangiumDocuments } from 'langium';
import type { Location, Position, Range, TextEdit } from 'vscode-languageserver';
import type { Edit } from '../../language/src/core/finding.js';
import type { Span } from '../../language/src/core/span.js';

/** A place in one text as line and character. */
export const positionIn = (text: TextDocument, offset: number): Position => text.positionAt(offset);
/** A stretch of one text as lines and characters. Both protocols count UTF-16 units, so nothing is converted but the line. */
export const rangeIn = (text: TextDocument, start: number, end: number): Range => ({ start: text.positionAt(start), end: text.positionAt(end) });

/** A span in a text that is no document of the server, such as one of a revision. */
export const rangeOfText = (text: string, { uri, start, end }: Span): Range => rangeIn(TextDocument.create(uri, 'hotroom', 0, text), start, end);

/**
 * The one place where offsets become lines and characters and back. A span may lie in another file than the one asked about.
 */
export class Places {
    /** @param others texts that are no job files: settings */
    constructor(private readonly documents: LangiumDocuments, private readonly others: (uri: string) => TextDocument | undefined = () => undefined) {}

    text(uri: string): TextDocument | undefined {
        return this.documents.getDocument(this.parsed(uri))?.textDocument ?? this.others(uri);
    }
    /** Findings of one file speak of few others, again and again. */
    private parsed(uri: string): URI {
        let found = this.uris.get(uri);
        if (!found) {
            if (this.uris.size >= 64) this.uris.clear();
            this.uris.set(uri, found = URI.parse(uri));
        }
        return found;
    }
    private readonly uris = new Map<string, URI>();

    /** Line and character of a span; the start of its file when that file is not known. */
    range({ uri, start, end }: Span): Range {
        const text = this.text(uri);
        const nowhere: Position = { line: 0, character: 0 };
        return text ? rangeIn(text, start, end) : { start: nowhere, end: nowhere };
    }

    location(span: Span): Location {
        return { uri: span.uri, range: this.range(span) };
    }

    /** Edits by the file they change. */
    changes(edits: readonly Edit[]): Record<string, TextEdit[]> {
        const byFile: Record<string, TextEdit[]> = {};
        for (const { span, newText } of edits) (byFile[span.uri] ??= []).push({ range: this.range(span), newText });
        return byFile;
    }

    /** What stands at a span; empty when its file is not known. */
    textAt({ uri, start, end }: Span): string {
        return this.text(uri)?.getText().slice(start, end) ?? '';
    }
}
