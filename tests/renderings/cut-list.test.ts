import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, mm, zero } from '../../language/src/core/length.js';
import type { Notch, Part, PartPlace, Section } from '../../language/src/engines/parts/part.js';
import { compareMarks, cutListGroups, showEnds, showNotches } from '../../language/src/renderings/cut-list.js';
import { cutListCsv, cutListTables } from '../../language/src/renderings/cut-list-tables.js';
import { showPartPlace } from '../../language/src/renderings/part-place.js';
import { tableText } from '../../language/src/renderings/report-text.js';
import { length, metricSection, noStock, offer, part } from './small-parts.js';
import { parseCsv } from './parse-csv.js';

const lines = (parts: readonly Part[]) => parts.map(one => ({ part: one }));
const marks = (parts: readonly Part[]): string[][] => cutListGroups(lines(parts)).map(group => group.lines.map(line => line.part.mark));

const slat = { thickness: inches(0, 3, 4), width: inches(3, 1, 2) };
const mixed: readonly Part[] = [
    part('LOOSE-1', noStock),
    part('UPPER-SLAT-1', { material: { stock: 'ash_1x4' }, section: slat, nominal: '1x4', count: 5, length: inches(76, 1, 2) }),
    part('UPPER-BEARER-10'), part('UPPER-BEARER-2'), part('UPPER-RAIL-1', { length: inches(73, 1, 2) }),
    part('RIP-1', { section: { thickness: inches(1, 1, 2), width: inches(1, 1, 2) }, nominal: '2x2' }),
];

test('groups by stock, the heaviest section first, then the longest piece, then the mark; what has no stock comes last', () => {
    expect(marks(mixed)).toEqual([['UPPER-SLAT-1'], ['UPPER-RAIL-1', 'UPPER-BEARER-2', 'UPPER-BEARER-10'], ['RIP-1'], ['LOOSE-1']]);
});

test('the order of the parts makes no difference', () => {
    fc.assert(fc.property(fc.shuffledSubarray([...mixed], { minLength: mixed.length }), shuffled => {
        expect(marks(shuffled)).toEqual(marks(mixed));
    }));
});

test('every piece is listed once', () => {
    const anyPart = fc.record({ n: fc.nat(30), size: fc.integer({ min: 1, max: 90 }), stock: fc.constantFrom('a', 'b', undefined), count: fc.integer({ min: 1, max: 9 }) })
        .map(({ n, size, stock, count }) => part(`UPPER-RAIL-${n}`, { length: length(size), count, material: stock === undefined ? {} : { stock } }));
    fc.assert(fc.property(fc.array(anyPart), parts => {
        const listed = cutListGroups(lines(parts)).flatMap(group => group.lines.map(line => line.part));
        expect(new Set(listed)).toEqual(new Set(parts));
        expect(listed).toHaveLength(parts.length);
    }));
});

test.each([
    ['RAIL-2', 'RAIL-10', -1], ['RAIL-2', 'RAIL-2', 0], ['FRONT-2', 'FRONT-2-LEFT', -1], ['BASE-LEFT', 'BASE-BACK', 1], ['A-02', 'A-2', -1],
])('marks by words and numbers: %s, %s', (a, b, sign) => {
    expect(Math.sign(compareMarks(a, b))).toBe(sign);
    expect(Math.sign(compareMarks(b, a))).toBe(sign === 0 ? 0 : -sign);
});

test.each([
    [{ left: 0, right: 0 }, 'square'], [{ left: 45, right: 45 }, '45° both ends'], [{ left: 22.5, right: 0 }, 'left 22.5°, right square'],
    [{ left: 45, right: 45, across: 'face' }, 'mitred 45° across the face at both ends, length to the long points'],
    [{ left: 45, right: 0, across: 'face' }, 'left mitred 45° across the face, right square, length to the long point'],
] as const)('ends %j', (ends, text) => { expect(showEnds(ends)).toBe(text); });

const notch = { side: 'front', end: 'head', toward: 'right', from: inches(13, 1, 4), length: inches(5, 3, 4), depth: inches(1, 1, 2), clears: 'lower rear rail' } as const;
const wide = { thickness: inches(1, 1, 2), width: inches(3, 1, 2) };
test.each<[Notch, Section, 'ft_in' | 'm', string]>([
    [notch, wide, 'ft_in', '13 1/4" to 19" from the head (the top end), 5 3/4" long, 1 1/2" deep, across the narrow face (1 1/2" wide) that looks toward the right wall, for lower rear rail'],
    [notch, wide, 'm', '≈336.5 mm to ≈482.5 mm from the head (the top end), ≈146 mm long, ≈38 mm deep, across the narrow face (≈38 mm wide) that looks toward the right wall, for lower rear rail'],
    [{ ...notch, side: 'top' }, wide, 'ft_in', '13 1/4" to 19" from the head (the top end), 5 3/4" long, 1 1/2" deep, across the wide face (3 1/2" wide) that looks toward the right wall, for lower rear rail'],
    [notch, { thickness: inches(2), width: inches(2) }, 'ft_in', '13 1/4" to 19" from the head (the top end), 5 3/4" long, 1 1/2" deep, across the face (2" wide) that looks toward the right wall, for lower rear rail'],
    [{ side: 'back', end: 'left end', from: zero, length: inches(3), depth: inches(1), clears: 'pipe' }, wide, 'ft_in', '0" to 3" from the left end, 3" long, 1" deep, across the back narrow face (1 1/2" wide), for pipe'],
])('a notch is told by its end, face, size and what passes: %#', (one, section, unit, text) => { expect(showNotches({ notches: [one], section }, unit)).toBe(text); });

const place: PartPlace = { wall: 'front', stretches: [{ from: inches(12, 1, 2), to: inches(30) }], run: inches(80), between: 'linings' };
test.each<[string, PartPlace]>([
    // facing the front wall from inside, the right wall is on the left hand
    ['near edge 12 1/2" from the right wall', place],
    ['near edge 10" from the left wall', { ...place, stretches: [{ from: inches(60), to: inches(70) }] }],
    ['near edges 0", 60" from the right wall', { ...place, stretches: [{ from: zero, to: inches(2) }, { from: inches(60), to: inches(62) }] }],
    ['wall to wall', { ...place, stretches: [{ from: zero, to: inches(80) }] }],
    ['near edge 1/8" from the outside of the back wall', { wall: 'left', stretches: [{ from: inches(40), to: inches(79, 7, 8) }], run: inches(80), between: 'outside' }],
    ['near edge 0" from the left wall, bottom 31 1/4", top 34 3/4" over the finished floor', { wall: 'back', stretches: [{ from: zero, to: inches(20) }], run: inches(80), between: 'linings', heights: { from: inches(31, 1, 4), to: inches(34, 3, 4) } }],
])('goes to %s', (text, one) => { expect(showPartPlace(one, 'in')).toBe(text); });

test('the list as a saw operator reads it', () => {
    const parts = [
        part('UPPER-LEG-1', { what: 'bench leg', length: inches(33, 1, 4), allowance: inches(2), cut: 'site', measure: 'floor to rail', goesTo: 'under UPPER-RAIL-1' }),
        part('UPPER-RAIL-1', { count: 2, length: inches(73, 33, 64), ends: { left: 45, right: 0 }, place }),
    ];
    const [table] = cutListTables(cutListGroups(lines(parts)), { unit: 'in', offers: new Map([['oak_2x4', offer('oak_2x4', { species: 'oak', grade: 'clear' })]]) });
    expect(tableText(table!, 120)).toBe([
        'Oak 2x4 (oak_2x4), oak, clear: nominal 2x4, finished 1 1/2" x 3 1/2"',
        'Mark          Part       Count  Cut length  Finished  Allowance  Ends                    Cut',
        '------------  ---------  -----  ----------  --------  ---------  ----------------------  ----------------',
        'UPPER-RAIL-1  rail           2    ≈73 1/2"  ≈73 1/2"         0"  left 45°, right square  shop',
        '    Goes to: bench: near edge 12 1/2" from the right wall',
        'UPPER-LEG-1   bench leg      1     33 1/4"   31 1/4"         2"  square                  site, ships long',
        '    Goes to: under UPPER-RAIL-1',
        '    Measure: floor to rail',
        '3 pieces, ≈15.1 ft of cut length.',
        'Finished length and allowance make the cut length; the allowance comes off on site.',
    ].join('\n'));
});

test('a mitred piece says below its row how it is cut and to where its length is taken', () => {
    const ends = { left: 45, right: 45, across: 'face' } as const;
    const [table] = cutListTables(cutListGroups(lines([part('VIEW-TRIM-1', { ends }), part('A-1')])), { unit: 'in' });
    const text = tableText(table!, 120);
    expect(text).toContain('    End cuts: mitred 45° across the face at both ends, length to the long points');
    expect(text.match(/End cuts:/g)).toHaveLength(1);
    const [header, record] = parseCsv(cutListCsv([{ trace: { job: 'birch', errors: 0 }, groups: cutListGroups(lines([part('VIEW-TRIM-1', { ends })])), options: { unit: 'in' } }]));
    expect(record![header!.indexOf('ends')]).toBe(showEnds(ends));
});

test('a metric job is cut in millimetres, whatever unit its room is written in', () => {
    const [table] = cutListTables(cutListGroups(lines([part('A-1', { section: metricSection, length: mm(1943.1), nominal: '2x4' })])), { unit: 'm' });
    expect(table!.caption).toBe('oak_2x4: nominal 2x4, finished 38 mm x 89 mm');
    expect(table!.rows[0]!.cells[3]).toEqual({ text: '≈1943 mm', sort: mm(1943.1) });
});

test('rows lead to their block when it is known, and the place is written out on demand', () => {
    const at = { uri: 'memory:/a.hotroom', start: 3, end: 9 };
    const [table] = cutListTables(cutListGroups([{ part: part('A-1'), at }]), { unit: 'in', showPlace: span => `a:${span.start}` });
    expect(table!.rows[0]!.at).toEqual(at);
    expect(table!.columns.at(-1)!.id).toBe('from');
    expect(table!.rows[0]!.cells.at(-1)).toEqual({ text: 'a:3' });
});

test('as csv each part is one record that another program reads back, and that says what it is of', () => {
    const groups = cutListGroups(lines([part('A-1', { goesTo: 'left, "cold" side', count: 3, allowance: inches(2), notches: [notch], place }), part('B-1', noStock)]));
    const [header, ...records] = parseCsv(cutListCsv([{ trace: { job: 'birch', number: '2417', revision: 'B', errors: 2 }, groups, options: { unit: 'in' } }]));
    const read = records.map(record => Object.fromEntries(record.map((field, index) => [header![index]!, field])));
    expect(read[0]!['notches']).toContain('from the head (the top end)');
    expect(read).toMatchObject([
        { job: 'birch', mark: 'A-1', count: '3', material: 'oak_2x4', section: '1 1/2" x 3 1/2"', thickness_mm: '38.1', width_mm: '88.9', length: '20"', length_mm: '508', finished_mm: '457.2', allowance_mm: '50.8', goes_to: 'left, "cold" side', place: 'near edge 12 1/2" from the right wall' },
        { job: 'birch', number: '2417', revision: 'B', errors: '2', mark: 'B-1', material: '', cut: 'shop', finished_mm: '508', allowance_mm: '0' },
    ]);
});
