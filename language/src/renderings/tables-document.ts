import type { Span } from '../core/span.js';

/** One column; figures stand at the end so that their last digits line up. */
export interface TableColumn {
    readonly id: string;
    readonly label: string;
    readonly align: 'start' | 'end';
    /** Sentences rather than figures: where room is scarce they stand below their row. */
    readonly isProse?: true;
    /** In a document that compares: whose text the cells of the column lead to. */
    readonly side?: 'before' | 'now';
}

/** What a cell shows, already rounded and written out; `sort` orders cells whose text does not sort as it should. */
export interface TableCell {
    readonly text: string;
    readonly sort?: number;
    /** The place its column's side leads to, as people read it: `birch.hotroom:42`. */
    readonly place?: string;
}

/** A row has one cell for each column. `at` is the text of the job that made it. */
export interface TableRow {
    readonly cells: readonly TableCell[];
    readonly at?: Span;
    /** In a document that compares: the text of the earlier side. */
    readonly before?: Span;
}

export interface Table {
    /** Unique in its document, kebab-case. */
    readonly id: string;
    readonly caption: string;
    readonly columns: readonly TableColumn[];
    readonly rows: readonly TableRow[];
    /** Either one text for each column, or lines across the table of another number than there are columns. */
    readonly footer?: readonly string[];
}

export interface CsvFile {
    readonly fileName: string;
    readonly text: string;
}

/** Tables ready to show in a page, a terminal or a text file. Offsets become lines and columns where it is shown. */
export interface TablesDocument {
    readonly title: string;
    readonly subtitle?: string;
    readonly revision?: string;
    readonly tables: readonly Table[];
    readonly notes: readonly string[];
    readonly cautions: readonly string[];
    readonly csv: readonly CsvFile[];
    /** What must stand on every page: below each table, and at the foot of each printed page. */
    readonly everyPage?: string;
    /** What is said in place of tables when there are none. */
    readonly whenEmpty?: string;
}

export const cell = (text: string, sort?: number): TableCell => sort === undefined ? { text } : { text, sort };

/**
 * Lines across the whole table. As many lines as columns would be read as one text a column, so then the last two are joined, or an empty one added.
 */
export function footerLines(lines: readonly string[], columns: readonly TableColumn[]): readonly string[] {
    if (lines.length !== columns.length) return lines;
    return lines.length === 1 ? [...lines, ''] : [...lines.slice(0, -2), lines.slice(-2).join(' ')];
}
