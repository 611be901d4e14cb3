import { spoken } from '../core/show.js';
import { byText } from '../model/given-facts.js';
import type { ModelFigure, ModelFinding, ModelPanel, ModelPlainValue, ModelValue, ModelWaiver } from '../exports/model-schema.js';
import { isBlockKind } from '../vocabulary/index.js';
import type { Rows, What } from './change.js';
import type { ModelRows } from './model-rows.js';

/** Names of blocks on one side, and what the same blocks are called on the other. */
export type Renames = ReadonlyMap<string, { readonly name: string; readonly kind: string }>;

/** Blocks of both sides that say the same and have another name. Called with the sides changed over it gives the same pairs the other way. */
export function findRenames(a: ModelRows, b: ModelRows): Renames {
    const [left, right] = [lonely(a, b), lonely(b, a)];
    const renames = new Map<string, { readonly name: string; readonly kind: string }>();
    for (const [says, names] of left) {
        const others = right.get(says) ?? [];
        names.forEach((name, i) => { const other = others[i]; const block = a.given.get(name); if (other !== undefined && block?.kind === 'block') renames.set(name, { name: other, kind: block.block }); });
    }
    return renames;
}

/** Blocks of one side whose name the other lacks, in the order of their names, by what they say. */
function lonely({ given }: ModelRows, other: ModelRows): ReadonlyMap<string, readonly string[]> {
    const found = new Map<string, string[]>();
    for (const [name, value] of [...given].sort(([a], [b]) => a < b ? -1 : 1)) {
        // Words of the language have facts of their own that are no block's; a nameless block keeps to its kind.
        if (value.kind !== 'block' || name.includes('.') || other.given.has(name) || isWord(name)) continue;
        const { title: _title, ...own } = value;
        const facts = [...given].filter(([path]) => path.startsWith(`${name}.`)).map(([path, fact]) => [path.slice(name.length), withoutNames(fact, given)] as const).sort(([a], [b]) => a < b ? -1 : 1);
        const says = JSON.stringify([own, facts]);
        const same = found.get(says);
        if (same) same.push(name); else found.set(says, [name]);
    }
    return found;
}
const isWord = (name: string): boolean => name === 'air' || isBlockKind(name.replace(/_\d+$/, ''));

/** Blocks that name each other may have new names all together. */
const withoutNames = (value: ModelValue, given: ModelRows['given']): ModelValue => value.kind === 'reference' && given.get(value.name)?.kind === 'block' ? { kind: 'reference', name: '' } : value;

/** Another name of a path's first word. */
export function renamedPath(path: string, renames: Renames): string {
    const [first = '', ...rest] = path.split('.');
    return [renames.get(first)?.name ?? first, ...rest].join('.');
}

/** A row as the other side would call it. */
export function renamedRow<W extends What>(what: W, key: string, row: Rows[W], renames: Renames): readonly [string, Rows[W]] {
    if (renames.size === 0) return [key, row];
    switch (what) {
        case 'given': return [renamedPath(key, renames), renamedValue(row as ModelValue, renames) as Rows[W]];
        case 'computed': return [renamedPath(key, renames), row];
        case 'finding': {
            const finding = row as ModelFinding;
            const { measured, required } = finding;
            return renamedAbout(key, { ...finding, ...(measured && { measured: renamedFigure(measured, renames) }), ...(required && { required: renamedFigure(required, renames) }) }, renames) as readonly [string, Rows[W]];
        }
        case 'waiver': return renamedAbout(key, row as ModelWaiver, renames) as readonly [string, Rows[W]];
        case 'panel': {
            const panel = row as ModelPanel;
            return [key, {
                ...panel, holds: panel.holds.map(one => renamedWords(one, renames)).sort(byText),
                cutOuts: panel.cutOuts.map(one => ({ ...one, of: renamedWords(one.of, renames) })).sort((a, b) => byText(a.of, b.of)),
            } as Rows[W]];
        }
        default: return [key, row];
    }
}

function renamedAbout<T extends ModelFinding | ModelWaiver>(key: string, row: T, renames: Renames): readonly [string, T] {
    if (row.about === undefined) return [key, row];
    const about = renamedPath(row.about, renames);
    const other = key.replace(` on ${row.about}`, () => ` on ${about}`);
    return [other, { ...row, about, key: other }];
}

/** Figures in words may name a block: `on door entry`. */
const renamedFigure = (figure: ModelFigure, renames: Renames): ModelFigure => figure.kind === 'words' ? { kind: 'words', words: renamedWords(figure.words, renames) } : figure;

/** Only behind the word for its kind is a name a name: `on door entry`; a bench called lower stands in no lower half. */
const renamedWords = (words: string, renames: Renames): string => [...renames].reduce((changed, [name, { name: other, kind }]) => {
    const before = spoken(kind);
    return changed.replaceAll(new RegExp(`(?<![\\w-])${before} ${name.replaceAll(/[^\w-]/g, '\\$&')}(?![\\w-])`, 'g'), () => `${before} ${other}`);
}, words);

function renamedValue(value: ModelValue, renames: Renames): ModelValue {
    const plain = (one: ModelPlainValue): ModelPlainValue => one.kind === 'reference' ? { kind: 'reference', name: renames.get(one.name)?.name ?? one.name } : one;
    if (value.kind === 'block') return value;
    return value.kind === 'list' ? { kind: 'list', items: value.items.map(plain) } : plain(value);
}
