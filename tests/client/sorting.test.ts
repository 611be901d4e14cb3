import fc from 'fast-check';
import { expect, test } from 'vitest';
import { matches, nextSort, sortedRows } from '../../client/src/page/sorting.js';

const row = (text: string, sort?: number): { cells: { text: string; sort?: number }[] } => ({ cells: [sort === undefined ? { text } : { text, sort }] });
const order = (rows: ReturnType<typeof row>[], direction: 'ascending' | 'descending'): string[] =>
    sortedRows(rows, { column: 0, direction }).map(index => rows[index]!.cells[0]!.text);

test('marks sort by their running number, not letter by letter', () => {
    expect(order([row('FRONT-10'), row('FRONT-2'), row('BACK-1')], 'ascending')).toEqual(['BACK-1', 'FRONT-2', 'FRONT-10']);
});

test('figures sort by value, and a row without one comes last either way', () => {
    const rows = [row('9"', 9), row('none'), row('3 1/2"', 3.5), row('10"', 10)];
    expect(order(rows, 'ascending')).toEqual(['3 1/2"', '9"', '10"', 'none']);
    expect(order(rows, 'descending')).toEqual(['10"', '9"', '3 1/2"', 'none']);
});

test('without a sort the rows stand as given', () => {
    expect(sortedRows([row('b'), row('a')], undefined)).toEqual([0, 1]);
});

test('sorting loses no row, and equal rows keep their order both ways', () => {
    const rows = fc.array(fc.record({ text: fc.constantFrom('A-1', 'A-2', 'B-1'), sort: fc.option(fc.integer({ min: 0, max: 3 }), { nil: undefined }) }));
    fc.assert(fc.property(rows, fc.constantFrom('ascending' as const, 'descending' as const), (given, direction) => {
        const all = given.map(({ text, sort }) => row(text, sort));
        const sorted = sortedRows(all, { column: 0, direction });
        expect([...sorted].sort((a, b) => a - b)).toEqual(all.map((_, index) => index));
        const key = (index: number): string => (all.some(other => other.cells[0]!.sort !== undefined) ? String(all[index]!.cells[0]!.sort) : all[index]!.cells[0]!.text);
        for (const [at, index] of sorted.entries()) {
            const next = sorted[at + 1];
            if (next !== undefined && key(index) === key(next)) expect(index).toBeLessThan(next);
        }
    }));
});

test('a header goes ascending, descending, and back', () => {
    const first = nextSort(undefined, 2);
    const second = nextSort(first, 2);
    expect([first?.direction, second?.direction, nextSort(second, 2)]).toEqual(['ascending', 'descending', undefined]);
    expect(nextSort(second, 1)).toEqual({ column: 1, direction: 'ascending' });
});

test.each([
    ['rail', true], ['RAIL upper', true], ['upper 34', true], ['fascia', false], ['rail fascia', false], ['', true],
])('filter "%s" matches: %s', (filter, expected) => {
    expect(matches({ cells: [{ text: 'UPPER-RAIL-1' }, { text: '34 3/4"' }] }, filter)).toBe(expected);
});
