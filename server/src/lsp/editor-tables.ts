import type { Location } from 'vscode-languageserver';
import type { Span } from '../../../language/src/core/span.js';
import type { Table, TableRow, TablesDocument } from '../../../language/src/renderings/tables-document.js';
import type { Places } from '../to-lsp.js';

type EditorRow = Omit<TableRow, 'at' | 'before'> & { readonly at?: Location; readonly before?: Location };
/** Tables with lines and characters in place of offsets, as an editor shows them. */
export type EditorTables<D extends TablesDocument = TablesDocument> = Omit<D, 'tables'> & { readonly tables: readonly (Omit<Table, 'rows'> & { readonly rows: readonly EditorRow[] })[] };

/** @param locate the place of the earlier side, in a document that compares */
export function toEditor<D extends TablesDocument>(document: D, places: Places, locate: (span: Span) => Location = span => places.location(span)): EditorTables<D> {
    return {
        ...document,
        tables: document.tables.map(table => ({
            ...table, rows: table.rows.map(({ at, before, ...row }): EditorRow => ({ ...row, ...(at && { at: places.location(at) }), ...(before && { before: locate(before) }) })),
        })),
    };
}
