import { AstUtils } from 'langium';
import { letsIn } from '../model/lets.js';
import * as ast from '../syntax/generated/ast.js';
import { baseTermOf, nameOf } from '../syntax/words.js';
import { blocksIn, definitionOf, derivesFrom, isBlockKind, isShared } from '../vocabulary/index.js';

/** The files names are looked up in, by address. */
export interface NameLibrary {
    readonly root: (uri: string) => ast.File | undefined;
    /** Files a file takes names from, itself first. */
    readonly visible: (uri: string) => readonly string[];
}

/** One text of a block that may have several: a series, the job made from it, a variant; or an entry and the one it is made from. */
export interface TextLayer { readonly fact: ast.Fact; readonly uri: string }

export const offsetOf = (fact: ast.Fact): number => fact.$cstNode?.offset ?? -1;
/** What tells one fact from all others. */
export const placeKey = ({ fact, uri }: TextLayer): string => `${uri}#${offsetOf(fact)}`;

const shared = new WeakMap<ast.File, ReadonlyMap<string, readonly ast.Fact[]>>();
/** What a file gives to others, by name. */
function sharedOf(root: ast.File): ReadonlyMap<string, readonly ast.Fact[]> {
    let found = shared.get(root);
    if (!found) {
        const byName = new Map<string, ast.Fact[]>();
        for (const fact of root.items.flatMap(item => item.key === 'catalogue' ? item.body : [item])) {
            const name = nameOf(fact);
            if (name === undefined || !isShared(fact.key)) continue;
            byName.set(name, [...byName.get(name) ?? [], fact]);
        }
        shared.set(root, found = byName);
    }
    return found;
}

/** The shared block of a name that a file sees; `kinds` absent means of any kind. */
export function sharedNamed(library: NameLibrary, from: string, name: string, kinds?: readonly string[]): TextLayer | undefined {
    for (const uri of library.visible(from).toReversed()) {
        const root = library.root(uri);
        const fact = root && sharedOf(root).get(name)?.findLast(({ key }) => kinds === undefined || kinds.includes(key));
        if (fact) return { fact, uri };
    }
    return undefined;
}
/** Every shared block of a name that a file sees. */
export const allSharedNamed = (library: NameLibrary, from: string, name: string): readonly TextLayer[] =>
    library.visible(from).flatMap(uri => { const root = library.root(uri); return (root ? sharedOf(root).get(name) ?? [] : []).map(fact => ({ fact, uri })); });

/** House rules of one file, at its top and in its catalogues. */
export const rulesIn = (root: ast.File): readonly ast.Fact[] => root.items.flatMap(item => item.key === 'catalogue' ? item.body : [item]).filter(({ key }) => key === 'rule');

/** The texts a fact is made from and itself, the first of them first; one made from itself ends the row. */
export function layersOf(library: NameLibrary, fact: ast.Fact, uri: string): readonly TextLayer[] {
    const layers: TextLayer[] = [];
    for (let at: TextLayer | undefined = { fact, uri }; at && !layers.some(other => other.fact === at?.fact);) {
        layers.unshift(at);
        const base = baseTermOf(at.fact);
        const kind = derivesFrom(at.fact.key);
        at = base && kind !== undefined ? sharedNamed(library, at.uri, base.word.ref.$refText, [kind]) : undefined;
    }
    return layers;
}

/** Names of the `let`s and parameters that stand directly in a text. */
const values = new WeakMap<ast.Fact | ast.File, ReadonlyMap<string, 'let' | 'parameter'>>();
export function valuesIn(owner: ast.Fact | ast.File): ReadonlyMap<string, 'let' | 'parameter'> {
    let found = values.get(owner);
    if (!found) {
        const facts = ast.isFile(owner) ? owner.items : owner.body;
        const parameters = facts.flatMap(fact => { const name = fact.key === 'parameter' ? nameOf(fact) : undefined; return name === undefined ? [] : [[name, 'parameter'] as const]; });
        values.set(owner, found = new Map([...parameters, ...letsIn(facts).map(({ name }) => [name.ref.$refText, 'let'] as const)]));
    }
    return found;
}

/** The named blocks that stand directly in a text and belong to the job it is about; not its variants, parameters, rules. */
const named = new WeakMap<ast.Fact, ReadonlyMap<string, readonly ast.Fact[]>>();
export function blocksNamedIn(owner: ast.Fact): ReadonlyMap<string, readonly ast.Fact[]> {
    let found = named.get(owner);
    if (!found) {
        const byName = new Map<string, ast.Fact[]>();
        for (const fact of owner.body) {
            const name = isPart(owner, fact) ? nameOf(fact) : undefined;
            if (name !== undefined) byName.set(name, [...byName.get(name) ?? [], fact]);
        }
        named.set(owner, found = byName);
    }
    return found;
}
export const isPart = (owner: ast.Fact, fact: ast.Fact): boolean => isBlockKind(fact.key) && fact.key !== 'variant' && fact.key !== 'parameter' && blocksIn(owner.key).includes(fact.key);

/** The same block in lower texts, and this one: facts of one kind and name, or of a kind there is only one of. */
export function layersOfPart(layers: readonly TextLayer[], part: ast.Fact): readonly TextLayer[] {
    const name = nameOf(part);
    const isSame = (other: ast.Fact): boolean => other.key === part.key && (name !== undefined || nameOf(other) !== undefined ? nameOf(other) === name : isBlockKind(part.key) && !definitionOf(part.key).isRepeatable);
    const own = layers.findIndex(({ fact }) => fact.body.includes(part));
    return layers.slice(0, own < 0 ? layers.length : own + 1).flatMap(({ fact, uri }) => fact.body.includes(part) ? [{ fact: part, uri }] : fact.body.filter(isSame).map(found => ({ fact: found, uri })));
}

/** First words of every name in a text; a word that is no name does no harm here. */
const mentioned = new WeakMap<ast.Fact, ReadonlySet<string>>();
export function mentionsIn(fact: ast.Fact): ReadonlySet<string> {
    let found = mentioned.get(fact);
    if (!found) mentioned.set(fact, found = new Set(AstUtils.streamAllContents(fact).filter(ast.isWord).map(word => word.ref.$refText)));
    return found;
}
const mentionedInLets = new WeakMap<ast.File, ReadonlySet<string>>();
export function mentionsInLets(root: ast.File): ReadonlySet<string> {
    let found = mentionedInLets.get(root);
    if (!found) mentionedInLets.set(root, found = new Set(root.items.filter(({ key }) => key === 'let').flatMap(fact => [...mentionsIn(fact)])));
    return found;
}
const mentionedInRules = new WeakMap<ast.File, ReadonlySet<string>>();
export function mentionsInRules(root: ast.File): ReadonlySet<string> {
    let found = mentionedInRules.get(root);
    if (!found) mentionedInRules.set(root, found = new Set(rulesIn(root).flatMap(fact => [...mentionsIn(fact)])));
    return found;
}
