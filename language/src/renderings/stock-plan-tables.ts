import { sum, type Length } from '../core/length.js';
import { showList } from '../core/show.js';
import type { StockBoard, StockPlan } from '../engines/stock/request.js';
import { toCsv, type CsvField } from './csv.js';
import { traceFields, traceHeader, type JobTrace } from './job-trace.js';
import { boardCaution, hasPlan, isTight, numberBoards, planWarnings, sawStops, stopLetters, type NumberedPlan, type WithPlan } from './saw-stops.js';
import { showBoardLength, showCount, showCut, showMoney, showSection, showShareUp, type Scale } from './show-figures.js';
import type { PlannedStock } from './stock-tasks.js';
import { cell, footerLines, type Table, type TableColumn, type TableRow } from './tables-document.js';

/** The boards to pull, then for each stock how its boards are cut. Nothing to show makes no table. */
export function stockPlanTables(planned: readonly PlannedStock[], unit: Scale): readonly Table[] {
    return [...(planned.length > 0 ? [boardsToPull(planned, unit)] : []), ...numberBoards(planned).filter(({ boards }) => boards.length > 0).map(one => sawTable(one, unit))];
}

const pullColumns: readonly TableColumn[] = [
    { id: 'stock', label: 'Stock', align: 'start' },
    { id: 'section', label: 'Section', align: 'start' },
    { id: 'length', label: 'Board', align: 'end' },
    { id: 'boards', label: 'Boards', align: 'end' },
    { id: 'in-store', label: 'In store', align: 'end' },
    { id: 'price', label: 'Price each', align: 'end' },
    { id: 'amount', label: 'Amount', align: 'end' },
];

function boardsToPull(planned: readonly PlannedStock[], unit: Scale): Table {
    const isStoreCounted = planned.some(({ offer }) => offer?.onHand !== undefined);
    const columns = pullColumns.filter(({ id }) => id !== 'in-store' || isStoreCounted);
    const rows = planned.filter(hasPlan).flatMap(one => pullRows(one, unit)).map(row => isStoreCounted ? row : { ...row, cells: row.cells.filter((_, column) => pullColumns[column]?.id !== 'in-store') });
    return { id: 'boards-to-pull', caption: 'Boards to pull', columns, rows, footer: footerLines(pullFooter(planned, unit), columns) };
}

/** Boards of each length a plan uses, longest first. */
function usedLengths({ plan, request }: WithPlan): { readonly length: Length; readonly boards: number; readonly each: { minor: number; currency: string } | undefined }[] {
    return (request?.stock ?? []).flatMap(({ length, price }, index) => {
        const boards = plan.boards.filter(board => board.stockIndex === index).length;
        return boards > 0 ? [{ length, boards, each: price }] : [];
    });
}

function pullRows(one: WithPlan, unit: Scale): readonly TableRow[] {
    const { offer } = one;
    return usedLengths(one).map(({ length, boards, each }): TableRow => {
        // what is in the store is of the longest length only
        const inStore = offer?.onHand === undefined ? undefined : length === offer.lengths[0] ? Math.min(offer.onHand, boards) : 0;
        const amount = each && { minor: each.minor * boards, currency: each.currency };
        return {
            cells: [
                cell(stockName(one)), cell(offer ? sectionWords(offer, unit) : ''), cell(showBoardLength(length, unit), length), cell(String(boards), boards),
                inStore === undefined ? cell('not counted', -1) : cell(String(inStore), inStore),
                each ? cell(showMoney(each), each.minor) : cell('no price', -1), amount ? cell(showMoney(amount), amount.minor) : cell('no price', -1),
            ],
            ...(offer && { at: offer.at }),
        };
    });
}

function pullFooter(planned: readonly PlannedStock[], unit: Scale): string[] {
    const plans = planned.filter(hasPlan);
    const boards = plans.reduce((total, { plan }) => total + plan.totalBoards, 0);
    const unpriced = plans.filter(one => usedLengths(one).some(({ each }) => !each)).map(stockName);
    const lines = [`${showCount(boards, 'board')}, ${showBoardLength(sum(...plans.map(({ plan }) => plan.totalLength)), unit)} of stock in all.`];
    const totals = new Map<string, number>();
    for (const one of plans) for (const { boards: count, each } of usedLengths(one)) if (each) totals.set(each.currency, (totals.get(each.currency) ?? 0) + count * each.minor);
    const money = [...totals].map(([currency, minor]) => showMoney({ minor, currency }));
    if (unpriced.length > 0) lines.push(`No price, no guess: ${showList(unpriced)} ${unpriced.length === 1 ? 'has' : 'have'} no price.${money.length > 0 ? ` The boards that have one come to ${showList(money)}.` : ''}`);
    else if (money.length > 0) lines.push(`The boards come to ${showList(money)}; whole boards are counted, offcuts and all.`);
    for (const one of planned) if (one.whyNot !== undefined) lines.push(`Not planned, because ${one.whyNot}: ${marksOf(one)}.`);
    return lines;
}

const marksOf = ({ parts }: PlannedStock): string => showList(parts.map(({ mark, count }) => count > 1 ? `${count} of ${mark}` : mark));

/** How the catalogue calls a stock: its title with its name, so that both the rack's label and the job file find it. */
export function stockName({ offer, stock }: Pick<PlannedStock, 'offer' | 'stock'>): string {
    if (stock === undefined) return 'no stock named';
    return offer?.title === undefined ? stock : `${offer.title} (${stock})`;
}

const sectionWords = (offer: NonNullable<PlannedStock['offer']>, unit: Scale): string =>
    `${offer.nominal === undefined ? '' : `${offer.nominal}, `}${showSection(offer.section, unit)}`;

const sawColumns: readonly TableColumn[] = [
    { id: 'board', label: 'Board', align: 'end' },
    { id: 'length', label: 'Length', align: 'end' },
    { id: 'cuts', label: 'Cuts in order, each at its stop', align: 'start' },
    { id: 'kerf', label: 'Saw cuts take', align: 'end' },
    { id: 'trim', label: 'End trim', align: 'end' },
    { id: 'offcut', label: 'Offcut', align: 'end' },
    { id: 'caution', label: 'Caution', align: 'start', isProse: true },
];

function sawTable(numbered: NumberedPlan, unit: Scale): Table {
    const { one, boards } = numbered;
    const { plan, offer, request } = one;
    const letters = stopLetters(plan, unit);
    const isAnyTight = boards.some(({ board }) => isTight(board));
    const columns = sawColumns.filter(({ id }) => id !== 'caution' || isAnyTight);
    // a row a board, however alike: each is ticked off when it is cut
    const rows = boards.map(({ number, board }): TableRow => ({
        cells: [
            cell(String(number), number), cell(showBoardLength(board.stockLength, unit), board.stockLength), cell(showCuts(board, letters, unit)),
            cell(showCut(board.kerfTotal, unit), board.kerfTotal), cell(showCut(board.trimTotal, unit), board.trimTotal), cell(showCut(board.offcut, unit), board.offcut),
            ...(isAnyTight ? [cell(boardCaution(board, unit) ?? '')] : []),
        ],
        ...(offer && { at: offer.at }),
    }));
    const caption = `Saw plan, ${stockName(one)}${offer ? `: ${sectionWords(offer, unit)}` : ''}`;
    const stops = sawStops(plan, unit);
    const lines = [
        `Stops: ${stops.map(({ letter, lengths: [length], pieces }) => `${letter} at ${showCut(length, unit)} (${showCount(pieces, 'piece')})`).join(', ')}.`,
        `${showCount(plan.totalBoards, 'board')}, ${showCount(stops.length, 'stop')}, ${showBoardLength(plan.totalLength, unit)} of stock, ${offcutWords(plan, unit)}.`,
    ];
    if (request) lines.push(`One saw cut takes ${showCut(request.kerf, unit)}; ${request.endTrim > 0 ? `each end of a board loses ${showCut(request.endTrim, unit)} before use` : 'nothing is cut off the ends of a board before use'}.`);
    lines.push(...planWarnings(numbered), ...planRemarks(one, unit));
    return { id: `saw-${one.stock ?? 'unnamed'}`, caption, columns, rows, footer: footerLines(lines, columns) };
}

const offcutWords = (plan: StockPlan, unit: Scale): string => {
    const longest = plan.boards.reduce((most, { offcut }) => Math.max(most, offcut), 0) as Length;
    return longest === 0 ? 'no offcut' : `longest offcut ${showCut(longest, unit)}`;
};

/** What has to be said of a plan: whether it is the best there is, what could not be placed, what is missing. */
function planRemarks(one: WithPlan, unit: Scale): string[] {
    const { plan, request, cutShort } = one;
    const remarks = [`${proofText(plan)} ${plan.method}`];
    if (cutShort !== undefined) remarks.push(cutShort);
    if (plan.objective === 'length' && plan.totalBoards > 0) remarks.push(`No price, no guess: ${stockName(one)} has no price, so the least length of stock was looked for.`);
    for (const { stockLength, count } of plan.missing) remarks.push(`${showCount(count, 'board')} of ${showBoardLength(stockLength, unit)} ${count === 1 ? 'is' : 'are'} missing from those on hand.`);
    for (const { mark, length, count } of plan.unplaceable) {
        const longest = Math.max(0, ...(request?.stock ?? []).map(stock => stock.length)) as Length;
        remarks.push(`Not placed: ${count > 1 ? `${count} of ` : ''}${mark}, ${showCut(length, unit)}, is longer than the longest board of ${showBoardLength(longest, unit)} gives.`);
    }
    return remarks;
}

/** Whether a plan is the best there is, or how far from it at most. */
export function proofText({ proof, objective }: Pick<StockPlan, 'proof' | 'objective'>): string {
    const aim = objective === 'price' ? 'costs less' : 'uses less stock';
    return proof === 'proven' ? `Proven optimum: no plan ${aim}.` : `Not proven: a plan that ${aim} may exist, by ${showShareUp(proof.gap)} at most.`;
}

/** `A 79 1/2" BASE-BACK, 3 × B 20" UPPER-BEARER-1`. */
function showCuts({ cuts }: StockBoard, letters: ReadonlyMap<Length, string>, unit: Scale): string {
    const runs: { mark: string; length: Length; count: number }[] = [];
    for (const { mark, length } of cuts) {
        const last = runs.at(-1);
        if (last?.mark === mark && last.length === length) last.count++; else runs.push({ mark, length, count: 1 });
    }
    return runs.map(({ mark, length, count }) => `${count > 1 ? `${count} × ` : ''}${letters.get(length) ?? ''} ${showCut(length, unit)} ${mark}`).join(', ');
}

const csvHeader = [...traceHeader, 'stock', 'board', 'board_length', 'board_length_mm', 'cut', 'stop', 'mark', 'length', 'length_mm', 'kerf_mm', 'trim_mm', 'offcut_mm', 'caution'] as const;

/** One record a cut, for a saw or a spreadsheet. Boards are numbered through all stocks; what a board loses stands in the record of its last cut. */
export function stockPlanCsv(plans: readonly { readonly trace: JobTrace; readonly planned: readonly PlannedStock[]; readonly unit: Scale }[]): string {
    return toCsv(csvHeader, plans.flatMap(({ trace, planned, unit }) => numberBoards(planned).flatMap(({ one: { stock, plan }, boards }) => {
        const letters = stopLetters(plan, unit);
        return boards.flatMap(({ number, board }) => board.cuts.map(({ mark, length }, index): CsvField[] => {
            const isLast = index === board.cuts.length - 1;
            const loss = (value: Length): number | undefined => isLast ? csvMm(value) : undefined;
            return [
                ...traceFields(trace), stock, number, showBoardLength(board.stockLength, unit), csvMm(board.stockLength), index + 1, letters.get(length),
                mark, showCut(length, unit), csvMm(length), loss(board.kerfTotal), loss(board.trimTotal), loss(board.offcut), index === 0 ? boardCaution(board, unit) : undefined,
            ];
        }));
    })));
}

/** Millimetres to a ten-thousandth, which any dimension down to 1/128" keeps exactly enough for a saw's readout. */
export const csvMm = (length: Length): number => Math.round(length / 8) / 10_000;

