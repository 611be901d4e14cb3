/**
 * What the language server answers when it is asked for a job's cut list or a comparison, and what the page and this
 * extension say to each other. Both cross a process border, so each is checked on receipt and nothing unchecked is used.
 */
import * as z from 'zod/mini';

const name = z.string().check(z.minLength(1));
const index = z.int().check(z.nonnegative());
const position = z.object({ line: index, character: index });

export const placeSchema = z.object({ uri: name, range: z.object({ start: position, end: position }) });

const columnSchema = z.object({ id: name, label: z.string(), align: z.enum(['start', 'end']), isProse: z.optional(z.boolean()), side: z.optional(z.enum(['before', 'now'])) });

const rowSchema = z.object({
    cells: z.array(z.object({ text: z.string(), sort: z.optional(z.number()), place: z.optional(z.string()) })),
    at: z.optional(placeSchema),
    before: z.optional(placeSchema),
});

const tableSchema = z.object({
    id: name,
    caption: z.string(),
    columns: z.array(columnSchema).check(z.minLength(1)),
    rows: z.array(rowSchema),
    footer: z.optional(z.array(z.string())),
}).check(z.refine(table => table.rows.every(row => row.cells.length === table.columns.length), {
    error: 'a row has more or fewer cells than the table has columns',
}));

/** The answer to `hotroom.server.cutList` and `hotroom.server.compare`: tables ready to show, every figure already rounded and written out by the server. */
export const tablesDocumentSchema = z.object({
    title: z.string(),
    subtitle: z.optional(z.string()),
    revision: z.optional(z.string()),
    tables: z.array(tableSchema).check(z.refine(tables => new Set(tables.map(table => table.id)).size === tables.length, {
        error: 'two tables have the same id',
    })),
    notes: z.array(z.string()),
    cautions: z.array(z.string()),
    csv: z.array(z.object({ fileName: name, text: z.string() })),
    stale: z.optional(z.boolean()),
    markdown: z.optional(z.string()),
});

export type TablesDocument = z.infer<typeof tablesDocumentSchema>;
export type Place = z.infer<typeof placeSchema>;

/** Which list a page shows: a document, and one of its jobs when it has several. Kept by the page across a reload. */
export const subjectSchema = z.object({ uri: name, job: z.optional(name) });
export type Subject = z.infer<typeof subjectSchema>;

/** What a job or a whole file is compared with. */
export const comparedWithSchema = z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('last-commit') }),
    z.object({ kind: z.literal('branch-base') }),
    z.object({ kind: z.literal('revision'), name }),
    z.object({ kind: z.literal('file'), uri: name, job: z.optional(name) }),
]);
export const comparisonSubjectSchema = z.object({ uri: name, job: z.optional(name), with: comparedWithSchema });
export type ComparisonSubject = z.infer<typeof comparisonSubjectSchema>;

/** The answer to `hotroom.server.jobs`. */
export const jobListSchema = z.array(z.object({ uri: name, job: name, title: z.optional(z.string()) }));
export type ListedJob = z.infer<typeof jobListSchema>[number];

/** What the page may ask of the extension. Rows are named by table and index: a page never names a file. */
export const pageMessageSchema = z.discriminatedUnion('type', [
    z.object({ type: z.literal('ready') }),
    z.object({ type: z.literal('goTo'), picture: index, table: name, row: index, side: z.enum(['before', 'now']), moveFocus: z.boolean() }),
    z.object({ type: z.literal('saveCsv') }),
    z.object({ type: z.literal('copyMarkdown') }),
    z.object({ type: z.literal('showTexts') }),
    z.object({ type: z.literal('refresh') }),
    z.object({ type: z.literal('cancel') }),
    z.object({ type: z.literal('showLog') }),
]);
export type PageMessage = z.infer<typeof pageMessageSchema>;
