import { TICKS_PER_FOOT, TICKS_PER_METRE, zero } from '../core/length.js';
import { showNumber } from '../core/show.js';
import type { Span } from '../core/span.js';
import { finishedLength, showCutPlace, showEnds, showNotches, totals, type CutListGroup, type CutListLine } from './cut-list.js';
import { toCsv, type CsvField } from './csv.js';
import { traceFields, traceHeader, type JobTrace } from './job-trace.js';
import { showGoesTo, showPartPlace } from './part-place.js';
import { isMetricScale, showCount, showCut, showSection, type Scale } from './show-figures.js';
import type { StockOffer } from './stock-offers.js';
import { csvMm, stockName } from './stock-plan-tables.js';
import { cell, footerLines, type Table, type TableCell, type TableColumn } from './tables-document.js';

export interface CutListTableOptions {
    readonly unit: Scale;
    readonly offers?: ReadonlyMap<string, StockOffer>;
    /** Writes the place of a block out, such as `birch-point.hotroom:47`; without it the column is left out and the row alone leads there. */
    readonly showPlace?: (span: Span) => string;
}

interface ListColumn extends TableColumn {
    readonly fill: (line: CutListLine, options: CutListTableOptions) => TableCell;
    /** Left out when no line of the table fills it, or when none of its lines has use for it. */
    readonly isOptional?: true | ((line: CutListLine) => boolean);
}

const shipsLong = ({ part }: CutListLine): boolean => part.allowance !== undefined;

const columns: readonly ListColumn[] = [
    { id: 'mark', label: 'Mark', align: 'start', fill: ({ part }) => cell(part.mark) },
    { id: 'part', label: 'Part', align: 'start', fill: ({ part }) => cell(part.what) },
    { id: 'count', label: 'Count', align: 'end', fill: ({ part }) => cell(String(part.count), part.count) },
    { id: 'length', label: 'Cut length', align: 'end', fill: ({ part }, { unit }) => cell(showCut(part.length, unit), part.length) },
    { id: 'finished', label: 'Finished', align: 'end', isOptional: shipsLong, fill: ({ part }, { unit }) => cell(showCut(finishedLength(part), unit), finishedLength(part)) },
    { id: 'allowance', label: 'Allowance', align: 'end', isOptional: shipsLong, fill: ({ part }, { unit }) => cell(showCut(part.allowance ?? zero, unit), part.allowance ?? zero) },
    { id: 'ends', label: 'Ends', align: 'start', fill: ({ part }) => cell(part.ends.across ? 'mitred' : showEnds(part.ends)) },
    { id: 'mitre', label: 'End cuts', align: 'start', isOptional: true, isProse: true, fill: ({ part }) => cell(part.ends.across ? showEnds(part.ends) : '') },
    { id: 'notches', label: 'Notches', align: 'start', isOptional: true, isProse: true, fill: ({ part }, { unit }) => cell(showNotches(part, unit)) },
    { id: 'cut', label: 'Cut', align: 'start', fill: ({ part }) => cell(showCutPlace(part.cut)) },
    { id: 'goes-to', label: 'Goes to', align: 'start', isProse: true, fill: ({ part }, { unit }) => cell(showGoesTo(part, unit)) },
    { id: 'measure', label: 'Measure', align: 'start', isOptional: true, isProse: true, fill: ({ part }) => cell(part.measure ?? '') },
    { id: 'from', label: 'From', align: 'start', isOptional: true, fill: ({ at }, { showPlace }) => cell(at && showPlace ? showPlace(at) : '') },
];

/** One table a group, so that the saw is set up once for each. */
export function cutListTables(groups: readonly CutListGroup[], options: CutListTableOptions): readonly Table[] {
    return groups.map((group, index): Table => {
        const shown = columns.filter(({ isOptional, fill }) => group.lines.some(line => isOptional === undefined || (isOptional === true ? fill(line, options).text !== '' : isOptional(line))));
        const rows = group.lines.map(line => ({ cells: shown.map(column => column.fill(line, options)), ...(line.at && { at: line.at }) }));
        const { pieces, length } = totals(group.lines);
        return {
            id: `cut-${index + 1}-${group.stock ?? 'unnamed'}`, caption: groupCaption(group, options),
            columns: shown.map(({ id, label, align, isProse }) => ({ id, label, align, ...(isProse && { isProse }) })), rows,
            footer: footerLines([`${showCount(pieces, 'piece')}, ${showRun(length, options.unit)} of cut length.`, ...(group.lines.some(shipsLong) ? ['Finished length and allowance make the cut length; the allowance comes off on site.'] : [])], shown),
        };
    });
}

function groupCaption({ stock, nominal, section }: CutListGroup, { unit, offers }: CutListTableOptions): string {
    const offer = stock === undefined ? undefined : offers?.get(stock);
    const name = stock === undefined ? 'No stock named' : stockName({ stock, ...(offer && { offer }) });
    const wood = [offer?.species, offer?.grade].filter(text => text !== undefined).join(', ');
    return `${name}${wood === '' ? '' : `, ${wood}`}: ${nominal === undefined ? 'no nominal size' : `nominal ${nominal}`}, finished ${showSection(section, unit)}`;
}

/** A summed length to a tenth of a foot or of a metre, for ordering. */
function showRun(length: bigint, unit: Scale): string {
    const whole = BigInt(isMetricScale(unit) ? TICKS_PER_METRE : TICKS_PER_FOOT);
    const tenths = (length * 10n + whole - 1n) / whole;
    const isExact = tenths * whole === length * 10n;
    return `${isExact ? '' : '≈'}${showNumber(Number(tenths) / 10, 1)} ${isMetricScale(unit) ? 'm' : 'ft'}`;
}

const csvHeader = [
    ...traceHeader, 'mark', 'part', 'count', 'material', 'nominal', 'section', 'thickness_mm', 'width_mm', 'length', 'length_mm', 'finished', 'finished_mm', 'allowance', 'allowance_mm',
    'end_left_degrees', 'end_right_degrees', 'notches', 'cut', 'goes_to', 'place', 'measure', 'ends', 'from',
] as const;

/** Every part as one record, in the order of the list; lengths as the saw reads them and in millimetres. */
export function cutListCsv(jobs: readonly { readonly trace: JobTrace; readonly groups: readonly CutListGroup[]; readonly options: CutListTableOptions }[]): string {
    return toCsv(csvHeader, jobs.flatMap(({ trace, groups, options: { unit, showPlace } }) => groups.flatMap(({ lines }) => lines.map(({ part, at }): CsvField[] => [
        ...traceFields(trace), part.mark, part.what, part.count, part.material.stock, part.nominal, showSection(part.section, unit), csvMm(part.section.thickness), csvMm(part.section.width),
        showCut(part.length, unit), csvMm(part.length), showCut(finishedLength(part), unit), csvMm(finishedLength(part)), showCut(part.allowance ?? zero, unit), csvMm(part.allowance ?? zero),
        part.ends.left, part.ends.right, showNotches(part, unit), part.cut, part.goesTo, part.place && showPartPlace(part.place, unit), part.measure, showEnds(part.ends), at && showPlace?.(at),
    ]))));
}
