/** A place in a text as people and editors count: from 0, columns in UTF-16 units. */
export interface TextPosition {
    readonly line: number;
    readonly character: number;
}

/** Lines of one text. A line ends at LF, CR LF or a lone CR, as editors take it. */
export class TextLines {
    private readonly starts: readonly number[];

    constructor(readonly text: string) {
        const starts = [0];
        for (const match of text.matchAll(/\r\n|\r|\n/g)) starts.push(match.index + match[0].length);
        this.starts = starts;
    }

    get count(): number { return this.starts.length; }

    /** Place of an offset; one outside the text is taken to its nearer end, one inside a line break to the end of its line. */
    at(offset: number): TextPosition {
        const within = Math.max(0, Math.min(offset, this.text.length));
        let low = 0;
        let high = this.starts.length - 1;
        while (low < high) {
            const middle = Math.ceil((low + high) / 2);
            if ((this.starts[middle] ?? 0) <= within) low = middle; else high = middle - 1;
        }
        return { line: low, character: Math.min(within - (this.starts[low] ?? 0), this.line(low).length) };
    }

    /** Text of a line without its break; empty when there is no such line. */
    line(index: number): string {
        const start = this.starts[index];
        if (start === undefined) return '';
        return this.text.slice(start, this.starts[index + 1] ?? this.text.length).replace(/(?:\r\n|\r|\n)$/, '');
    }
}
