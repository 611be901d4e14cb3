import type { Length } from '../core/length.js';
import { type LengthUnit, showNumber, showWritable, spoken } from '../core/show.js';
import type { EndCuts } from '../engines/parts/part.js';
import type { ModelFigure, ModelLength, ModelPanel, ModelPart, ModelPlainValue, ModelStock, ModelValue } from '../exports/model-schema.js';
import { showEnds } from '../renderings/cut-list.js';
import { showCount, showMoney } from '../renderings/show-figures.js';
import type { Change, Consequence, Rows, Side } from './change.js';

export const consequenceTitles: Readonly<Record<Consequence, string>> = { cut: 'Cut again', order: 'Order again', approve: 'Approve again', drawing: 'Drawing only' };

/** A changed row for people. */
export interface Description {
    /** `part UPPER-SLAT-1, bench slat`. */
    readonly subject: string;
    /** `resized`. */
    readonly says: string;
    /** `length 76 1/2" → 75"`; empty when there is nothing more to say. */
    readonly detail: string;
    /** The same as two texts, for two columns: `length 76 1/2"` and `length 75"`. A side the row is not on has none. */
    readonly before?: string;
    readonly after?: string;
}

/** How lengths and words are shown. */
export interface Showing {
    readonly unit: LengthUnit;
    /** A figure in words as the job's own unit has it. */
    readonly figureWords?: (side: 'from' | 'to', path: string) => string | undefined;
    /** What a finding says. */
    readonly message?: (side: 'from' | 'to', key: string) => string | undefined;
}

const arrow = ' → ';

export function describeChange(change: Change, showing: Showing): Description {
    const { from, to } = change;
    const key = to?.key ?? from?.key ?? '';
    const keys = from && to && from.key !== to.key ? `${from.key}${arrow}${to.key}` : key;
    const says = change.says.join(', ');
    const length = ({ ticks }: { readonly ticks: number }): string => showWritable(ticks as Length, showing.unit);
    switch (change.what) {
        case 'job': return { subject: key === 'isWhole' ? 'whether all of it could be read' : `its ${key}`, says, ...sides(change, value => typeof value === 'boolean' ? value ? 'yes' : 'no' : `"${value}"`) };
        case 'panel': return { subject: `panel ${keys}`, says, ...members(change, panelMembers(length)) };
        case 'part': return { subject: `part ${keys}, ${(change.to ?? change.from)?.value.part ?? ''}`, says, ...members(change, partMembers(length), change.says.includes('moved') ? [] : ['along the wall']) };
        case 'stock': return { subject: stockName(change.to ?? change.from, length), says, ...sides(change, ({ pieces, length: net, netCost }) => `${showCount(pieces, 'piece')}, ${[length(net), ...(netCost ? [showMoney(netCost)] : [])].join(', ')} before waste`) };
        case 'catalogue': case 'given': {
            const subject = change.what === 'catalogue' ? `catalogue ${keys}` : keys;
            if (change.says.includes('renamed')) return { subject, says, detail: '', ...(from && { before: from.key }), ...(to && { after: to.key }) };
            return { subject, says, ...sides(change, value => showModelValue(value, length)) };
        }
        case 'rule-set': return { subject: `rule set ${key}`, says, ...sides(change, ({ title, documents }) => `${title}: ${documents.map(one => `${one.title} ${one.edition}`).join(', ')}`) };
        case 'finding': {
            const figure = (value: ModelFigure): string => showFigure(value, length);
            const figures = sides(change, ({ severity, measured, required, waived }) => [severity, ...(measured ? [`measured ${figure(measured)}`] : []), ...(required ? [`required ${figure(required)}`] : []), ...(waived ? [`accepted by ${waived.by} until ${waived.until}`] : [])].join(', '));
            const withMessage = (side: 'from' | 'to', text: string | undefined): string | undefined => {
                const own = change[side];
                const message = own && showing.message?.(side, own.key);
                return text === undefined || message === undefined ? text : `${text}. ${message}`;
            };
            const [before, after] = [withMessage('from', figures.before), withMessage('to', figures.after)];
            return { subject: `finding ${keys}`, says, detail: withMessage(to ? 'to' : 'from', figures.detail) ?? '', ...(before !== undefined && { before }), ...(after !== undefined && { after }) };
        }
        case 'waiver': return { subject: `waiver ${keys}`, says, ...sides(change, ({ because, by, until }) => `by ${by} until ${until}: ${because}`) };
        case 'computed': {
            const words = (side: 'from' | 'to'): string | undefined => {
                const own = change[side];
                if (!own) return undefined;
                return own.value.value.kind === 'words' ? showing.figureWords?.(side, own.key) ?? own.value.value.words : showFigure(own.value.value, length);
            };
            return { subject: `${keys}, ${(change.to ?? change.from)?.value.title ?? ''}`, says, ...both(words('from'), words('to')) };
        }
        default: return change satisfies never;
    }
}

const stockName = (side: Side<ModelStock> | undefined, length: (value: ModelLength) => string): string => side ? `stock ${side.value.stock ?? 'that no catalogue names'} ${length(side.value.section.thickness)} x ${length(side.value.section.width)}` : '';
type Texts = Omit<Description, 'subject' | 'says'>;
const both = (before: string | undefined, after: string | undefined): Texts => ({
    detail: before === undefined || after === undefined || before === after ? after ?? before ?? '' : `${before}${arrow}${after}`,
    ...(before !== undefined && { before }), ...(after !== undefined && { after }),
});
const sides = <T>({ from, to }: { readonly from?: Side<T>; readonly to?: Side<T> }, show: (value: T) => string): Texts => both(from && show(from.value), to && show(to.value));

/** Members as `name value`; of a row on both sides those that differ. */
function members<T extends Rows['panel'] | Rows['part']>({ from, to }: { readonly from?: Side<T>; readonly to?: Side<T> }, list: (row: T) => readonly (readonly [string, string])[], without: readonly string[] = []): Texts {
    const [a, b] = [new Map(from ? list(from.value) : []), new Map(to ? list(to.value) : [])];
    const names = [...new Set([...a.keys(), ...b.keys()])];
    if (!from || !to) {
        const told = names.filter(name => !notes.has(name)).map(name => `${name} ${a.get(name) ?? b.get(name) ?? ''}`).join(', ');
        return both(from && told, to && told);
    }
    const other = names.filter(name => a.get(name) !== b.get(name) && !without.includes(name));
    // What only has another mark differs in nothing else.
    const side = (row: ReadonlyMap<string, string>, key: string): string => other.length === 0 ? key : other.map(name => `${name} ${row.get(name) ?? 'none'}`).join(', ');
    return { detail: other.map(name => `${name} ${a.get(name) ?? 'none'}${arrow}${b.get(name) ?? 'none'}`).join(', '), before: side(a, from.key), after: side(b, to.key) };
}
const notes: ReadonlySet<string> = new Set(['measure', 'ends', 'cut', 'along the wall', 'heights']);

const panelMembers = (length: (value: ModelLength) => string) => (panel: ModelPanel): readonly (readonly [string, string])[] => [
    ['kind', spoken(panel.kind)], ['side', panel.side], ['cover', length(panel.cover)], ['overall', length(panel.overall)], ['height', length(panel.height)], ['thickness', length(panel.thickness)],
    ['tongue', panel.tongue ?? 'none'], ...(panel.holds.length > 0 ? [['holds', panel.holds.join(' and ')] as const] : []), ...panel.cutOuts.map(one => [`cut-out of ${one.of}`, `${one.what} ${length(one.width)} x ${length(one.height)}, ${length(one.fromLeftEdge)} from the left edge, bottom ${length(one.overFinishedFloor)}`] as const), ['near edge', `${length(panel.place.distance)} from the ${panel.place.face} ${panel.place.measuredFrom}`],
    ...(panel.massKg === undefined ? [] : [['mass', `${showNumber(panel.massKg, 1)} kg`] as const]),
];

const endsOf = ({ endsDegrees: { left, right, across } }: ModelPart): EndCuts => ({ left, right, ...(across && { across }) });

const partMembers = (length: (value: ModelLength) => string) => (part: ModelPart): readonly (readonly [string, string])[] => [
    ['count', String(part.count)], ['stock', part.stock ?? part.nominal ?? 'none named'], ['section', `${length(part.section.thickness)} x ${length(part.section.width)}`], ['length', length(part.length)],
    ...(part.allowance ? [['allowance', length(part.allowance)] as const] : []), ['ends', showEnds(endsOf(part))],
    ...(part.notches.length > 0 ? [['notches', part.notches.map(notch => `${length(notch.length)} x ${length(notch.depth)} at ${length(notch.from)} from the ${notch.measuredFrom}, ${notch.side}, for ${notch.clears}`).join(' and ')] as const] : []),
    ['cut', part.cut], ['goes', part.goesTo],
    ...(part.place ? [['along the wall', part.place.stretches.map(({ from, to }) => `${length(from)} to ${length(to)}`).join(' and ')] as const] : []),
    ...(part.place?.bottom && part.place.top ? [['heights', `${length(part.place.bottom)} to ${length(part.place.top)}`] as const] : []),
    ...(part.measure === undefined ? [] : [['measure', part.measure] as const]),
];

function showFigure(figure: ModelFigure, length: (value: { readonly ticks: number }) => string): string {
    switch (figure.kind) {
        case 'length': return length(figure);
        case 'amount': return `${showNumber(figure.value, 3)} ${figure.unit}`.trimEnd();
        case 'words': return figure.words;
        default: return figure satisfies never;
    }
}

function showModelValue(value: ModelValue, length: (value: { readonly ticks: number }) => string): string {
    const plain = (one: ModelPlainValue): string => {
        switch (one.kind) {
            case 'length': return length(one);
            case 'amount': return one.unit === 's' ? `${showNumber(one.value / 60, 3)} min` : `${showNumber(one.value, 3)} ${one.unit}`.trimEnd();
            case 'word': return one.word;
            case 'text': return `"${one.text}"`;
            case 'flag': return one.flag ? 'yes' : 'no';
            case 'date': return one.date;
            case 'reference': return one.name;
            default: return one satisfies never;
        }
    };
    switch (value.kind) {
        case 'list': return value.items.map(plain).join(', ');
        case 'block': return [spoken(value.block), ...(value.title === undefined ? [] : [`"${value.title}"`]), ...(value.walls.length > 0 ? [`on ${value.walls.join(', ')}`] : [])].join(' ');
        default: return plain(value);
    }
}
