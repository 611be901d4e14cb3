import type { LexerResult } from 'langium';
import { lengthUnits } from '../core/quantity.js';

export type Token = LexerResult['tokens'][number];
export type TokenType = Token['tokenType'];

/** The token types the tidying works with, by what they are and not by their names in the grammar. */
export interface TokenTypes {
    readonly word: TokenType; readonly text: TokenType; readonly length: TokenType; readonly quantity: TokenType; readonly number: TokenType;
    readonly date: TokenType; readonly lineEnd: TokenType; readonly openBrace: TokenType; readonly closeBrace: TokenType;
    readonly closeBracket: TokenType; readonly comma: TokenType; readonly callOpen: TokenType; readonly then: TokenType; readonly else: TokenType;
    readonly times: TokenType; readonly comparisons: Readonly<Record<'=' | '!=' | '<=' | '>=', TokenType>>;
}

/** Words that are operators where their neighbours make them so, and names anywhere else. */
export const operatorWords: ReadonlySet<string> = new Set(['x', 'to', 'and', 'or', 'if', 'then', 'else']);

/** Where a token ends in the text; its image may be another than what was written, which was brought into the signs of the language. */
export const endOf = (token: Token): number => token.image === '' ? token.startOffset : (token.endOffset ?? token.startOffset + token.image.length - 1) + 1;
export const startOf = (token: Token): number => token.startOffset;
/** Index of the first item at or after an offset; the items stand in the order of the text. */
export function firstAtOrAfter<T>(items: readonly T[], offset: number, placeOf: (item: T) => number): number {
    let [low, high] = [0, items.length];
    while (low < high) {
        const middle = (low + high) >>> 1;
        const item = items[middle];
        if (item !== undefined && placeOf(item) < offset) low = middle + 1; else high = middle;
    }
    return low;
}
/** A word, or one of those that are operators where their neighbours make them so. */
export const isWordLike = (token: Token, types: TokenTypes): boolean => token.tokenType === types.word || operatorWords.has(token.image);
/** A figure with a mark or a unit of length. */
export const isLength = (token: Token, types: TokenTypes): boolean =>
    token.tokenType === types.length || (token.tokenType === types.quantity && lengthUnits.some(unit => token.image.replace(/^[\d./ \t-]+/, '') === unit));
export const touches = (left: Token, right: Token): boolean => endOf(left) === right.startOffset;

/** A token of no width, put where the text lacks one. */
export function insertedToken(type: TokenType, after: Token): Token {
    const line = after.endLine ?? after.startLine ?? 1;
    const column = (after.endColumn ?? after.startColumn ?? 0) + 1;
    const offset = endOf(after);
    return {
        image: '', startOffset: offset, endOffset: offset, startLine: line, endLine: line, startColumn: column, endColumn: column,
        tokenType: type, tokenTypeIdx: type.tokenTypeIdx ?? 0,
    };
}
export const withType = (token: Token, type: TokenType): Token => token.tokenType === type ? token : { ...token, tokenType: type, tokenTypeIdx: type.tokenTypeIdx ?? 0 };
export function withImage(token: Token, type: TokenType, image: string): Token {
    return { ...withType(token, type), image };
}
