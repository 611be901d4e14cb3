/** One line of a text: offsets of its first character and of its end, and what ends it. */
export interface TextLine { readonly start: number; readonly end: number; readonly lineEnd: string }

/** Lines of a text; the last has no line end and may be empty. */
export function linesOf(text: string): readonly TextLine[] {
    const lines: TextLine[] = [];
    let start = 0;
    for (const match of text.matchAll(/\r\n|\n|\r/g)) {
        lines.push({ start, end: match.index, lineEnd: match[0] });
        start = match.index + match[0].length;
    }
    lines.push({ start, end: text.length, lineEnd: '' });
    return lines;
}

/** Index of the line an offset stands in. */
export function lineAt(lines: readonly TextLine[], offset: number): number {
    let low = 0;
    let high = lines.length - 1;
    while (low < high) {
        const middle = (low + high + 1) >> 1;
        if ((lines[middle]?.start ?? Infinity) <= offset) low = middle; else high = middle - 1;
    }
    return low;
}

/** A change of text at UTF-16 offsets. */
export interface TextChange { readonly start: number; readonly end: number; readonly newText: string }

/** The text with changes made that do not overlap. */
export const applyChanges = (text: string, changes: readonly TextChange[]): string =>
    [...changes].sort((a, b) => b.start - a.start || b.end - a.end).reduce((result, { start, end, newText }) => result.slice(0, start) + newText + result.slice(end), text);

/** The smallest change that makes `from` (standing at `start`) into `to`; nothing when they are equal. */
export function smallestChange(start: number, from: string, to: string): TextChange | undefined {
    if (from === to) return undefined;
    let head = 0;
    while (head < from.length && head < to.length && from[head] === to[head]) head++;
    let tail = 0;
    while (tail < from.length - head && tail < to.length - head && from[from.length - 1 - tail] === to[to.length - 1 - tail]) tail++;
    return { start: start + head, end: start + from.length - tail, newText: to.slice(head, to.length - tail) };
}
