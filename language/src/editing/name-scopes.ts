import * as ast from '../syntax/generated/ast.js';
import { nameOf } from '../syntax/words.js';
import { blocksNamedIn, isPart, mentionsIn, mentionsInLets, mentionsInRules, placeKey, valuesIn, type NameLibrary, type TextLayer } from './name-texts.js';

/** Names that mean one thing have one key; a key names the text that says it first. */
export interface Meaning { readonly key: string; readonly kind: 'let' | 'parameter' | 'block' }
/** A named block in sight: its key, and its texts from the first on. */
export interface PartMeaning extends Meaning { readonly layers: readonly TextLayer[] }

/** What words mean at one place of a text. */
export interface NameScope {
    /** A `let` or a parameter. */
    readonly value: (name: string) => Meaning | undefined;
    /** A named block. */
    readonly part: (name: string) => PartMeaning | undefined;
    /** Blocks of a kind, each with its texts. */
    readonly ofKind: (kind: string) => readonly (readonly TextLayer[])[];
    /** The key of a block that nothing in sight declares: a job may. */
    readonly free: (name: string) => string;
    /** The kind a house rule asks of one by one. */
    readonly each?: string;
}

const valueKey = (owner: string, name: string): string => `${owner}/value/${name}`;
const partKey = (owner: string, name: string): string => `${owner}/block/${name}`;
export const fileKey = (uri: string): string => `${uri}#file`;

/** The lowest of some texts in which a named block stands, and its key. */
export function partIn(layers: readonly TextLayer[], name: string): PartMeaning | undefined {
    const lowest = layers.find(({ fact }) => blocksNamedIn(fact).has(name));
    if (!lowest) return undefined;
    const [first] = blocksNamedIn(lowest.fact).get(name) ?? [];
    return {
        kind: 'block', key: partKey(placeKey(lowest), name),
        layers: layers.flatMap(({ fact, uri }) => (blocksNamedIn(fact).get(name) ?? []).filter(({ key }) => key === first?.key).map(found => ({ fact: found, uri }))),
    };
}

/** `let`s at the top of a file. */
export function fileValue(library: NameLibrary, uri: string, name: string): Meaning | undefined {
    const root = library.root(uri);
    return root && valuesIn(root).has(name) ? { kind: 'let', key: valueKey(fileKey(uri), name) } : undefined;
}

/**
 * A `let` or parameter seen from the last of some texts: a `let` said again above is the same name, and one that a lower text already has as a parameter
 * takes that one's place.
 */
export function valueIn(library: NameLibrary, layers: readonly TextLayer[], name: string): Meaning | undefined {
    const at = layers.findIndex(({ fact }) => valuesIn(fact).has(name));
    const [lowest, top] = [layers[at], layers.at(-1)];
    if (!lowest) return top && fileValue(library, top.uri, name);
    const kind = valuesIn(lowest.fact).get(name) ?? 'let';
    // What a lower text takes from the top of its file is said otherwise by a `let` of an upper one.
    const caught = kind === 'let' ? layers.slice(0, at).find(({ fact, uri }) => mentionsIn(fact).has(name) && fileValue(library, uri, name)) : undefined;
    return caught ? fileValue(library, caught.uri, name) : { kind, key: valueKey(placeKey(lowest), name) };
}

/** Names seen in a job, a series or a variant, from what it is made from upwards. */
export const jobScope = (library: NameLibrary, layers: readonly TextLayer[]): NameScope => ({
    value: name => valueIn(library, layers, name),
    part: name => partIn(layers, name),
    ofKind: kind => partsOfKind(layers, kind),
    free: name => partKey(layers.at(-1) ? placeKey(layers.at(-1) as TextLayer) : '', name),
});

function partsOfKind(layers: readonly TextLayer[], kind: string): readonly (readonly TextLayer[])[] {
    const groups = new Map<string, TextLayer[]>();
    for (const { fact, uri } of layers) for (const item of fact.body) {
        if (item.key !== kind || !isPart(fact, item)) continue;
        const name = nameOf(item) ?? '';
        const group = groups.get(name);
        if (group) group.push({ fact: item, uri }); else groups.set(name, [{ fact: item, uri }]);
    }
    return [...groups.values()];
}

const nothing = { part: () => undefined, ofKind: () => [] } as const;
/** Names seen at the top of a file: the file's own `let`s, and blocks of whatever job looks. */
export const fileScope = (library: NameLibrary, uri: string): NameScope => ({ ...nothing, value: name => fileValue(library, uri, name), free: name => partKey(fileKey(uri), name) });
/** Names seen in a catalogue. */
export const catalogueScope = (library: NameLibrary, layer: TextLayer): NameScope => ({
    ...nothing, free: name => partKey(placeKey(layer), name),
    value: name => valuesIn(layer.fact).has(name) ? { kind: 'let', key: valueKey(placeKey(layer), name) } : fileValue(library, layer.uri, name),
});
/** Names seen in a house rule. */
export const ruleScope = (outer: NameScope, uri: string, each: string | undefined): NameScope => ({ ...nothing, value: outer.value, free: name => partKey(`${uri}#rules`, name), ...(each !== undefined && { each }) });

/**
 * Keys that mean one block although no text is below the other: what a series speaks of and only a job has, what a `let` at the top of a file or a house
 * rule says of a block of the jobs it serves.
 */
export function* joinsOf(library: NameLibrary, layers: readonly TextLayer[]): Generator<readonly [string, string]> {
    const top = layers.at(-1);
    if (!top) return;
    for (const name of new Set(layers.flatMap(({ fact }) => [...blocksNamedIn(fact).keys()]))) {
        const lowest = layers.findIndex(({ fact }) => blocksNamedIn(fact).has(name));
        const key = partIn(layers, name)?.key;
        if (key === undefined) continue;
        for (const layer of layers.slice(0, lowest)) if (mentionsIn(layer.fact).has(name)) yield [key, partKey(placeKey(layer), name)];
        for (const uri of new Set(layers.map(layer => layer.uri))) if (mentions(library, uri, mentionsInLets, name)) yield [key, partKey(fileKey(uri), name)];
        for (const uri of library.visible(top.uri)) if (mentions(library, uri, mentionsInRules, name)) yield [key, partKey(`${uri}#rules`, name)];
    }
}
function mentions(library: NameLibrary, uri: string, namesIn: (root: ast.File) => ReadonlySet<string>, name: string): boolean {
    const root = library.root(uri);
    return root !== undefined && namesIn(root).has(name);
}
