import { expect, test } from 'vitest';
import { displayWidth, printable } from '../../language/src/renderings/printable.js';
import { documentText, hang, tableText, wrap } from '../../language/src/renderings/report-text.js';
import type { Table } from '../../language/src/renderings/tables-document.js';

const table = (rows: readonly string[][], footer: readonly string[] = []): Table => ({
    id: 't', caption: 'Caption', columns: [{ id: 'a', label: 'Mark', align: 'start' }, { id: 'b', label: 'Length', align: 'end' }], rows: rows.map(cells => ({ cells: cells.map(text => ({ text })) })), footer,
});

test('columns are as wide as their widest text and figures end together', () => {
    expect(tableText(table([['A-1', '3"'], ['LONG-MARK', '12 1/2"']], ['sum', '15 1/2"']), 80)).toBe([
        'Caption', 'Mark        Length', '---------  -------', 'A-1             3"', 'LONG-MARK  12 1/2"', '---------  -------', 'sum        15 1/2"',
    ].join('\n'));
});
test('wide letters count two columns', () => {
    expect(tableText(table([['木材', '1'], ['abcd', '2']]), 80)).toBe('Caption\nMark  Length\n----  ------\n木材       1\nabcd       2');
});
test('a cell that does not fit goes on below, and a word is never cut', () => {
    const text = tableText(table([['one two three four five six seven', '1'], ['UNBREAKABLE-MARK-1', '2']]), 28);
    expect(text).toBe('Caption\nMark                  Length\n--------------------  ------\none two three four         1\nfive six seven\nUNBREAKABLE-MARK-1         2');
});
test('a table of long words is wider than asked for, but whole', () => {
    expect(tableText(table([['UNBREAKABLE-MARK-1', '2']]), 10)).toContain('UNBREAKABLE-MARK-1       2');
});
test('sentences stand below their row', () => {
    const prose: Table = { ...table([['A-1', 'measure from the floor to the rail']]), columns: [{ id: 'a', label: 'Mark', align: 'start' }, { id: 'm', label: 'Measure', align: 'start', isProse: true }] };
    expect(tableText(prose, 34)).toBe('Caption\nMark\n----\nA-1\n    Measure: measure from the\n             floor to the rail');
});
test('nothing a file says reaches the terminal as a command', () => {
    expect(tableText(table([['\u001b[2J', 'a\u202eb']]), 80)).not.toMatch(/[\u001b\u202e]/);
    expect(printable('a\u0000\u009b\ufeff\n')).toBe('a\\u{0}\\u{9b}\\u{feff}\\u{a}');
});
test.each([['', 0], ['abc', 3], ['木', 2], ['🪵', 2], ['e\u0301', 1], ['👩\u200d🔧', 4]])('width of %j', (text, width) => { expect(displayWidth(text)).toBe(width); });
test('wrapping keeps one line at least', () => { expect(wrap('', 10)).toEqual(['']); expect(hang('a b c', 4, '- ')).toEqual(['- a', '  b', '  c']); });
test('a document without tables says so', () => {
    expect(documentText({ title: 'T', tables: [], notes: [], cautions: ['hot'], csv: [] }, 80)).toBe('T\n=\n\nCautions\n- hot\n\nThere is nothing to cut in this job yet.\n');
});

test('a length is never broken between its whole inches and its fraction, nor from its millimetres', () => {
    expect(wrap('near edges 0", 68 1/4", 91" from', 20)).toEqual(['near edges 0",', '68 1/4", 91" from']);
    expect(wrap('near edges 0", 1943.5 mm', 20)).toEqual(['near edges 0",', '1943.5 mm']);
});
