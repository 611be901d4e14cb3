import { definitionOf, derivesFrom, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import * as ast from './generated/ast.js';

/** The word that names a block (`upper` in `bench upper on back {`), or nothing. */
export function nameWord(fact: ast.Fact): ast.Word | undefined {
    if (!isBlockKind(fact.key)) return undefined;
    const definition = definitionOf(fact.key);
    if (definition.name === 'none') return undefined;
    const terms: readonly (ast.Expr | undefined)[] = fact.phrases[0]?.terms ?? [];
    const [first, second] = terms;
    if (!ast.isWord(first) || first.path.length > 0) return undefined;
    if (first.ref.$refText === 'on' && definition.walls !== 'none' && !(ast.isWord(second) && second.ref.$refText === 'on')) return undefined;
    return first.ref.$refText === '' ? undefined : first;
}
export const nameOf = (fact: ast.Fact): string | undefined => nameWord(fact)?.ref.$refText;

/** The fact that a fact stands in, or nothing at the top of a file. */
export const parentOf = (fact: ast.Fact): ast.Fact | undefined => ast.isFact(fact.$container) ? fact.$container : undefined;
export const contextOf = (fact: ast.Fact): string => parentOf(fact)?.key ?? 'file';

/** The property a fact is, by the block it stands in. */
export const propertyOf = (fact: ast.Fact): ReturnType<ReturnType<typeof propertiesOf>['get']> => propertiesOf(contextOf(fact)).get(fact.key);

/**
 * Kinds of block a word may refer to; nothing when the vocabulary expects no reference there. Enum words, names and unit words are never
 * references: otherwise one edit would relink every document that holds any unresolved word.
 */
export function expectedKinds(word: ast.Word): readonly string[] | undefined {
    const called = ast.isCall(word.$container) && word.$container.callee === word;
    let value: ast.Expr = word;
    while (ast.isChoice(value.$container) && value.$container.condition !== value) value = value.$container;
    const phrase = ast.isCall(word.$container) && called ? word.$container.$container : value.$container;
    if (!ast.isPhrase(phrase) || word.path.length > 0) return undefined;
    const fact = phrase.$container;
    const from = derivesFrom(fact.key);
    if (from !== undefined && baseTermOf(fact)?.word === word) return [from];
    if (called) return undefined;
    if (fact.braced || phrase.terms[0] !== value) return undefined;
    return propertyOf(fact)?.property.type.refersTo;
}

/** The words a value may come down to: itself, or those behind `then` and `else`. */
export function wordsOf(value: ast.Expr | undefined): readonly ast.Word[] {
    if (ast.isChoice(value)) return [...wordsOf(value.yes), ...wordsOf(value.no)];
    return ast.isWord(value) ? [value] : [];
}

/** The text of a `use` path, without its quotes; nothing for a fact that is no `use`. */
export function usePath(fact: ast.Fact): ast.Text | undefined {
    if (fact.key !== 'use' || ast.isFact(fact.$container)) return undefined;
    const term = fact.phrases[0]?.terms[0];
    return ast.isText(term) ? term : undefined;
}
export const textOf = (node: ast.Text): string => unescape(node.text);
function unescape(written: string): string {
    return written.slice(1, -1).replace(/\\(.)/g, '$1');
}

/** What a block is made from: the name behind `is` in its header, and the values in brackets when it has any. */
export interface BaseTerm { readonly word: ast.Word; readonly term: ast.Expr; readonly args: readonly ast.Expr[] }
export function baseTermOf(fact: ast.Fact): BaseTerm | undefined {
    if (derivesFrom(fact.key) === undefined) return undefined;
    const terms: readonly (ast.Expr | undefined)[] = fact.phrases[0]?.terms ?? [];
    const at = 1 + (ast.isText(terms[1]) ? 1 : 0);
    const [is, term] = [terms[at], terms[at + 1]];
    if (!ast.isWord(is) || is.path.length > 0 || is.ref.$refText !== 'is') return undefined;
    if (ast.isWord(term) && term.path.length === 0 && term.ref.$refText !== '') return { word: term, term, args: [] };
    return ast.isCall(term) ? { word: term.callee, term, args: term.args } : undefined;
}
