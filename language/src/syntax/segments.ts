import { beginsFact, blocksIn, isBlockKind } from '../vocabulary/index.js';
import { isWordLike, type Token, type TokenTypes } from './token-list.js';

/** Facts of one line or between two separators, and what ended them. */
export interface Segment {
    readonly tokens: readonly Token[];
    readonly end: 'line' | 'open' | 'close' | 'file';
    readonly endToken: Token | undefined;
}

/**
 * The next stretch of tokens up to a line end, a semicolon, a brace or the end of the file.
 * @param openKinds kinds of the blocks that are open, outermost first: a line after a comma that begins a fact of one of them is a new fact
 */
export function readSegment(tokens: readonly Token[], start: number, types: TokenTypes, openKinds: readonly string[]): { readonly segment: Segment; readonly next: number } {
    const found: Token[] = [];
    let depth = 0;
    for (let i = start; i < tokens.length; i++) {
        const token = tokens[i];
        if (!token) break;
        if (token.tokenType === types.openBrace) return { segment: { tokens: found, end: 'open', endToken: token }, next: i + 1 };
        if (token.tokenType === types.closeBrace) return { segment: { tokens: found, end: 'close', endToken: token }, next: i + 1 };
        if (token.tokenType === types.lineEnd) {
            if (found.length === 0) continue;
            if (lineGoesOn(tokens, found, depth, i, types, openKinds)) {
                // Blank lines inside are asked about once.
                while (tokens[i + 1]?.tokenType === types.lineEnd && tokens[i + 1]?.image !== ';') i++;
                continue;
            }
            return { segment: { tokens: found, end: 'line', endToken: token }, next: i + 1 };
        }
        if (token.image === '(') depth++;
        if (token.image === ')') depth = Math.max(0, depth - 1);
        found.push(token);
    }
    return { segment: { tokens: found, end: 'file', endToken: undefined }, next: tokens.length };
}

/** A line goes on inside brackets and after a comma, unless the next line plainly begins a fact of its own. */
function lineGoesOn(tokens: readonly Token[], found: readonly Token[], depth: number, at: number, types: TokenTypes, openKinds: readonly string[]): boolean {
    if (tokens[at]?.image === ';') return false;
    const last = found.at(-1)?.image ?? '';
    const isAfterComma = last === ',';
    if (depth === 0 && !isAfterComma) return false;
    let i = at;
    while (tokens[i]?.tokenType === types.lineEnd) i++;
    const next = tokens[i];
    if (!next || next.tokenType === types.closeBrace || next.tokenType === types.openBrace) return false;
    if (!isWordLike(next, types)) return true;
    // An open bracket that nobody closed ends at the next line that starts with a word.
    if (!isAfterComma && !/^(?:[-+*/(]|[<>]=?|!?=)$/.test(last)) return false;
    const following = tokens[i + 1];
    return !(openKinds.some(kind => beginsFact(kind, next.image)) && following !== undefined && following.image !== ',' && following.tokenType !== types.lineEnd);
}

/** The header on the line before the brace at an index that stands alone, when it is a block that still lacks its brace. */
export function headerBefore(tokens: readonly Token[], brace: number, context: string, types: TokenTypes): readonly Token[] | undefined {
    const header: Token[] = [];
    let at = brace - 1;
    while (tokens[at]?.tokenType === types.lineEnd) at--;
    for (; at >= 0; at--) {
        const token = tokens[at];
        if (!token || token.tokenType === types.lineEnd || token.tokenType === types.openBrace || token.tokenType === types.closeBrace) break;
        header.unshift(token);
    }
    const [key] = header;
    return key && isBlockKind(key.image) && blocksIn(context).includes(key.image) ? header : undefined;
}
