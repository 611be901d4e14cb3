import { isFunction } from '../model/functions.js';
import { endOf, operatorWords, touches, type Token } from '../syntax/token-list.js';
import type { Property } from '../vocabulary/block.js';
import { blockKinds, blocksIn, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import { isStatement } from '../vocabulary/statements.js';
import { isWordToken, type RawFact, type RawScope, type RawText } from './raw-facts.js';
import { walls } from './samples.js';
import { headerParts } from './spot.js';

/** What a piece of text is, for colouring. */
export type HighlightKind =
    | 'block' | 'statement' | 'property' | 'name' | 'reference' | 'choice' | 'connective' | 'figure' | 'text' | 'remark' | 'operator'
    /** A function, a word behind a point, a parameter of a series, a series (or entry) something is made from, a kind of block that stands for all of them. */
    | 'function' | 'member' | 'parameter' | 'base' | 'kind';
export interface Highlight { readonly start: number; readonly end: number; readonly kind: HighlightKind }

const connectives: ReadonlySet<string> = new Set(['on', 'from', 'per', 'is', 'because', 'by', 'until', ...operatorWords]);
const choiceWords: ReadonlySet<string> = new Set(['if', 'then', 'else', 'and', 'or']);
let choices: ReadonlySet<string> | undefined;
/** A word that some property can be: it may be compared with in any calculation. */
const isChoice = (word: string): boolean => (choices ??= new Set(blockKinds.flatMap(kind => [...propertiesOf(kind).values()].flatMap(({ property }) => property.type.choices ?? [])).filter(one => !connectives.has(one)))).has(word);
const isWall = (word: string): boolean => (walls as readonly string[]).includes(word);

/** Every piece of the text that has a meaning of its own, in order. A word that means nothing where it stands is left out. */
export function highlights(raw: RawText): readonly Highlight[] {
    const found: Highlight[] = raw.comments.map(comment => piece(comment, 'remark'));
    for (const fact of raw.facts) {
        const kinds = wordsOf(fact, raw);
        for (const token of fact.tokens) {
            const kind = kinds.get(token) ?? literalKind(token, raw);
            if (kind) found.push(piece(token, kind));
        }
    }
    return found.sort((a, b) => a.start - b.start);
}

const piece = (token: Token, kind: HighlightKind): Highlight => ({ start: token.startOffset, end: endOf(token), kind });

function literalKind(token: Token, { types }: RawText): HighlightKind | undefined {
    switch (token.tokenType) {
        case types.text: return 'text';
        case types.length: case types.quantity: case types.number: case types.date: return 'figure';
        default: return /^(?:[-+*/]|[<>]=?|!?=)$/.test(token.image) ? 'operator' : undefined;
    }
}

/** The words of one fact by what they are. */
function wordsOf(fact: RawFact, raw: RawText): ReadonlyMap<Token, HighlightKind> {
    const kinds = new Map<Token, HighlightKind>();
    const { key, scope } = fact;
    if (!key) return kinds;
    if (isStatement(scope.kind, key.image) && !fact.body) return wordsOfStatement(fact, key, raw, kinds);
    const property = fact.body ? undefined : propertiesOf(scope.kind).get(key.image)?.property;
    if (property) {
        kinds.set(key, 'property');
        wordsOfValue(fact, fact.tokens.slice(1), raw, kinds, property);
        return kinds;
    }
    if (!isBlockKind(key.image) || !blocksIn(scope.kind).includes(key.image)) return kinds;
    kinds.set(key, 'block');
    const { name, on, walls: standsOn, is, base } = headerParts(raw, fact);
    if (name) kinds.set(name, 'name');
    if (is) kinds.set(is, 'connective');
    if (base) {
        kinds.set(base, 'base');
        wordsOfValue(fact, fact.tokens.slice(fact.tokens.indexOf(base) + 1), raw, kinds, undefined);
    }
    if (on) {
        kinds.set(on, 'connective');
        wordsOfValue(fact, fact.tokens.slice(fact.tokens.indexOf(on) + 1), raw, kinds, undefined);
    }
    for (const wall of standsOn) if (isWall(wall.image)) kinds.set(wall, 'choice');
    return kinds;
}

/** `let` with its name and expression, `waive` with the finding and its clauses, `use`. */
function wordsOfStatement(fact: RawFact, key: Token, raw: RawText, kinds: Map<Token, HighlightKind>): ReadonlyMap<Token, HighlightKind> {
    kinds.set(key, key.image === 'use' ? 'block' : 'statement');
    const [, first] = fact.tokens;
    if (key.image === 'use' || !first || !isWordToken(first, raw.types)) return kinds;
    if (key.image === 'let') {
        kinds.set(first, 'name');
        wordsOfValue(fact, fact.tokens.slice(2), raw, kinds, undefined);
        return kinds;
    }
    kinds.set(first, 'reference');
    for (const token of fact.tokens.slice(2)) if (isWordToken(token, raw.types)) kinds.set(token, connectives.has(token.image) ? 'connective' : 'reference');
    return kinds;
}

/** The words of a value: choices, names with points, functions, what refers to a block. */
function wordsOfValue(fact: RawFact, tokens: readonly Token[], raw: RawText, kinds: Map<Token, HighlightKind>, property: Property | undefined): void {
    tokens.forEach((token, i) => {
        if (!isWordToken(token, raw.types)) return;
        const [before, next] = [tokens[i - 1], tokens[i + 1]];
        const isFirst = i === 0 || before?.image === ',';
        const isCalled = next?.image === '(' && touches(token, next);
        if (before?.image === '.') kinds.set(token, 'member');
        else if (isCalled) { if (isFunction(token.image)) kinds.set(token, 'function'); }
        else if (next?.image === '.') kinds.set(token, 'reference');
        else if (isBlockKind(token.image) && !(isFirst && property?.type.refersTo)) kinds.set(token, 'kind');
        else if (parametersAround(fact.scope, raw).has(token.image)) kinds.set(token, 'parameter');
        else if (choiceWords.has(token.image)) kinds.set(token, 'connective');
        else if (isFirst && property?.type.refersTo) kinds.set(token, 'reference');
        else if ((isChoice(token.image) || isWall(token.image)) && token.image !== 'per') kinds.set(token, 'choice');
        else if (connectives.has(token.image)) kinds.set(token, 'connective');
        else kinds.set(token, 'reference');
    });
}

const known = new WeakMap<RawScope, ReadonlySet<string>>();
/** Names of the parameters of the series a place stands in. */
function parametersAround(scope: RawScope, raw: RawText): ReadonlySet<string> {
    let names = known.get(scope);
    if (!names) {
        const own = scope.kind === 'series' ? scope.facts.flatMap(fact => fact.key?.image === 'parameter' ? headerParts(raw, fact).name?.image ?? [] : []) : [];
        known.set(scope, names = new Set([...own, ...scope.parent ? parametersAround(scope.parent, raw) : []]));
    }
    return names;
}
