import type { LexerResult } from 'langium';

export type Token = LexerResult['tokens'][number];
export type TokenType = Token['tokenType'];

/** The token types the tidying works with, by what they are and not by their names in the grammar. */
export interface TokenTypes {
    readonly word: TokenType; readonly text: TokenType; readonly length: TokenType; readonly quantity: TokenType; readonly number: TokenType;
    readonly date: TokenType; readonly lineEnd: TokenType; readonly openBrace: TokenType; readonly closeBrace: TokenType;
    readonly closeBracket: TokenType; readonly comma: TokenType;
}

export const endOf = (token: Token): number => token.startOffset + token.image.length;
/** A word, or one of the two words that are operators where their neighbours make them so. */
export const isWordLike = (token: Token, types: TokenTypes): boolean => token.tokenType === types.word || token.image === 'x' || token.image === 'to';
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
