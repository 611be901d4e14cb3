import type { JobModel, ModelFinding, ModelPanel, ModelPart, ModelStock, ModelValue, ModelWaiver } from '../exports/model-schema.js';

/** What somebody has to do about a change, the dearest first. */
export const consequences = ['cut', 'order', 'approve', 'drawing'] as const;
export type Consequence = (typeof consequences)[number];

/** Rows of a model by collection, each under a key of its own. */
export interface Rows {
    /** Name, title, number, revision, variant, and whether everything could be read. */
    readonly job: string | boolean;
    readonly given: ModelValue;
    readonly panel: ModelPanel;
    readonly part: ModelPart;
    readonly stock: ModelStock;
    readonly catalogue: ModelValue;
    readonly 'rule-set': JobModel['ruleSets'][number];
    readonly finding: ModelFinding;
    readonly waiver: ModelWaiver;
    readonly computed: JobModel['computed'][string];
}
export type What = keyof Rows;
/** In the order of a report. */
export const whats = ['job', 'panel', 'part', 'stock', 'catalogue', 'rule-set', 'finding', 'waiver', 'computed', 'given'] as const satisfies readonly What[];

/** How a row changed, in words; several may hold of one row. */
export const changeWords = [
    'added', 'gone', 'new', 'cured', 'renamed', 'resized', 'other stock', 'other count', 'other kind', 'other mass', 'changed', 'moved', 're-marked', 'noted otherwise', 'accepted', 'no longer accepted', 'expired', 'in force again',
] as const;
export type ChangeWord = (typeof changeWords)[number];

export interface Side<T> { readonly key: string; readonly value: T }

/** One row that is not the same on both sides. A row that is there on one side only has no other. */
export interface ChangeOf<W extends What> {
    readonly what: W;
    readonly consequence: Consequence;
    readonly says: readonly ChangeWord[];
    /** Kind of block a given, computed or catalogue fact belongs to. */
    readonly in?: string;
    readonly from?: Side<Rows[W]>;
    readonly to?: Side<Rows[W]>;
}
export type Change = { [W in What]: ChangeOf<W> }[What];
