import type * as ast from '../syntax/generated/ast.js';
import { namesIn, type DocumentNames, type NameOccurrence, type NameStep } from './name-occurrences.js';
import type { NameLibrary, TextLayer } from './name-texts.js';

/** One place of a name, with its file. */
export interface PlacedName extends NameOccurrence { readonly uri: string }

interface Kept { readonly names: DocumentNames; readonly looked: ReadonlyMap<string, ast.File | undefined>; readonly seen: ReadonlyMap<string, readonly string[]> }
const kept = new WeakMap<ast.File, Kept>();

/** Names of a file and the files that were looked at for them; kept while all of those stay as they are. */
function lookAt(uri: string, library: NameLibrary): Kept | undefined {
    const root = library.root(uri);
    if (!root) return undefined;
    const known = kept.get(root);
    if (known?.names.uri === uri && [...known.looked].every(([other, tree]) => library.root(other) === tree) && [...known.seen].every(([other, visible]) => isSame(library.visible(other), visible))) return known;
    const looked = new Map<string, ast.File | undefined>([[uri, root]]);
    const seen = new Map<string, readonly string[]>();
    const names = namesIn(uri, root, {
        root: other => { const tree = library.root(other); looked.set(other, tree); return tree; },
        visible: other => { const visible = library.visible(other); seen.set(other, visible); return visible; },
    });
    const found = { names, looked, seen };
    kept.set(root, found);
    return found;
}
const isSame = (a: readonly string[], b: readonly string[]): boolean => a === b || (a.length === b.length && a.every((one, i) => one === b[i]));

/** Names of one file. */
export const namesOf = (uri: string, library: NameLibrary): DocumentNames | undefined => lookAt(uri, library)?.names;
/** Files whose names hang on what stands in one of some files, those among them. */
export const hangingOn = (uris: ReadonlySet<string>, all: readonly string[], library: NameLibrary): readonly string[] =>
    all.filter(uri => uris.has(uri) || lookedAt(uri, library).some(other => uris.has(other)));
/** Files that were looked at for the names of one, itself among them. */
export const lookedAt = (uri: string, library: NameLibrary): readonly string[] => [...lookAt(uri, library)?.looked.keys() ?? []];

/** Which keys are one, through all pairs that are said to be. */
export class Meanings {
    private readonly above = new Map<string, string>();
    constructor(joins: Iterable<readonly [string, string]>) {
        for (const [a, b] of joins) {
            const [first, second] = [this.of(a), this.of(b)];
            if (first !== second) this.above.set(first, second);
        }
    }
    of(key: string): string {
        let top = key;
        for (let next = this.above.get(top); next !== undefined; next = this.above.get(top)) top = next;
        return top;
    }
}
export const meaningsIn = (uris: readonly string[], library: NameLibrary): Meanings => new Meanings(uris.flatMap(uri => namesOf(uri, library)?.joins ?? []));

/** The name an offset touches from either side. */
export const nameAt = (names: DocumentNames, offset: number): NameOccurrence | undefined => at(names.occurrences, offset);
/** The word an offset touches that leads somewhere and is no name. */
export const stepAt = (names: DocumentNames, offset: number): NameStep | undefined => at(names.steps, offset);
const at = <T extends { readonly start: number; readonly end: number }>(items: readonly T[], offset: number): T | undefined =>
    items.find(({ start, end }) => start <= offset && offset < end) ?? items.find(({ start, end }) => start < offset && offset <= end);

/** Every place among some files that means what a name means, files in the order given. */
export function samePlaces(key: string, uris: readonly string[], library: NameLibrary): readonly PlacedName[] {
    const meanings = meaningsIn(uris, library);
    const wanted = meanings.of(key);
    return uris.flatMap(uri => (namesOf(uri, library)?.occurrences ?? []).filter(one => meanings.of(one.key) === wanted).map(one => ({ ...one, uri })));
}

/** A place to go to: the whole fact, and its name or its first word. */
export interface Lead { readonly uri: string; readonly fact: ast.Fact; readonly start: number; readonly end: number }
const leadTo = ({ fact, uri }: TextLayer): Lead => { const start = fact.$cstNode?.offset ?? 0; return { uri, fact, start, end: start + fact.key.length }; };

/**
 * Where the word at an offset leads: a name to what declares it, a property of a path to its facts, a fact that wins to the facts it wins over, and one
 * that is won over to those that win.
 */
export function leadsAt(uri: string, offset: number, all: readonly string[], library: NameLibrary): { readonly start: number; readonly end: number; readonly leads: readonly Lead[] } | undefined {
    const names = namesOf(uri, library);
    const name = names && nameAt(names, offset);
    if (name) {
        const places = samePlaces(name.key, all, library).filter(({ role }) => role !== 'use');
        const declared = places.filter(({ role }) => role === 'declaration');
        const leads = (declared.length > 0 ? declared : places).map(place => ({ uri: place.uri, fact: place.fact, start: place.start, end: place.end }));
        return leads.length > 0 ? { start: name.start, end: name.end, leads } : undefined;
    }
    const step = names && stepAt(names, offset);
    if (step) return { start: step.start, end: step.end, leads: step.leadsTo.map(leadTo) };
    return names && wonOverAt(uri, offset, all, library);
}

/** From a fact of a series to the facts that say it otherwise. */
function wonOverAt(uri: string, offset: number, all: readonly string[], library: NameLibrary): ReturnType<typeof leadsAt> {
    const leads: Lead[] = [];
    let found: { start: number; end: number } | undefined;
    for (const other of all) for (const { start, end, leadsTo, why } of namesOf(other, library)?.steps ?? []) {
        if (why !== 'wins-over') continue;
        const beaten = leadsTo.find(layer => { const lead = leadTo(layer); return layer.uri === uri && lead.start <= offset && offset <= lead.end; });
        const winner = beaten && ownerOf(other, start, library);
        if (!beaten || !winner) continue;
        const { start: from, end: to } = leadTo(beaten);
        found = { start: from, end: to };
        leads.push({ uri: other, fact: winner, start, end });
    }
    return found && { ...found, leads };
}
function ownerOf(uri: string, start: number, library: NameLibrary): ast.Fact | undefined {
    let facts = library.root(uri)?.items ?? [];
    for (;;) {
        const around: ast.Fact | undefined = facts.find(({ $cstNode: at }) => at && at.offset <= start && start < at.end);
        if (!around || around.$cstNode?.offset === start) return around;
        facts = around.body;
    }
}

/** Names of the `let`s among some offsets that say otherwise what a text below gave; those of a variant among them count for the variant only. */
export function letsSaidAgain(uri: string, start: number, end: number, library: NameLibrary): readonly string[] {
    const names = namesOf(uri, library);
    return (names?.occurrences ?? []).filter(one => one.role === 'override' && one.fact.key === 'let' && start <= one.start && one.start < end && one.fact.$container.$cstNode?.offset === start).map(({ name }) => name);
}
