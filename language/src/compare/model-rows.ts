import { compareMarks } from '../renderings/cut-list.js';
import type { JobModel } from '../exports/model-schema.js';
import type { Rows, What } from './change.js';

/** A model as rows by collection and key; nothing of it is left out, so that the model can be made of them again. */
export type ModelRows = { readonly [W in What]: ReadonlyMap<string, Rows[W]> };

const by = <T>(rows: readonly T[], key: (row: T) => string): ReadonlyMap<string, T> => new Map(rows.map(row => [key(row), row]));

export const rowsOf = (model: JobModel): ModelRows => ({
    job: new Map(Object.entries(model.job).flatMap(([key, value]) => value === undefined ? [] : [[key, value] as const])), given: new Map(Object.entries(model.given)), catalogue: new Map(Object.entries(model.catalogue)), computed: new Map(Object.entries(model.computed)),
    'rule-set': by(model.ruleSets, ({ id }) => id), panel: by(model.panels, ({ mark }) => mark), part: by(model.parts, ({ mark }) => mark), stock: by(model.stock, ({ key }) => key),
    finding: by(model.findings, ({ key }) => key), waiver: by(model.waivers, ({ key }) => key),
});

const byText = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number => a < b ? -1 : a > b ? 1 : 0;
const byMark = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number => compareMarks(a, b);

/** The model of some rows, in the order models have. */
export function modelOf(rows: ModelRows): JobModel {
    const list = <W extends What>(what: W, order = byText): Rows[W][] => [...rows[what]].sort(order).map(([, row]) => row);
    const record = <W extends What>(what: W): Record<string, Rows[W]> => Object.fromEntries([...rows[what]].sort(byText));
    const job = record('job');
    const text = (key: string): string | undefined => typeof job[key] === 'string' ? job[key] : undefined;
    const [title, number, revision, variant] = [text('title'), text('number'), text('revision'), text('variant')];
    return {
        job: {
            name: text('name') ?? '', ...(title !== undefined && { title }), ...(number !== undefined && { number }), ...(revision !== undefined && { revision }), ...(variant !== undefined && { variant }),
            isWhole: job['isWhole'] === true,
        },
        ruleSets: list('rule-set'), given: record('given'), catalogue: record('catalogue'), computed: record('computed'), panels: list('panel', byMark), parts: list('part', byMark), stock: list('stock'),
        findings: list('finding', byMark), waivers: list('waiver', byMark),
    };
}

/** Whether two rows say the same, in whatever order their members stand. */
export function sameRow(a: unknown, b: unknown): boolean {
    if (a === b) return true;
    if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
    if (Array.isArray(a) || Array.isArray(b)) return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((item, i) => sameRow(item, b[i]));
    const [left, right] = [a as Readonly<Record<string, unknown>>, b as Readonly<Record<string, unknown>>];
    const keys = Object.keys(left).filter(key => left[key] !== undefined);
    return keys.length === Object.keys(right).filter(key => right[key] !== undefined).length && keys.every(key => sameRow(left[key], right[key]));
}
