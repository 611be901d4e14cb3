import { beginsFact, blocksIn, definitionOf, type BlockKind } from '../vocabulary/index.js';
import { isWordLike, type Token, type TokenTypes } from './token-list.js';

/** The one kind of block that may stand in `context` and knows most of the facts in the body whose brace is the first token from `at` on; a misspelled one among them does not hide it. */
export function kindToldByBody(tokens: readonly Token[], at: number, context: string, types: TokenTypes): BlockKind | undefined {
    const keys = keysOfBody(tokens, at, types);
    if (keys.length === 0) return undefined;
    const countOf = (kind: string): number => keys.filter(key => beginsFact(kind, key)).length;
    // A series takes the facts of a job: a body means a job unless something in it is a series' alone.
    const known = blocksIn(context).map(kind => ({ kind, count: countOf(kind), like: definitionOf(kind).like }))
        .filter(({ count, like }) => like === undefined || count > countOf(like)).sort((a, b) => b.count - a.count);
    const [best, next] = known;
    return best && 3 * best.count >= 2 * keys.length && best.count > (next?.count ?? 0) ? best.kind : undefined;
}

/** First words of the facts directly in the body whose brace is the first token from `at` on. */
export function keysOfBody(tokens: readonly Token[], at: number, types: TokenTypes): readonly string[] {
    const keys: string[] = [];
    let depth = 0;
    let isStart = false;
    for (let i = at; i < tokens.length; i++) {
        const token = tokens[i];
        if (!token) break;
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
