import type { Length } from '../core/length.js';
import { showNumber, showWritable, type LengthUnit } from '../core/show.js';
import type { Span } from '../core/span.js';
import { placeKey } from '../exports/export-job.js';
import type { ModelOfJob } from '../exports/job-models.js';
import type { JobModel, ModelFigure } from '../exports/model-schema.js';
import { showCount, showMoney } from '../renderings/show-figures.js';
import { placeOfJob, type SideJob } from './compare-jobs.js';
import { rowsOf } from './model-rows.js';
import { findRenames, renamedPath, type Renames } from './renames.js';

/** One of the figures a reviewer looks at first, on both sides, changed or not. */
export interface KeyFigure {
    readonly title: string;
    readonly before?: string;
    readonly after?: string;
    /** `+1 1/4"`, `-12.40 USD`, `no change`; of words only that they differ, of a figure of one side `added` or `gone`. */
    readonly difference: string;
    readonly isChanged: boolean;
    readonly places: { readonly before?: Span; readonly after?: Span };
}

type Shown =
    | { readonly kind: 'length'; readonly length: Length }
    | { readonly kind: 'amount'; readonly value: number; readonly unit: string; readonly decimals: number }
    | { readonly kind: 'money'; readonly minor: number; readonly currency: string }
    | { readonly kind: 'count'; readonly count: number }
    | { readonly kind: 'words'; readonly words: string };
interface Entry { readonly title: string; readonly shown: Shown; readonly at?: Span; readonly remark?: string }

/** Computed figures that decide what a job costs, weighs, draws and lets pass; `*` stands for a block. */
const chosen = ['room.inside.volume', 'room.panel_mass', 'room.assembly_headroom', '*.head_clearance', '*.power', '*.circuit'] as const;

/**
 * Cost, mass, volume, headroom, circuit and findings of a job beside those of another. The cost is that of the wood as cut, at the prices of the
 * catalogue: boards, saw cuts and offcuts are told by the stock plan.
 */
export function keyFigures(before: SideJob, after: SideJob): readonly KeyFigure[] {
    const renames = findRenames(rowsOf(before.model.model), rowsOf(after.model.model));
    const { unit } = after.model.own().job;
    const [old, now] = [entriesOf(before, renames), entriesOf(after, new Map())];
    return [...new Set([...now.keys(), ...old.keys()])].map(key => figureOf(old.get(key), now.get(key), unit));
}

function figureOf(old: Entry | undefined, now: Entry | undefined, unit: LengthUnit): KeyFigure {
    const text = (entry: Entry): string => `${show(entry.shown, unit)}${entry.remark === undefined ? '' : `, ${entry.remark}`}`;
    const [before, after] = [old && text(old), now && text(now)];
    const isChanged = JSON.stringify([old?.shown, old?.remark]) !== JSON.stringify([now?.shown, now?.remark]);
    return {
        title: (now ?? old)?.title ?? '', ...(before !== undefined && { before }), ...(after !== undefined && { after }), isChanged,
        difference: !isChanged ? 'no change' : !old ? 'added' : !now ? 'gone' : differenceOf(old.shown, now.shown, unit) ?? 'changed',
        places: { ...(old?.at && { before: old.at }), ...(now?.at && { after: now.at }) },
    };
}

function entriesOf(side: SideJob, renames: Renames): ReadonlyMap<string, Entry> {
    const { model } = side;
    const job = placeOfJob(side);
    const at = job && { at: job };
    const own = (path: string): Entry | undefined => {
        const fact = model.model.computed[path];
        if (!fact) return undefined;
        const [first = ''] = path.split('.');
        const block = model.places.get(placeKey('given', first)) ?? job;
        return { title: first === 'room' ? fact.title : `${fact.title}, ${first}`, shown: shownFigure(fact.value, path, model), ...(block && { at: block }) };
    };
    const computed = chosen.flatMap(pattern => Object.keys(model.model.computed).filter(path => pattern.startsWith('*') ? path.split('.').length === 2 && path.endsWith(pattern.slice(1)) : path === pattern))
        .flatMap((path): (readonly [string, Entry])[] => { const entry = own(path); return entry ? [[renamedPath(path, renames), entry]] : []; });
    const pieces = model.model.parts.reduce((sum, { count }) => sum + count, 0);
    return new Map<string, Entry>([
        ...costs(model.model).map(([currency, minor, remark]): [string, Entry] => [`cost ${currency}`, { title: 'wood as cut, before waste', shown: { kind: 'money', minor, currency }, ...(remark !== undefined && { remark }), ...at }]),
        ['pieces', { title: 'pieces to cut', shown: { kind: 'count', count: pieces }, ...at }],
        ['panels', { title: 'panels', shown: { kind: 'count', count: model.model.panels.length }, ...at }],
        ...computed,
        ...(['error', 'warning', 'info'] as const).map((severity): [string, Entry] => [`findings ${severity}`, {
            title: severity === 'info' ? 'remarks' : `${severity}s`, shown: { kind: 'count', count: model.model.findings.filter(one => one.severity === severity && !one.waived).length }, ...at,
        }]),
        ['waived', { title: 'findings accepted by a waiver', shown: { kind: 'count', count: model.model.findings.filter(({ waived }) => waived).length }, ...at }],
    ]);
}

/** Cost by currency. A stock without a price per length is no part of it, and said to be missing. */
function costs({ stock }: JobModel): readonly (readonly [currency: string, minor: number, remark: string | undefined])[] {
    const sums = new Map<string, number>();
    for (const { netCost } of stock) if (netCost) sums.set(netCost.currency, (sums.get(netCost.currency) ?? 0) + netCost.minor);
    const unpriced = stock.filter(({ netCost }) => !netCost).length;
    return [...sums].map(([currency, minor]) => [currency, minor, unpriced === 0 ? undefined : `without ${showCount(unpriced, 'stock')} of no price by length`] as const);
}

function shownFigure(figure: ModelFigure, path: string, model: ModelOfJob): Shown {
    switch (figure.kind) {
        case 'length': return { kind: 'length', length: figure.ticks as Length };
        case 'amount': return { kind: 'amount', value: figure.value, unit: figure.unit, decimals: figure.unit === 'kg' ? 1 : 3 };
        case 'words': {
            const found = model.own().facts.get(path);
            return { kind: 'words', words: found.kind === 'value' && found.fact.value.kind === 'words' ? found.fact.value.words : figure.words };
        }
        default: return figure satisfies never;
    }
}

function show(shown: Shown, unit: LengthUnit): string {
    switch (shown.kind) {
        case 'length': return showWritable(shown.length, unit);
        case 'amount': return `${showNumber(shown.value, shown.decimals)} ${shown.unit}`.trimEnd();
        case 'money': return showMoney(shown);
        case 'count': return String(shown.count);
        case 'words': return shown.words;
        default: return shown satisfies never;
    }
}

function differenceOf(a: Shown, b: Shown, unit: LengthUnit): string | undefined {
    const signed = (by: number, text: string): string => `${by < 0 ? '-' : '+'}${text}`;
    if (a.kind === 'length' && b.kind === 'length') {
        const by = b.length - a.length;
        const text = showWritable(Math.abs(by) as Length, unit);
        return text.startsWith('≈') ? `≈${signed(by, text.slice(1))}` : signed(by, text);
    }
    if (a.kind === 'amount' && b.kind === 'amount' && a.unit === b.unit) return signed(b.value - a.value, `${showNumber(Math.abs(b.value - a.value), b.decimals)} ${b.unit}`.trimEnd());
    if (a.kind === 'money' && b.kind === 'money') return signed(b.minor - a.minor, showMoney({ minor: Math.abs(b.minor - a.minor), currency: b.currency }));
    return a.kind === 'count' && b.kind === 'count' ? signed(b.count - a.count, String(Math.abs(b.count - a.count))) : undefined;
}
