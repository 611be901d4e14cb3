import { expect, test } from 'vitest';
import { feet, inches, mm, ticks, zero } from '../../language/src/core/length.js';
import { planStockGreedy } from '../../language/src/engines/stock/plan-stock.js';
import type { StockPlan } from '../../language/src/engines/stock/request.js';
import type { Part } from '../../language/src/engines/parts/part.js';
import { showBoardLength, showMoney } from '../../language/src/renderings/show-figures.js';
import { exportPlans } from '../../language/src/renderings/cut-list-json.js';
import { sawStops, stopName } from '../../language/src/renderings/saw-stops.js';
import { stockPlanCsv, stockPlanTables, proofText } from '../../language/src/renderings/stock-plan-tables.js';
import { boardPrice, planTasks, stockTasks, type PlannedStock } from '../../language/src/renderings/stock-tasks.js';
import type { StockOffer } from '../../language/src/renderings/stock-offers.js';
import { tableText } from '../../language/src/renderings/report-text.js';
import { parseCsv } from './parse-csv.js';
import { noStock, offer, part } from './small-parts.js';

const plan = (parts: readonly Part[], ...offers: readonly StockOffer[]): Promise<readonly PlannedStock[]> =>
    planTasks(stockTasks(parts, new Map(offers.map(one => [one.name, one]))), async request => ({ plan: planStockGreedy(request) }));
const texts = (planned: readonly PlannedStock[], unit: 'in' | 'mm' = 'in'): string => stockPlanTables(planned, unit).map(table => tableText(table, 110)).join('\n\n');

test('boards to pull, how each is cut, and whether that is the best there is', async () => {
    // 90 and 1/8 leave 5 7/8 of 96; 40 + 40 and two saw cuts leave 15 3/4; 170 of wood does not come out of one board of 96, so two are the least
    const planned = await plan([part('RAIL-1', { length: inches(40), count: 2 }), part('POST-1', { length: inches(90) })], offer('oak_2x4', { lengths: [inches(96)] }));
    expect(texts(planned)).toBe([
        'Boards to pull',
        'Stock              Section               Board  Boards  Price each     Amount',
        '-----------------  --------------------  -----  ------  ----------  ---------',
        'Oak 2x4 (oak_2x4)  2x4, 1 1/2" x 3 1/2"     8\'       2    8.00 USD  16.00 USD',
        '2 boards, 16\' of stock in all.',
        'The boards come to 16.00 USD; whole boards are counted, offcuts and all.',
        '',
        'Saw plan, Oak 2x4 (oak_2x4): 2x4, 1 1/2" x 3 1/2"',
        'Board  Length  Cuts in order, each at its stop  Saw cuts take  End trim   Offcut',
        '-----  ------  -------------------------------  -------------  --------  -------',
        '    1      8\'  A 90" POST-1                              1/8"        0"   5 7/8"',
        '    2      8\'  2 × B 40" RAIL-1                          1/4"        0"  15 3/4"',
        'Stops: A at 90" (1 piece), B at 40" (2 pieces).',
        '2 boards, 2 stops, 16\' of stock, longest offcut 15 3/4".',
        'One saw cut takes 1/8"; nothing is cut off the ends of a board before use.',
        'Proven optimum: no plan costs less. Least price of the boards, found by the best of several greedy plans. No',
        'plan is better. Bound and plan are exact.',
    ].join('\n'));
});

test('a missing price is named and nothing is guessed', async () => {
    const unpriced: StockOffer = Object.fromEntries(Object.entries(offer('elm_2x4', { title: 'Elm' })).filter(([key]) => key !== 'price')) as unknown as StockOffer;
    const planned = await plan([part('A-1'), part('B-1', { material: { stock: 'elm_2x4' } })], offer(), unpriced);
    const [pull, , saw] = stockPlanTables(planned, 'in');
    expect(pull!.footer).toContain('No price, no guess: Elm (elm_2x4) has no price. The boards that have one come to 8.00 USD.');
    expect(pull!.rows.map(row => row.cells.at(-1)!.text)).toEqual(['no price', '8.00 USD']);
    expect(saw!.caption).toContain('Oak');
    expect(stockPlanTables(planned, 'in')[1]!.footer).toContain('No price, no guess: Elm (elm_2x4) has no price, so the least length of stock was looked for.');
});

test('parts without a stock, with an unknown one or one without lengths are named as not planned', async () => {
    const planned = await plan([part('A-1', { ...noStock, count: 2 }), part('B-1', { material: { stock: 'nowhere' } }), part('C-1', { material: { stock: 'none' } })], offer('none', { lengths: [] }));
    expect(stockPlanTables(planned, 'in').flatMap(table => table.footer)).toEqual([
        '0 boards, 0" of stock in all.',
        'Not planned, because the catalogue gives no lengths of none: C-1.',
        'Not planned, because no catalogue in use offers nowhere whole: B-1.',
        'Not planned, because the job names no stock for these parts: 2 of A-1.',
    ]);
});

test('a piece no board is long enough for is named', async () => {
    const planned = await plan([part('LONG-1', { length: inches(130) }), part('A-1')], offer());
    expect(stockPlanTables(planned, 'in')[1]!.footer).toContain('Not placed: LONG-1, 130", is longer than the longest board of 10\' gives.');
});

test('boards in the store are told from those to buy, longest length only', async () => {
    const planned = await plan([part('LONG-1', { length: inches(110), count: 3 }), part('A-1', { length: inches(90) })], offer('oak_2x4', { onHand: 2 }));
    const [pull] = stockPlanTables(planned, 'in');
    const store = pull!.columns.findIndex(({ id }) => id === 'in-store');
    expect(pull!.rows.map(row => [row.cells[2]!.text, row.cells[3]!.text, row.cells[store]!.text])).toEqual([['10\'', '3', '2'], ['8\'', '1', '0']]);
    expect(new Set(pull!.rows.map(row => row.cells.length))).toEqual(new Set([pull!.columns.length]));
});

test('site parts take their wood from the same boards, at the length they ship in', async () => {
    const [task] = stockTasks([part('LEG-1', { cut: 'site', length: inches(33) })], new Map([['oak_2x4', offer()]]));
    expect(task!.request!.pieces).toEqual([{ mark: 'LEG-1', length: inches(33), count: 1 }]);
});

// 8' at 1.35 a foot is 10.80; 2.4 m at 4.10 a metre is 9.84; 10' of 3 1/2" at 6.00 a square foot is 10 x 3.5 / 12 x 6 = 17.50; half a cent goes to even
test.each([
    [135, 'ft', feet(8), 1080], [410, 'm', mm(2400), 984], [600, 'ft2', feet(10), 1750], [1500, 'each', feet(16), 1500], [1, 'ft', inches(6), 0], [1, 'ft', inches(18), 2],
    [1000, 'm2', mm(1000), 89],
] as const)('%d hundredths per %s: a board comes to %4$d', (minor, per, length, price) => {
    expect(boardPrice({ minor, currency: 'USD', per }, length, { thickness: inches(1, 1, 2), width: per === 'm2' ? mm(89) : inches(3, 1, 2) })).toEqual({ minor: price, currency: 'USD' });
});

test.each([[0, 'A'], [25, 'Z'], [26, 'AA'], [27, 'AB'], [51, 'AZ'], [52, 'BA'], [701, 'ZZ'], [702, 'AAA']])('stop %d is called %s', (index, name) => { expect(stopName(index)).toBe(name); });
test.each([[1240, '12.40 USD'], [5, '0.05 USD'], [-5, '-0.05 USD'], [0, '0.00 USD']])('%d hundredths are %s', (minor, text) => { expect(showMoney({ minor, currency: 'USD' })).toBe(text); });

test.each<[Pick<StockPlan, 'proof' | 'objective'>, string]>([
    [{ proof: 'proven', objective: 'price' }, 'Proven optimum: no plan costs less.'],
    [{ proof: 'proven', objective: 'length' }, 'Proven optimum: no plan uses less stock.'],
    [{ proof: { gap: 0.0042 }, objective: 'price' }, 'Not proven: a plan that costs less may exist, by 0.42 % at most.'],
    // a gap is never shown smaller than it is
    [{ proof: { gap: 0.000_001 }, objective: 'length' }, 'Not proven: a plan that uses less stock may exist, by 0.01 % at most.'],
])('%j', (one, text) => { expect(proofText(one)).toBe(text); });

test('as csv every cut is a record, and board by board the lengths add up', async () => {
    const planned = await plan([part('A-1', { count: 7, length: inches(31, 5, 8) }), part('B-1', { count: 3, length: inches(44) })], offer('oak_2x4', { endTrim: inches(0, 1, 2) }));
    const [header, ...records] = parseCsv(stockPlanCsv([{ trace: { job: 'birch', errors: 0 }, planned, unit: 'in' }]));
    const at = (name: string): number => header!.indexOf(name);
    for (const board of new Set(records.map(record => record[at('board')]))) {
        const cuts = records.filter(record => record[at('board')] === board);
        const figure = (name: string): number => cuts.reduce((total, cut) => total + Number(cut[at(name)]), 0);
        expect(figure('length_mm') + figure('kerf_mm') + figure('trim_mm') + figure('offcut_mm')).toBeCloseTo(Number(cuts[0]![at('board_length_mm')]), 3);
    }
    expect(records.map(record => record[at('mark')]).sort()).toEqual([...Array<string>(7).fill('A-1'), ...Array<string>(3).fill('B-1')]);
});

test('rows of the saw plan hold every piece once', async () => {
    const parts = [part('A-1', { count: 7, length: inches(31, 5, 8) }), part('B-1', { count: 3, length: inches(44) }), part('C-1', { count: 2, length: inches(31, 5, 8) })];
    const planned = await plan(parts, offer());
    const [, saw] = stockPlanTables(planned, 'in');
    const counted = new Map<string, number>();
    for (const row of saw!.rows) {
        for (const cut of row.cells[2]!.text.split(', ')) {
            const [, count = '1', mark] = /^(?:(\d+) × )?[A-Z]+ .* (\S+)$/.exec(cut)!;
            counted.set(mark!, (counted.get(mark!) ?? 0) + Number(count));
        }
    }
    expect(Object.fromEntries(counted)).toEqual({ 'A-1': 7, 'B-1': 3, 'C-1': 2 });
});

test('boards are numbered through all stocks, and a letter stands for one length of one stock', async () => {
    const parts = [part('A-1', { count: 2, length: inches(90) }), part('B-1', { count: 3, length: inches(44) }), part('C-1', { length: inches(90), material: { stock: 'elm_2x4' } }), part('D-1', { length: inches(50), material: { stock: 'elm_2x4' } })];
    const planned = await plan(parts, offer(), offer('elm_2x4'));
    const [header, ...records] = parseCsv(stockPlanCsv([{ trace: { job: 'birch', errors: 0 }, planned, unit: 'in' }]));
    const field = (record: readonly string[], name: string): string => record[header!.indexOf(name)]!;
    const boards = [...new Set(records.map(record => field(record, 'board')))];
    expect(boards).toEqual(boards.map((_, index) => String(index + 1)));
    const letters = new Map<string, Set<string>>();
    for (const record of records) {
        const key = `${field(record, 'stock')} ${field(record, 'stop')}`;
        letters.set(key, (letters.get(key) ?? new Set()).add(field(record, 'length_mm')));
    }
    expect([...letters].map(([key, lengths]) => [key, [...lengths]]).sort()).toEqual([['elm_2x4 A', ['2286']], ['elm_2x4 B', ['1270']], ['oak_2x4 A', ['2286']], ['oak_2x4 B', ['1117.6']]]);
    const tables = stockPlanTables(planned, 'in').slice(1);
    expect(tables.flatMap(table => table.rows.map(row => row.cells[0]!.text))).toEqual(boards);
});

test('lengths the scale does not tell apart are cut at one stop', async () => {
    const [one] = await plan([part('A-1', { length: inches(14, 15, 32) }), part('B-1', { length: ticks(inches(14, 15, 32) + 200) }), part('C-1', { length: inches(14, 14, 32) })], offer());
    expect(sawStops(one!.plan!, 'in').map(({ letter, pieces }) => [letter, pieces])).toEqual([['A', 2], ['B', 1]]);
});

// 96 less a saw cut of 1/8" between two pieces: 47 15/16" each uses the board up
test.each([
    ['no trim, no offcut', inches(47, 15, 16), zero, 'Warning: board 1 is used up with no end trim and no offcut, so one that is short, split or out of square at an end spoils its last piece. Measure it before the first cut, or give oak_2x4 an end_trim in the catalogue.'],
    ['an offcut', inches(47, 1, 2), zero, undefined],
    // two saw cuts of 1/8" after two pieces: 95 5/8 leave 1/8, 95 3/8 leave 3/8, 95 1/4 leave the 1/2 that squares both ends
    ['next to no offcut', inches(47, 13, 16), zero, 'Warning: board 1 is used up with no end trim and next to no offcut, so one that is short, split or out of square at an end spoils its last piece. Measure it before the first cut, or give oak_2x4 an end_trim in the catalogue.'],
    ['just enough offcut', inches(47, 5, 8), zero, undefined],
    ['an end trim', inches(47, 7, 16), inches(0, 1, 2), undefined],
])('a board used to its ends is warned of: %s', async (_, length, endTrim, warning) => {
    const planned = await plan([part('A-1', { length, count: 2 })], offer('oak_2x4', { lengths: [inches(96)], endTrim }));
    expect(stockPlanTables(planned, 'in')[1]!.footer!.find(line => line.startsWith('Warning'))).toBe(warning);
    const [board] = planned[0]!.plan!.boards;
    expect(board!.offcut > 0).toBe(length < inches(47, 15, 16) && endTrim === 0);
    // the same stands at the board itself, in the table, the CSV and the export
    const caution = warning && `Must be 8' in full and square at both ends: ${board!.offcut > 0 ? 'only 1/8" is left' : 'nothing is left'} for trimming. Measure it before the first cut.`;
    const [, saw] = stockPlanTables(planned, 'in');
    expect(saw!.columns.findIndex(({ id }) => id === 'caution') >= 0 ? saw!.rows[0]!.cells.at(-1)!.text : undefined).toBe(caution);
    const [header, first, second] = parseCsv(stockPlanCsv([{ trace: { job: 'birch', errors: 0 }, planned, unit: 'in' }]));
    expect([first, second].map(record => record![header!.indexOf('caution')])).toEqual([caution ?? '', '']);
    expect(exportPlans(planned, 'in')[0]!.plan!.boards[0]!.caution).toBe(caution);
});

test('a board that is no whole number of feet is written in inches, as the cuts beside it', () => {
    expect([feet(8), inches(100), inches(13, 3, 8), mm(2400)].map(length => showBoardLength(length, 'in'))).toEqual(['8\'', '100"', '13 3/8"', '≈94 1/2"']);
});

test('a quick plan for want of time says so', async () => {
    const [one] = await plan([part('A-1')], offer());
    expect(stockPlanTables([{ ...one!, cutShort: 'The 1 s allowed were over.' }], 'in')[1]!.footer).toContain('The 1 s allowed were over.');
});

test('no stock, no tables', () => { expect(stockPlanTables([], 'in')).toEqual([]); });
