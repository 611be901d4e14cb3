import { beginsFact, blocksIn, type BlockKind } from '../vocabulary/index.js';
import { isWordLike, type Token, type TokenTypes } from './token-list.js';

/** The one kind of block that may stand in `context` and knows most of the facts in the body that follows the brace after `last`; a misspelled one among them does not hide it. */
export function kindToldByBody(tokens: readonly Token[], last: Token | undefined, context: string, types: TokenTypes): BlockKind | undefined {
    const keys = keysOfBody(tokens, last, types);
    if (keys.length === 0) return undefined;
    const known = blocksIn(context).map(kind => ({ kind, count: keys.filter(key => beginsFact(kind, key)).length })).sort((a, b) => b.count - a.count);
    const [best, next] = known;
    return best && 3 * best.count >= 2 * keys.length && best.count > (next?.count ?? 0) ? best.kind : undefined;
}

/** First words of the facts directly in the body that follows the brace after `last`. */
export function keysOfBody(tokens: readonly Token[], last: Token | undefined, types: TokenTypes): readonly string[] {
    const keys: string[] = [];
    let depth = 0;
    let isStart = false;
    for (const token of tokens.slice(last ? tokens.indexOf(last) + 1 : 0)) {
        switch (token.tokenType) {
            case types.openBrace: depth++; isStart = true; break;
            case types.closeBrace: depth--; isStart = true; if (depth <= 0) return keys; break;
            case types.lineEnd: isStart = true; break;
            default:
                if (isStart && depth === 1 && isWordLike(token, types)) keys.push(token.image);
                isStart = false;
        }
    }
    return keys;
}
