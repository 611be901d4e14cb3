import { beginsFact, blocksIn, definitionOf, type BlockKind } from '../vocabulary/index.js';
import { isWordLike, type Token, type TokenTypes } from './token-list.js';

/** The one kind of block that may stand in `context` and knows most of the facts in the body whose brace is the first token from `at` on; a misspelled one among them does not hide it. */
export function kindToldByBody(tokens: readonly Token[], at: number, context: string, types: TokenTypes): BlockKind | undefined {
    const [kind, ...others] = kindsKnowing(keysOfBody(tokens, at, types), context);
    return others.length === 0 ? kind : undefined;
}

/** The kinds of block that may stand in `context` and know most of these facts, when it is most of them that they know. */
export function kindsKnowing(keys: readonly string[], context: string): readonly BlockKind[] {
    if (keys.length === 0) return [];
    const countOf = (kind: string): number => keys.filter(key => beginsFact(kind, key)).length;
    // A series takes the facts of a job: a body means a job unless something in it is a series' alone.
    const known = blocksIn(context).map(kind => ({ kind, count: countOf(kind), like: definitionOf(kind).like }))
        .filter(({ count, like }) => like === undefined || count > countOf(like));
    const best = Math.max(0, ...known.map(({ count }) => count));
    return 3 * best >= 2 * keys.length ? known.filter(({ count }) => count === best).map(({ kind }) => kind) : [];
}

/** First words of the facts directly in the body whose brace is the first token from `at` on. */
export function keysOfBody(tokens: readonly Token[], at: number, types: TokenTypes): readonly string[] {
    return keysFrom(tokens, at, types, 0).keys;
}

/** How far a block without its header is looked through, so that a file of nothing else is read in time. */
const most = 600;
/** First words of the facts from `at` on up to the brace that closes the block they stand in, and where that brace is. */
export function keysUpToClose(tokens: readonly Token[], at: number, types: TokenTypes): { readonly keys: readonly string[]; readonly close: number | undefined } {
    return keysFrom(tokens, at, types, 1, at + most);
}

function keysFrom(tokens: readonly Token[], at: number, types: TokenTypes, startDepth: number, until = tokens.length): { readonly keys: readonly string[]; readonly close: number | undefined } {
    const keys: string[] = [];
    let depth = startDepth;
    let isStart = startDepth > 0;
    for (let i = at; i < tokens.length && i < until; i++) {
        const token = tokens[i];
        if (!token) break;
        switch (token.tokenType) {
            case types.openBrace: depth++; isStart = true; break;
            case types.closeBrace: depth--; isStart = true; if (depth <= 0) return { keys, close: i }; break;
            case types.lineEnd: isStart = true; break;
            default:
                if (isStart && depth === 1 && isWordLike(token, types)) keys.push(token.image);
                isStart = false;
        }
    }
    return { keys, close: undefined };
}
