import type { JobModel } from '../exports/model-schema.js';
import { compareMarks } from '../renderings/cut-list.js';
import { consequences, whats, type Change, type Rows, type Side, type What } from './change.js';
import { judgeChange } from './judge-change.js';
import { modelOf, rowsOf, sameRow, type ModelRows } from './model-rows.js';
import { pairWood, type Pair } from './pair-wood.js';
import { findRenames, renamedRow, type Renames } from './renames.js';

/**
 * What differs between two jobs: nothing for equal jobs, and the same changes the other way when they are given the other way round.
 * @returns in the order of their consequence, then of what they are about
 */
export function compare(a: JobModel, b: JobModel): readonly Change[] {
    const [left, right] = [rowsOf(a), rowsOf(b)];
    const renames = findRenames(left, right);
    return inOrder(whats.flatMap(what => changesOf(what, left, right, renames)));
}

/** The changes back. */
export const inverse = (changes: readonly Change[]): readonly Change[] => inOrder(changes.map(({ what, in: kind, from, to }) => judgeChange<What>(what, to, from, kind)));

/** A job with changes made to it: `applyChanges(a, compare(a, b))` is `b`. */
export function applyChanges(model: JobModel, changes: readonly Change[]): JobModel {
    const renames = new Map(changes.flatMap(({ says, from, to }) => says.includes('renamed') && from && to && typeof from.value === 'object' && 'block' in from.value ? [[from.key, { name: to.key, kind: from.value.block }] as const] : []));
    const before = rowsOf(model);
    const after = <W extends What>(what: W): ReadonlyMap<string, Rows[W]> => {
        const rows = renamedRows(what, before[what] as ReadonlyMap<string, Rows[W]>, renames);
        const own = changes.filter(change => change.what === what);
        for (const { from } of own) if (from) rows.delete(renamedRow<W>(what, from.key, from.value as Rows[W], renames)[0]);
        for (const { to } of own) if (to) rows.set(to.key, to.value as Rows[W]);
        return rows;
    };
    return modelOf({
        job: after('job'), given: after('given'), panel: after('panel'), part: after('part'), stock: after('stock'), catalogue: after('catalogue'), 'rule-set': after('rule-set'),
        finding: after('finding'), waiver: after('waiver'), computed: after('computed'),
    });
}

const renamedRows = <W extends What>(what: W, rows: ReadonlyMap<string, Rows[W]>, renames: Renames): Map<string, Rows[W]> => new Map([...rows].map(([key, row]) => renamedRow(what, key, row, renames)));

function changesOf(what: What, left: ModelRows, right: ModelRows, renames: Renames): readonly Change[] {
    const [a, b] = [left[what] as ReadonlyMap<string, Rows[What]>, right[what] as ReadonlyMap<string, Rows[What]>];
    const side = (rows: ReadonlyMap<string, Rows[What]>, key: string | undefined): Side<Rows[What]> | undefined => {
        const value = key === undefined ? undefined : rows.get(key);
        return key === undefined || value === undefined ? undefined : { key, value };
    };
    return pairsOf(what, left, right, renames).flatMap(([one, other]) => {
        const [from, to] = [side(a, one), side(b, other)];
        if (from && to) {
            const [key, value] = renamedRow(what, from.key, from.value, renames);
            const isRename = what === 'given' && key !== from.key && !key.includes('.');
            if (!isRename && key === to.key && sameRow(value, to.value)) return [];
        }
        return from || to ? [judgeChange(what, from, to, [kindFor(what, from, left), kindFor(what, to, right)].filter(kind => kind !== undefined).sort()[0])] : [];
    });
}

function pairsOf(what: What, left: ModelRows, right: ModelRows, renames: Renames): readonly Pair[] {
    if (what === 'part') return pairWood(left.part, right.part);
    if (what === 'panel') return pairWood(left.panel, right.panel);
    const taken = new Set<string>();
    const own = [...left[what] as ReadonlyMap<string, Rows[What]>].map(([key, row]): Pair => {
        const [other] = renamedRow<What>(what, key, row, renames);
        if (!right[what].has(other)) return [key, undefined];
        taken.add(other);
        return [key, other];
    });
    return [...own, ...[...right[what].keys()].filter(key => !taken.has(key)).map((key): Pair => [undefined, key])];
}

/** Kind of the innermost block a fact's path leads through. */
function kindFor(what: What, side: Side<unknown> | undefined, rows: ModelRows): string | undefined {
    if (!side || (what !== 'given' && what !== 'computed' && what !== 'catalogue')) return undefined;
    const facts = what === 'catalogue' ? rows.catalogue : rows.given;
    const words = side.key.split('.');
    for (let count = words.length; count > 0; count--) {
        const value = facts.get(words.slice(0, count).join('.'));
        if (value?.kind === 'block') return value.block;
    }
    return what === 'catalogue' ? undefined : words[0];
}

function inOrder(changes: readonly Change[]): readonly Change[] {
    const rank = new Map(changes.map(change => [change, [change.from?.key, change.to?.key].filter(key => key !== undefined).sort(compareMarks)] as const));
    const compareKeys = (a: Change, b: Change): number => {
        const [x, y] = [rank.get(a) ?? [], rank.get(b) ?? []];
        return compareMarks(x[0] ?? '', y[0] ?? '') || x.length - y.length || compareMarks(x[1] ?? '', y[1] ?? '');
    };
    return [...changes].sort((a, b) => consequences.indexOf(a.consequence) - consequences.indexOf(b.consequence) || whats.indexOf(a.what) - whats.indexOf(b.what) || compareKeys(a, b)
        || compareMarks(a.from?.key ?? '', b.from?.key ?? ''));
}
