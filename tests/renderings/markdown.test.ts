import { expect, test } from 'vitest';
import { documentMarkdown, escapeMarkdown, tableMarkdown } from '../../language/src/renderings/markdown.js';
import type { Table } from '../../language/src/renderings/tables-document.js';

const table: Table = {
    id: 't', caption: 'Boards | to pull', columns: [{ id: 'a', label: 'Mark', align: 'start' }, { id: 'b', label: 'Count', align: 'end' }],
    rows: [{ cells: [{ text: 'A|B' }, { text: '3' }] }, { cells: [{ text: 'two\nlines' }, { text: '' }] }], footer: ['one line', 'another', 'third'],
};

test('a table with escaped cells and its footer below', () => {
    expect(tableMarkdown(table)).toBe('| Mark | Count |\n| --- | ---: |\n| A\\|B | 3 |\n| two lines |  |\n\none line\n\nanother\n\nthird');
});
test('a footer of one text a column is the last row', () => {
    expect(tableMarkdown({ ...table, rows: [], footer: ['all', '3'] })).toBe('| Mark | Count |\n| --- | ---: |\n| all | 3 |');
});

// CommonMark 0.31.2: 2.4 backslash escapes, 4.2 headings, 5.2 list items, 6.6 raw HTML, 6.2 emphasis
test.each([
    ['<script>', '\\<script\\>'], ['[a](b)', '\\[a\\](b)'], ['*a* ~b~ `c`', '\\*a\\* \\~b\\~ \\`c\\`'], ['oak_2x4', 'oak_2x4'], ['_a_', '\\_a\\_'], ['# no', '\\# no'],
    ['- no', '\\- no'], ['1. no', '1\\. no'], ['12) no', '12\\) no'], ['2" x 4"', '2" x 4"'], ['a\\b', 'a\\\\b'], ['&amp;', '\\&amp;'], ['\u001b[31m', '\\\\u{1b}\\[31m'],
])('%j is written %j', (text, written) => { expect(escapeMarkdown(text)).toBe(written); });

test('the document begins with its cautions', () => {
    expect(documentMarkdown({ title: 'Birch #1', subtitle: 'Job b', revision: 'B', tables: [table], notes: ['note'], cautions: ['hot'], csv: [] })).toBe([
        '# Birch #1', '', 'Revision B · Job b', '', '## Cautions', '', '- hot', '', '## Boards \\| to pull', '', ...tableMarkdown(table).split('\n'), '', '## Notes', '', '- note', '',
    ].join('\n'));
});
