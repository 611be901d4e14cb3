import { displayWidth, printable } from './printable.js';
import type { Table, TablesDocument } from './tables-document.js';

const gap = '  ';
/** A column is not made narrower than this to fit. */
const leastWidth = 10;

/** The document as plain text for a terminal or a print-out; tables are fitted to `width` columns as far as their words allow. */
export function documentText({ title, subtitle, revision, tables, notes, cautions, everyPage, whenEmpty = 'There is nothing to cut in this job yet.' }: TablesDocument, width: number): string {
    const head = [subtitle, revision === undefined ? undefined : `revision ${revision}`].filter(text => text !== undefined).join(', ');
    const list = (heading: string, lines: readonly string[]): string[] => lines.length === 0 ? [] : [heading, ...lines.flatMap(line => hang(line, width, '- ')), ''];
    return [
        ...wrap(printable(title), width), underline(title, width), ...(head === '' ? [] : wrap(printable(head), width)), '',
        ...list('Cautions', cautions),
        ...tables.flatMap(table => [tableText(table, width), ...(everyPage === undefined ? [] : wrap(printable(everyPage), width)), '']),
        ...(tables.length === 0 ? [...wrap(whenEmpty, width), ''] : []),
        ...list('Notes', notes),
    ].join('\n').replace(/\n+$/, '\n');
}

const underline = (title: string, width: number): string => '='.repeat(Math.min(displayWidth(printable(title)), width));

/** One table with its caption and footer; cells that do not fit go on in the next line of their column, sentences stand below their row. */
export function tableText({ caption, columns, rows, footer = [] }: Table, width: number): string {
    const isPerColumn = footer.length === columns.length;
    const shown = columns.map((_, index) => index).filter(index => !columns[index]?.isProse);
    const pick = (texts: readonly string[]): string[] => shown.map(index => printable(texts[index] ?? ''));
    const labels = pick(columns.map(({ label }) => label));
    const cells = rows.map(row => pick(row.cells.map(({ text }) => text)));
    const last = isPerColumn ? [pick(footer)] : [];
    const widths = fit([labels, ...cells, ...last], width);
    const aligns = shown.map(index => columns[index]?.align ?? 'start');
    const line = (row: readonly string[]): string[] => rowLines(row, widths, aligns);
    const rule = widths.map(size => '-'.repeat(size)).join(gap);
    return [
        ...wrap(printable(caption), width), ...line(labels), rule,
        ...rows.flatMap((row, index) => [...line(cells[index] ?? []), ...columns.flatMap(({ label, isProse }, column) => {
            const text = row.cells[column]?.text ?? '';
            return isProse && text !== '' ? hang(text, width, `    ${label}: `) : [];
        })]),
        ...(isPerColumn ? [rule, ...last.flatMap(line)] : footer.filter(text => text !== '').flatMap(text => wrap(printable(text), width))),
    ].join('\n');
}

/** Takes width from the widest column, a step at a time, while the table is too wide and a column has words left to break. */
function fit(rows: readonly (readonly string[])[], width: number): readonly number[] {
    const natural = (rows[0] ?? []).map((_, column) => Math.max(...rows.map(row => displayWidth(row[column] ?? ''))));
    const widths = [...natural];
    const least = natural.map((size, column) => Math.min(size, Math.max(leastWidth, ...rows.map(row => longestWord(row[column] ?? '')))));
    const total = (): number => widths.reduce((sum, size) => sum + size, gap.length * Math.max(0, widths.length - 1));
    while (total() > width) {
        const [widest] = widths.map((_, index) => index).filter(index => (widths[index] ?? 0) > (least[index] ?? 0)).sort((a, b) => (widths[b] ?? 0) - (widths[a] ?? 0));
        if (widest === undefined) break;
        widths[widest] = (widths[widest] ?? 0) - 1;
    }
    return widths;
}
const longestWord = (text: string): number => Math.max(0, ...words(text).map(displayWidth));

/** What a line is broken between. A fraction stays with its whole inches and a figure with its millimetres: read alone, either is another length. */
const words = (text: string): readonly string[] => text.split(/(?<!\d) | (?!\d+\/\d+["']|mm\b)/);

function rowLines(row: readonly string[], widths: readonly number[], aligns: readonly ('start' | 'end')[]): string[] {
    const wrapped = row.map((text, column) => wrap(text, widths[column] ?? 0));
    return Array.from({ length: Math.max(1, ...wrapped.map(lines => lines.length)) }, (_, index) => wrapped.map((lines, column) => {
        const text = lines[index] ?? '';
        const space = ' '.repeat(Math.max(0, (widths[column] ?? 0) - displayWidth(text)));
        return aligns[column] === 'end' ? space + text : text + space;
    }).join(gap).trimEnd());
}

/** Breaks at spaces; a word longer than the line stays whole, so that a mark or a length is never cut in two. At least one line. */
export function wrap(text: string, width: number): string[] {
    const lines: string[] = [];
    let line = '';
    for (const word of words(text)) {
        if (line === '') line = word;
        else if (displayWidth(line) + 1 + displayWidth(word) <= width) line += ` ${word}`;
        else { lines.push(line); line = word; }
    }
    return [...lines, line];
}

/** Wrapped text behind a mark, its further lines set in. */
export function hang(text: string, width: number, mark: string): string[] {
    return wrap(printable(text), width - mark.length).map((line, index) => (index === 0 ? mark : ' '.repeat(mark.length)) + line);
}
