import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toCsv } from '../../language/src/renderings/csv.js';
import { parseCsv } from './parse-csv.js';

// RFC 4180, section 2: rules 5 to 7 (quotes), rule 1 and 2 (line ends)
test.each([
    ['plain', 'plain'], ['1,5', '"1,5"'], ['7\'6"', '"7\'6"""'], ['two\nlines', '"two\nlines"'], ['cr\rhere', '"cr\rhere"'], [' spaces ', ' spaces '], ['', ''], ['≈ 12 × 3 🪵', '≈ 12 × 3 🪵'],
])('%j is written %j', (text, written) => { expect(toCsv(['a'], [[text]])).toBe(`a\r\n${written}\r\n`); });

test.each(['=1+1', '+1', '-1', '@cmd', '\tx', '=HYPERLINK("http://x","y")'])('%j is no formula', text => {
    const [, record] = parseCsv(toCsv(['a'], [[text]]));
    expect(record).toEqual([`'${text}`]);
});

test('a figure given as a number stays a number, also below zero', () => {
    expect(toCsv(['a', 'b', 'c'], [[-1.5, 0, undefined]])).toBe('a,b,c\r\n-1.5,0,\r\n');
});

test('whatever is written is read back', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.string({ unit: 'binary' }), fc.string()), { minLength: 1 }), records => {
        const safe = records.map(([a, b]) => [a, b].map(text => /^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text));
        expect(parseCsv(toCsv(['a', 'b'], records))).toEqual([['a', 'b'], ...safe]);
    }));
});

test('a record that does not fit its header is a defect', () => { expect(() => toCsv(['a', 'b'], [['1']])).toThrow(/1 fields/); });
