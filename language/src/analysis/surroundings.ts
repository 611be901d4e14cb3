import { URI, type LangiumDocument } from 'langium';
import * as ast from '../syntax/generated/ast.js';
import type { HotroomSharedServices } from '../syntax/module.js';
import { isReadingReport } from '../syntax/lexer.js';
import { nameOf } from '../syntax/words.js';
import { isShared } from '../vocabulary/index.js';

/** One piece of a used file that findings of another may stand in. */
export interface Piece { readonly id: string; readonly start: number; readonly end: number; readonly text: string }

/** What a file gives to those that use it. */
export interface GivenFile {
    readonly uri: string;
    /** All that is no entry with a name, and which entries there are: every user may hang on it. */
    readonly frame: string;
    readonly entries: ReadonlyMap<string, readonly Entry[]>;
    readonly frameWords: ReadonlySet<string>;
    readonly pieces: readonly Piece[];
}
interface Text { readonly text: string; readonly words: ReadonlySet<string> }
/** An entry, and the same without what only the stock plan reads. */
interface Entry { readonly whole: Text; readonly withoutPrices: Text }

/** Facts that only the stock plan reads, which is no part of an analysis. A house rule or a calculation that asks for one says its word. */
const forPlansOnly = ['price'];

/** Where braces are mended the reading of one entry hangs on all others. */
const brokenStructure: ReadonlySet<string> = new Set(['brace-missing', 'brace-without-partner', 'kind-missing', 'block-not-closed', 'brace-on-its-own-line', 'file-too-large']);

const known = new WeakMap<ast.File, GivenFile>();

/** All that the files a file uses give to it, directly or through others, as they stand now. */
export function givenTo(document: LangiumDocument, shared: HotroomSharedServices): readonly GivenFile[] {
    const { Imports, LangiumDocuments } = shared.workspace;
    return [...Imports.dependencies(document)].sort().map(uri => {
        const used = LangiumDocuments.getDocument(URI.parse(uri));
        return (used && givenBy(used)) ?? { uri, frame: '', entries: new Map(), frameWords: new Set(), pieces: [] };
    });
}

/**
 * Whether a text means the same among other files as before, and so has the same findings, apart from where places in those files have moved to. It hangs on
 * the entries whose names stand among its words, and on those named in them in turn. Words are taken as they stand, whatever they mean there, so that no
 * way a name may come into a job (a link, an argument, a default, a choice) has to be known here. Everything outside of entries counts for all: `let`s,
 * house rules, which names there are.
 */
export function meansTheSame(text: string, before: readonly GivenFile[], now: readonly GivenFile[]): boolean {
    if (before.length !== now.length || before.some(({ uri, frame }, i) => uri !== now[i]?.uri || frame !== now[i].frame)) return false;
    if (before.every((file, i) => file === now[i])) return true;
    const own = wordsIn(text);
    const [here, there] = [reachedFrom(own, before), reachedFrom(own, now)];
    return here.size === there.size && [...here].every(([id, its]) => there.get(id) === its);
}

function reachedFrom(own: ReadonlySet<string>, files: readonly GivenFile[]): ReadonlyMap<string, string> {
    const quiet = reach(own, files, ({ withoutPrices }) => withoutPrices);
    // Whoever says the word may read one.
    return forPlansOnly.some(word => quiet.words.has(word)) ? reach(own, files, ({ whole }) => whole).texts : quiet.texts;
}

/** Entries that can be come to by their names, from some words on. */
function reach(from: ReadonlySet<string>, files: readonly GivenFile[], read: (entry: Entry) => Text): { readonly texts: ReadonlyMap<string, string>; readonly words: ReadonlySet<string> } {
    const words = new Set(from);
    for (const { frameWords } of files) for (const word of frameWords) words.add(word);
    const texts = new Map<string, string>();
    // The set grows while it is gone through.
    for (const word of words) for (const { uri, entries } of files) {
        entries.get(word)?.forEach((entry, i) => {
            const { text, words: its } = read(entry);
            texts.set(`${uri} ${word} ${i}`, text);
            for (const other of its) words.add(other);
        });
    }
    return { texts, words };
}

function givenBy(document: LangiumDocument): GivenFile | undefined {
    const root = document.parseResult.value;
    if (!ast.isFile(root)) return undefined;
    let found = known.get(root);
    if (!found) known.set(root, found = readGiven(document, root));
    return found;
}

function readGiven(document: LangiumDocument, root: ast.File): GivenFile {
    const text = document.textDocument.getText();
    const report = document.parseResult.lexerReport;
    const [damaged, problems] = isReadingReport(report) ? [[...report.damaged], report.problems] : [[-1], []];
    const entries = new Map<string, Entry[]>();
    const pieces: Piece[] = [];
    const frame: string[] = [];
    const frameWords = new Set<string>();
    const damageIn = (start: number, end: number): string => damaged.filter(offset => start <= offset && offset < end).map(offset => offset - start).join(' ');
    const addPiece = (id: string, start: number, end: number): void => { pieces.push({ id: `${id} ${pieces.filter(piece => piece.id.startsWith(`${id} `)).length}`, start, end, text: text.slice(start, end) }); };
    const toFrame = (start: number, end: number): void => {
        const its = text.slice(start, end);
        addPiece(its, start, end);
        frame.push(its, damageIn(start, end));
        for (const word of wordsIn(its)) frameWords.add(word);
    };
    const toEntries = (fact: ast.Fact, name: string): void => {
        const [start, end] = [startOf(fact), endOf(fact)];
        addPiece(`${fact.key} ${name}`, start, end);
        frame.push(`${fact.key} ${name}`);
        const damage = damageIn(start, end);
        const read = (its: string): Text => ({ text: `${its}\0${damage}`, words: wordsIn(its) });
        const entry: Entry = { whole: read(text.slice(start, end)), withoutPrices: read(withoutPrices(fact, text)) };
        entries.set(name, [...entries.get(name) ?? [], entry]);
    };
    const place = (fact: ast.Fact): void => { const name = isShared(fact.key) ? nameOf(fact) : undefined; if (name === undefined) toFrame(startOf(fact), endOf(fact)); else toEntries(fact, name); };
    for (const item of root.items) {
        // What a job of that file says is for that file alone.
        if (item.key === 'job') continue;
        const [first] = item.body;
        if (item.key !== 'catalogue' || !first) { place(item); continue; }
        toFrame(startOf(item), startOf(first));
        for (const fact of item.body) place(fact);
    }
    if (damaged.includes(-1) || problems.some(({ id }) => brokenStructure.has(id))) frame.push(text);
    return { uri: document.uri.toString(), frame: JSON.stringify(frame), entries, frameWords, pieces };
}

/** The text of an entry with the facts left out that only the stock plan reads. */
function withoutPrices(entry: ast.Fact, text: string): string {
    let kept = '';
    let from = startOf(entry);
    const visit = (facts: readonly ast.Fact[]): void => {
        for (const fact of facts) {
            if (forPlansOnly.includes(fact.key)) { kept += text.slice(from, startOf(fact)); from = endOf(fact); } else visit(fact.body);
        }
    };
    visit(entry.body);
    return kept + text.slice(from, endOf(entry));
}

const startOf = (fact: ast.Fact): number => fact.$cstNode?.offset ?? 0;
const endOf = (fact: ast.Fact): number => fact.$cstNode?.end ?? 0;
/** All words, and the parts of those with hyphens. */
function wordsIn(text: string): Set<string> {
    const words = new Set<string>();
    for (const [word] of text.matchAll(/[A-Za-z_][A-Za-z0-9_]*(?:-[A-Za-z][A-Za-z0-9_]*)*/g)) {
        words.add(word);
        if (word.includes('-')) for (const part of word.split('-')) words.add(part);
    }
    return words;
}
