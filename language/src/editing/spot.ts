import { endOf, operatorWords, touches, type Token } from '../syntax/token-list.js';
import type { Property } from '../vocabulary/block.js';
import { blocksIn, definitionOf, derivesFrom, isBlockKind, propertiesOf, type BlockKind } from '../vocabulary/index.js';
import { isStatement } from '../vocabulary/statements.js';
import { isWordToken, scopeAt, type RawFact, type RawScope, type RawText } from './raw-facts.js';

/** What a place in the text is for. `current` is the word a cursor touches, which an offer would replace. */
export type Spot =
    /** A remark, a figure, a closed text: nothing can be offered. */
    | { readonly kind: 'nowhere' }
    /** A fact begins here. */
    | { readonly kind: 'key'; readonly scope: RawScope; readonly fact: RawFact | undefined; readonly current: Token | undefined }
    /** The header of a block, behind its key. */
    | { readonly kind: 'header'; readonly fact: RawFact; readonly block: BlockKind; readonly before: readonly Token[]; readonly after: readonly Token[]; readonly current: Token | undefined }
    /** The value of a property; `before` and `after` are the other tokens behind the key. */
    | { readonly kind: 'value'; readonly fact: RawFact; readonly property: Property; readonly key: string; readonly before: readonly Token[]; readonly after: readonly Token[]; readonly current: Token | undefined }
    /** Behind `let`, its name and (`hasSign`) its `=`; `before` and `after` are the tokens behind the sign. */
    | { readonly kind: 'let'; readonly fact: RawFact; readonly name: Token | undefined; readonly hasSign: boolean; readonly before: readonly Token[]; readonly after: readonly Token[]; readonly current: Token | undefined }
    /** Behind `waive`. */
    | { readonly kind: 'waive'; readonly fact: RawFact; readonly before: readonly Token[]; readonly after: readonly Token[]; readonly current: Token | undefined }
    /** The path of a `use`; `start` and `end` are what a path with its quotes replaces. */
    | { readonly kind: 'path'; readonly fact: RawFact; readonly start: number; readonly end: number };

const nowhere: Spot = { kind: 'nowhere' };

/** Finds what the text at `offset` is for, from tokens and vocabulary alone, so that half-typed text works as well as whole. */
export function spotAt(raw: RawText, offset: number): Spot {
    if (raw.comments.some(comment => comment.startOffset < offset && offset <= endOf(comment))) return nowhere;
    const scope = scopeAt(raw.file, offset);
    const fact = scope.facts.find(candidate => candidate.start <= offset && offset <= candidate.end && candidate.tokens[0]?.tokenType !== raw.types.openBrace);
    const touched = raw.tokens.find(token => token.startOffset <= offset && offset <= endOf(token) && isWordToken(token, raw.types));
    if (!fact?.key) return fact ? nowhere : keySpot(raw, scope, offset);
    if (offset <= endOf(fact.key)) return { kind: 'key', scope, fact, current: fact.key };
    if (fact.key.image === 'use' && scope.kind === 'file') return pathSpot(raw, fact, fact.key, offset);
    const isInside = raw.tokens.some(token => token.startOffset < offset && offset < endOf(token) && token !== touched);
    const isOpenText = raw.errors.some(error => error.offset < offset && error.offset >= fact.start && /^["\u201c]/.test(raw.text.slice(error.offset)) && !/[\r\n]/.test(raw.text.slice(error.offset, offset)));
    if (isInside || isOpenText) return nowhere;
    const rest = fact.tokens.slice(1).filter(token => token !== touched);
    const before = rest.filter(token => token.startOffset < offset);
    const after = rest.filter(token => token.startOffset >= offset);
    if (isStatement(scope.kind, fact.key.image) && !fact.body) return statementSpot(fact, fact.key.image, before, after, touched);
    const known = propertiesOf(scope.kind).get(fact.key.image);
    if (known && !fact.body) return { kind: 'value', fact, property: known.property, key: known.key, before, after, current: touched };
    if (isBlockKind(fact.key.image) && blocksIn(scope.kind).includes(fact.key.image)) return { kind: 'header', fact, block: fact.key.image, before, after, current: touched };
    return nowhere;
}

function statementSpot(fact: RawFact, word: string, before: readonly Token[], after: readonly Token[], current: Token | undefined): Spot {
    if (word === 'waive') return { kind: 'waive', fact, before, after, current };
    const sign = before.findIndex(token => token.image === '=');
    const isName = current !== undefined && current === fact.tokens[1];
    return { kind: 'let', fact, name: isName ? current : fact.tokens[1], hasSign: sign >= 0, before: sign < 0 ? before : before.slice(sign + 1), after, current };
}

/** A fact can begin on an empty stretch of line: behind a line end, a semicolon or an opening brace, and with no fact further on. */
function keySpot(raw: RawText, scope: RawScope, offset: number): Spot {
    const previous = raw.tokens.findLast(token => endOf(token) <= offset && !(token.tokenType === raw.types.lineEnd && endOf(token) > offset));
    const isFresh = previous === undefined || previous.tokenType === raw.types.lineEnd || previous.tokenType === raw.types.openBrace;
    const next = raw.tokens.find(token => token.startOffset >= offset);
    const isFree = next === undefined || next.tokenType === raw.types.lineEnd || next.tokenType === raw.types.closeBrace;
    const isOdd = raw.errors.some(error => error.offset < offset && !/[\r\n]/.test(raw.text.slice(error.offset, offset)) && error.offset >= (previous ? endOf(previous) : 0));
    return isFresh && isFree && !isOdd ? { kind: 'key', scope, fact: undefined, current: undefined } : nowhere;
}

function pathSpot(raw: RawText, fact: RawFact, key: Token, offset: number): Spot {
    const [, path] = fact.tokens;
    if (path?.tokenType === raw.types.text) {
        return path.startOffset < offset && offset < endOf(path) ? { kind: 'path', fact, start: path.startOffset, end: endOf(path) } : nowhere;
    }
    const end = fact.end;
    const quote = raw.text.slice(endOf(key), end).indexOf('"');
    if (quote >= 0) {
        const start = endOf(key) + quote;
        return start < offset ? { kind: 'path', fact, start, end } : nowhere;
    }
    return path ? nowhere : { kind: 'path', fact, start: offset, end: offset };
}

/** The tokens of one list member that a place stands in, and those members before and after it. Commas inside brackets divide nothing. */
export function phraseAround(before: readonly Token[], after: readonly Token[]): { readonly own: readonly Token[]; readonly behind: readonly Token[]; readonly others: readonly Token[] } {
    let depth = 0;
    let cut = -1;
    before.forEach((token, i) => { depth = deeper(depth, token); if (depth === 0 && token.image === ',') cut = i; });
    const next = after.findIndex(token => { depth = deeper(depth, token); return depth === 0 && token.image === ','; });
    return { own: before.slice(cut + 1), behind: next < 0 ? after : after.slice(0, next), others: [...before.slice(0, cut + 1), ...(next < 0 ? [] : after.slice(next))] };
}
const deeper = (depth: number, { image }: Token): number => image === '(' ? depth + 1 : image === ')' ? Math.max(0, depth - 1) : depth;

/** Splits the tokens of a list member into its values: operators and brackets hold a calculation together, and so do the words of a choice. */
export function termsOf(tokens: readonly Token[]): readonly (readonly Token[])[] {
    const terms: Token[][] = [];
    let depth = 0;
    let joins = false;
    tokens.forEach((token, i) => {
        const before = tokens[i - 1];
        const isCall = token.image === '(' && before !== undefined && /[\w]$/.test(before.image) && touches(before, token);
        const isOperator = /^(?:[-+*/.)]|[<>]=?|!?=)$/.test(token.image) || (operatorWords.has(token.image) && (terms.length > 0 || token.image === 'if'));
        if (terms.length === 0 || (depth === 0 && !joins && !isOperator && !isCall)) terms.push([]);
        terms.at(-1)?.push(token);
        depth = deeper(depth, token);
        joins = isOperator && token.image !== ')' || token.image === '(';
    });
    return terms;
}

/** What a header says as far as it is written: its name, title and walls, and what the block is made from. */
export interface HeaderParts {
    readonly name: Token | undefined; readonly title: Token | undefined; readonly on: Token | undefined; readonly walls: readonly Token[];
    /** The word `is`, and the name behind it. */
    readonly is: Token | undefined; readonly base: Token | undefined;
}
export function headerParts(raw: RawText, fact: RawFact): HeaderParts {
    const rest = fact.tokens.slice(1);
    const kind = fact.key?.image ?? '';
    const definition = isBlockKind(kind) ? definitionOf(kind) : undefined;
    const [first, second] = rest;
    const isName = first !== undefined && definition !== undefined && definition.name !== 'none' && isWordToken(first, raw.types)
        && !(first.image === 'on' && definition.walls !== 'none' && second?.image !== 'on');
    const behind = rest.slice(isName ? 1 : 0);
    const title = behind[0]?.tokenType === raw.types.text ? behind[0] : undefined;
    const is = derivesFrom(kind) === undefined ? undefined : behind.slice(title ? 1 : 0).find(token => token.image === 'is');
    const base = is && behind[behind.indexOf(is) + 1];
    const on = is ? undefined : behind.find(token => token.image === 'on');
    return {
        name: isName ? first : undefined, title, on, is, base: base && isWordToken(base, raw.types) ? base : undefined,
        walls: on ? behind.slice(behind.indexOf(on) + 1).filter(token => isWordToken(token, raw.types)) : [],
    };
}
