import type { Span } from '../core/span.js';
import type * as ast from '../syntax/generated/ast.js';
import { nameWord } from '../syntax/words.js';
import type { Reading } from './reading.js';

/** Offset of the key of a fact: how the reading of the text names it. */
export const keyOffset = (fact: ast.Fact): number => fact.$cstNode?.offset ?? -2;
export function keySpan(fact: ast.Fact, reading: Reading): Span {
    const { uri, start } = reading.spanOf(fact);
    return { uri, start, end: start + fact.key.length };
}
export function headSpan(fact: ast.Fact, reading: Reading): Span {
    const key = keySpan(fact, reading);
    const name = nameWord(fact);
    return name ? { ...key, end: reading.spanOf(name).end } : key;
}
export function valueSpan(fact: ast.Fact, reading: Reading): Span {
    const [first] = fact.phrases;
    const last = fact.phrases.at(-1);
    if (!first || !last) return reading.spanOf(fact);
    return { uri: reading.uri, start: reading.spanOf(first).start, end: reading.spanOf(last).end };
}
export function insertPlace(fact: ast.Fact, reading: Reading): Span {
    const last = fact.body.at(-1);
    const end = last ? reading.spanOf(last).end : reading.spanOf(fact).end - 1;
    return { uri: reading.uri, start: end, end };
}
