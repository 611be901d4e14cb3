/** The order of a table's rows. Pure: the page and its tests share it. */
import type { TablesDocument } from '../tables-document.js';

type Row = TablesDocument['tables'][number]['rows'][number];

export interface Sort {
    readonly column: number;
    readonly direction: 'ascending' | 'descending';
}

// The language is fixed so that a list reads the same on every machine; `numeric` puts FRONT-2 before FRONT-10.
const words = new Intl.Collator('en', { numeric: true });

/**
 * @param sort the column and direction, or `undefined` for the order the server gave.
 * @returns the rows' original indices in the order to show them. Equal rows keep their given order either way round;
 * rows without a figure come last in a column of figures.
 */
export function sortedRows(rows: readonly Row[], sort: Sort | undefined): readonly number[] {
    const indices = rows.map((_, index) => index);
    if (!sort) return indices;
    const cell = (index: number): Row['cells'][number] | undefined => rows[index]?.cells[sort.column];
    const isFigures = rows.some(row => row.cells[sort.column]?.sort !== undefined);
    const turn = sort.direction === 'ascending' ? 1 : -1;
    return indices.sort((a, b) => {
        if (!isFigures) return turn * words.compare(cell(a)?.text ?? '', cell(b)?.text ?? '');
        const [left, right] = [cell(a)?.sort, cell(b)?.sort];
        if (left === undefined || right === undefined) return Number(left === undefined) - Number(right === undefined);
        return turn * (left - right);
    });
}

/** Pressing a header goes ascending, descending, and back to the given order. */
export function nextSort(current: Sort | undefined, column: number): Sort | undefined {
    if (current?.column !== column) return { column, direction: 'ascending' };
    return current.direction === 'ascending' ? { column, direction: 'descending' } : undefined;
}

/** @returns whether a row holds every word of the filter, in any cell and either case. */
export function matches(row: Row, filter: string): boolean {
    const text = row.cells.map(cell => cell.text).join('\n').toLowerCase();
    return filter.toLowerCase().split(/\s+/).every(word => text.includes(word));
}
