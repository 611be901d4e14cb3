import { expect, test } from 'vitest';
import { pageMessageSchema, subjectSchema, tablesDocumentSchema } from '../../client/src/tables-document.js';

const sound = {
    title: 'Birch Point bathhouse',
    tables: [{
        id: 'cuts', caption: 'Cut list', columns: [{ id: 'mark', label: 'Mark', align: 'start' }],
        rows: [{ cells: [{ text: 'UPPER-RAIL-1' }], at: { uri: 'file:///a.hotroom', range: { start: { line: 1, character: 2 }, end: { line: 1, character: 9 } } } }],
    }],
    notes: [], cautions: ['The heater\'s own manual decides.'], csv: [{ fileName: 'cuts.csv', text: 'Mark\r\n' }],
};
const table = sound.tables[0]!;

test('accepts what the server sends', () => {
    expect(tablesDocumentSchema.parse(sound)).toEqual(sound);
});

test.each([
    ['nothing', null],
    ['a title that is no text', { ...sound, title: 5 }],
    ['no cautions', { ...sound, cautions: undefined }],
    ['a table without columns', { ...sound, tables: [{ ...table, columns: [], rows: [] }] }],
    ['a row with a cell too many', { ...sound, tables: [{ ...table, rows: [{ cells: [{ text: 'a' }, { text: 'b' }] }] }] }],
    ['two tables of one id', { ...sound, tables: [table, table] }],
    ['a line before the first', { ...sound, tables: [{ ...table, rows: [{ cells: [{ text: 'a' }], at: { uri: 'file:///a', range: { start: { line: -1, character: 0 }, end: { line: 0, character: 0 } } } }] }] }],
    ['a figure that is none', { ...sound, tables: [{ ...table, rows: [{ cells: [{ text: 'a', sort: Number.NaN }] }] }] }],
])('refuses %s', (_what, value) => {
    expect(tablesDocumentSchema.safeParse(value).success).toBe(false);
});

test('a page names a row, never a file', () => {
    const message = { type: 'goTo', picture: 1, table: 'cuts', row: 0, side: 'now', moveFocus: true };
    expect(pageMessageSchema.parse({ ...message, uri: 'file:///secret' })).toEqual(message);
    expect(pageMessageSchema.safeParse({ type: 'run', command: 'x' }).success).toBe(false);
});

test('a kept page state gives back its subject and nothing else', () => {
    expect(subjectSchema.parse({ uri: 'file:///a.hotroom', job: 'birch_point', filter: 'x', sorts: {} })).toEqual({ uri: 'file:///a.hotroom', job: 'birch_point' });
    expect(subjectSchema.safeParse({ filter: 'x' }).success).toBe(false);
});
