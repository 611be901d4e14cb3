import { spoken } from '../core/show.js';
import { isWall } from '../core/geometry.js';
import { isFunction } from '../model/functions.js';
import type * as ast from '../syntax/generated/ast.js';
import * as tree from '../syntax/generated/ast.js';
import { operatorWords } from '../syntax/token-list.js';
import { nameOf, parentOf } from '../syntax/words.js';
import { isBlockKind, isShared } from '../vocabulary/index.js';
import { hangingOn, lookedAt, meaningsIn, nameAt, namesOf, samePlaces, type PlacedName } from './name-index.js';
import { allSharedNamed, type NameLibrary } from './name-texts.js';
import { applyChanges, type TextChange } from './text-lines.js';

/** What renaming needs to see: every file, what may be changed, and a reader for the text as it would be. */
export interface RenameContext {
    readonly library: NameLibrary;
    readonly uris: readonly string[];
    readonly textOf: (uri: string) => string;
    readonly read: (text: string) => ast.File | undefined;
    /** Whether a file lies where it may be changed. */
    readonly mayChange: (uri: string) => boolean;
    /** How a file is called in messages. */
    readonly nameOfFile: (uri: string) => string;
}
export interface Refusal { readonly refused: string }
export type Renaming = { readonly edits: readonly (TextChange & { readonly uri: string })[] } | Refusal;

/** The name at an offset that can be renamed, or why it cannot; nothing where no name stands. */
export function renamable(uri: string, offset: number, context: RenameContext): { readonly start: number; readonly end: number; readonly name: string; readonly places: readonly PlacedName[] } | Refusal | undefined {
    const names = namesOf(uri, context.library);
    const name = names && nameAt(names, offset);
    if (!name) return undefined;
    const places = samePlaces(name.key, context.uris, context.library);
    if (!places.some(({ role }) => role !== 'use')) return { refused: `Nothing in sight is called ${name.name}, so there is nothing to rename.` };
    const outside = places.find(place => !context.mayChange(place.uri));
    if (outside) return { refused: `${name.name} also stands in ${context.nameOfFile(outside.uri)}, which lies outside the open folders. Open the folder that holds it first.` };
    return { start: name.start, end: name.end, name: name.name, places };
}

/**
 * Gives a name another spelling wherever it means this thing. Before anything is handed out the files are read as they would be: if any name came to mean
 * something else, the renaming is refused.
 */
export function rename(uri: string, offset: number, newName: string, context: RenameContext): Renaming | undefined {
    const found = renamable(uri, offset, context);
    if (!found || 'refused' in found) return found;
    if (newName === found.name) return { edits: [] };
    const trouble = spelling(newName) ?? takenBeside(found.places, newName) ?? takenInOtherFiles(found.places, newName, context) ?? roleOfVent(found.places, found.name, newName);
    if (trouble !== undefined) return { refused: trouble };
    const edits = found.places.map(({ uri: where, start, end }) => ({ uri: where, start, end, newText: newName }));
    return mixUp(found.places, edits, newName, context) ?? { edits };
}

const namePattern = /^[A-Za-z_][A-Za-z0-9_]*(-[A-Za-z][A-Za-z0-9_]*)*$/;
const ownWords = new Set(['on', 'is', 'x', 'to', 'yes', 'no', 'from', 'let', 'use', 'waive', ...operatorWords]);
/** Why a word cannot be a name whatever it stands for. */
function spelling(name: string): string | undefined {
    if (!namePattern.test(name)) return `‘${name}’ is not a name. A name is made of letters, digits and _, and begins with a letter.`;
    if (ownWords.has(name)) return `‘${name}’ has a meaning of its own and cannot be a name.`;
    if (isWall(name)) return `‘${name}’ is a wall and cannot be a name.`;
    if (isFunction(name)) return `‘${name}’ is a function and cannot be a name.`;
    if (isBlockKind(name)) return `‘${name}’ is a kind of block and cannot be a name.`;
    return undefined;
}

/** A vent that states no role has the one its name says, if it says one. */
function roleOfVent(places: readonly PlacedName[], name: string, newName: string): string | undefined {
    const word = [name, newName].find(one => one === 'intake' || one === 'exhaust');
    const isSilent = places.some(({ role, fact }) => role === 'declaration' && fact.key === 'vent' && !fact.body.some(({ key }) => key === 'role'));
    if (word === undefined || !isSilent) return undefined;
    return word === name ? `The vent is an ${word} because it is called so. Write role ${word} in it first.` : `Called ${word}, the vent would become one. Write its role in it first.`;
}

/** A name that stands beside a declaration already. */
function takenBeside(places: readonly PlacedName[], newName: string): string | undefined {
    for (const { role, fact, kind } of places) {
        if (role === 'use' || kind === 'let') continue;
        const parent = parentOf(fact);
        const root = rootOf(fact);
        const beside = kind === 'entry' || parent?.key === 'catalogue' ? root.items.flatMap(item => item.key === 'catalogue' ? item.body : []) : parent ? parent.body : root.items;
        const taken = beside.find(other => other !== fact && nameOf(other) === newName);
        if (taken) return takenBy(newName, taken, fact);
    }
    return undefined;
}
function takenBy(name: string, taken: ast.Fact, own: ast.Fact): string {
    const words = spoken(taken.key);
    return `The name ${name} is taken by ${taken.key === own.key ? 'another' : /^[aeiou]/.test(words) ? 'an' : 'a'} ${words}.`;
}
function rootOf(fact: ast.Fact): ast.File {
    let node: ast.Fact | ast.File = fact;
    while (tree.isFact(node)) node = node.$container;
    return node;
}

/** An entry or a series by the new name in another file that somebody uses beside this one. */
function takenInOtherFiles(places: readonly PlacedName[], newName: string, { library, uris, nameOfFile }: RenameContext): string | undefined {
    for (const place of places) {
        if (place.role === 'use' || !isShared(place.fact.key)) continue;
        for (const uri of uris) {
            if (!library.visible(uri).includes(place.uri)) continue;
            const other = allSharedNamed(library, uri, newName).find(({ fact }) => fact !== place.fact);
            if (other) return `The name ${newName} is taken by a ${spoken(other.fact.key)} of ${nameOfFile(other.uri)}, which ${nameOfFile(uri)} uses too.`;
        }
    }
    return undefined;
}

/** Reads what the edits make of the files and holds it beside what they were: each name has to mean what it meant. */
function mixUp(places: readonly PlacedName[], edits: readonly (TextChange & { readonly uri: string })[], newName: string, context: RenameContext): Refusal | undefined {
    const { library, uris } = context;
    const changed = new Set(edits.map(({ uri }) => uri));
    const trees = new Map([...changed].map(uri => [uri, context.read(applyChanges(context.textOf(uri), edits.filter(edit => edit.uri === uri)))]));
    const after: NameLibrary = { root: uri => trees.has(uri) ? trees.get(uri) : library.root(uri), visible: library.visible };
    const touched = hangingOn(changed, uris, library);
    // Names of files that are only looked at do not change, but one of them may be met.
    const beside = [...new Set(touched.flatMap(uri => lookedAt(uri, library)))].filter(uri => !touched.includes(uri));
    const around = [...touched, ...beside];
    const [meant, means] = [meaningsIn(around, library), meaningsIn(around, after)];
    const [forth, back] = [new Map<string, string>(), new Map<string, string>()];
    const lost: Refusal = { refused: `Called ${newName}, it would no longer be found everywhere it is named: the word has another meaning in one of those places.` };
    const declared = new Map(around.flatMap(uri => (namesOf(uri, library)?.occurrences ?? []).filter(({ role }) => role !== 'use').map(({ key, fact }) => [meant.of(key), fact] as const)));
    const own = places.find(({ role }) => role !== 'use');
    for (const uri of around) {
        const [before, now] = [namesOf(uri, library)?.occurrences ?? [], namesOf(uri, after)?.occurrences ?? []];
        if (before.length !== now.length) return lost;
        for (const [i, { key }] of before.entries()) {
            const [a, b] = [meant.of(key), means.of(now[i]?.key ?? '')];
            if ((forth.get(a) ?? b) !== b) return lost;
            const other = back.get(b) ?? a;
            if (other !== a) {
                const taken = declared.get(own && meant.of(own.key) === a ? other : a);
                return { refused: taken && own ? takenBy(newName, taken, own.fact) : `The word ${newName} is written already where this name would be seen, and would come to mean it.` };
            }
            forth.set(a, b);
            back.set(b, a);
        }
    }
    return undefined;
}
