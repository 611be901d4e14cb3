import { showList, spoken } from '../core/show.js';
import { beginsFact, blocksIn, definitionOf, isBlockKind, isJobLike, propertiesOf, type BlockKind } from '../vocabulary/index.js';
import type { SyntaxProblem } from './problem.js';
import type { Segment } from './segments.js';
import { endOf, isWordLike, withImage, type Token, type TokenTypes } from './token-list.js';
import { keysOfBody, keysUpToClose, kindsKnowing } from './told-by-body.js';

/** A block whose header is not there: what to say of it, and how its facts are read. */
export interface MissingHeader {
    readonly problem: SyntaxProblem;
    /** The kind it is, as a word that stands where its first fact does. */
    readonly key: Token | undefined;
    /** Index behind the brace that closes it, when nobody can tell which kind it is and its facts are passed over. */
    readonly passTo: number | undefined;
}

/**
 * Looks whether the facts from `at` on, up to the brace that closes them, stand in a block whose header line is missing: they cannot stand in
 * `context`, and a block that may stand there knows them.
 */
export function missingHeader(tokens: readonly Token[], at: number, context: string, openKey: number, types: TokenTypes): MissingHeader | undefined {
    const first = tokens[at];
    if (!first || !isWordLike(first, types) || beginsFact(context, first.image) || (context !== 'file' && !isBlockKind(context))) return undefined;
    const { keys, close } = keysUpToClose(tokens, at, types);
    if (close === undefined) return undefined;
    const kinds = kindsKnowing(keys, context).filter(kind => beginsFact(kind, first.image));
    const [kind] = kinds;
    if (kind === undefined || (context === 'file' && isJobLike(kind))) return undefined;
    const count = keys.length;
    const [what, them] = count === 1 ? ['This line belongs', 'it'] : ['These lines belong', 'them'];
    const words = (one: BlockKind): string => spoken(one);
    const isTold = kinds.length === 1;
    const header = headerOf(kind);
    const isWhole = isTold && header === `${kind} {`;
    const indent = ' '.repeat(Math.max(0, (first.startColumn ?? 1) - 1));
    return {
        problem: {
            id: 'kind-missing', start: first.startOffset, end: endOf(first), damages: isWhole ? [] : [first.startOffset, openKey, -1],
            message: `${what} in a ${showList(kinds.map(words), 'or')}; the line that begins it is missing. Put ${isTold ? header : `a line such as ${header}`} before ${them}.`,
            ...(isWhole && { fix: { title: `Put ${header} before ${them}`, edits: [{ start: first.startOffset, end: first.startOffset, newText: `${header}\n${indent}` }] } }),
        },
        key: isTold ? withImage(first, types.word, kind) : undefined,
        passTo: isTold ? undefined : close + 1,
    };
}

function headerOf(kind: BlockKind): string {
    const { name, walls } = definitionOf(kind);
    return `${[kind, ...name === 'required' || (name !== 'none' && walls !== 'none') ? ['NAME'] : [], ...walls === 'one' || walls === 'several' ? ['on WALL'] : []].join(' ')} {`;
}

/** A block header whose opening brace is missing: where the brace belongs among its tokens, or -1. */
export function missingBraceAt(tokens: readonly Token[], end: Segment['end'], context: string, types: TokenTypes): number {
    const key = tokens[0];
    if (!key || !isBlockKind(key.image) || !blocksIn(context).includes(key.image) || propertiesOf(context).has(key.image)) return -1;
    const kind = key.image;
    const inside = tokens.findIndex((token, i) => i > 0 && isWordLike(token, types) && isInsideFact(kind, tokens, i));
    if (inside > 0) return inside;
    return end === 'line' ? tokens.length : -1;
}
function isInsideFact(kind: BlockKind, tokens: readonly Token[], at: number): boolean {
    const word = tokens[at]?.image ?? '';
    // The first word is the block's name when it has one, and may well be spelled like one of its facts.
    if (at === 1 && definitionOf(kind).name !== 'none') return false;
    return beginsFact(kind, word) && tokens[at - 1]?.image !== 'on' && at + 1 < tokens.length;
}

/**
 * Whether the facts from `at` on, which cannot stand in `context`, go on with a block of a kind that was closed right before them: it knows
 * them, and none of them says again what stands in it.
 * @param body index of the brace that opened it
 */
export function isClosedTooEarly(tokens: readonly Token[], body: number, at: number, kind: string, context: string, types: TokenTypes): boolean {
    const first = tokens[at];
    if (!first || !isWordLike(first, types) || beginsFact(context, first.image) || !beginsFact(kind, first.image)) return false;
    const inside = new Set(keysOfBody(tokens, body, types));
    const { keys, close } = keysUpToClose(tokens, at, types);
    const isAgain = (word: string): boolean => inside.has(word) && (propertiesOf(kind).has(word) || (isBlockKind(word) && !definitionOf(word).isRepeatable));
    return (close !== undefined || context === 'file') && keys.every(word => !isAgain(word)) && 3 * keys.filter(word => beginsFact(kind, word)).length >= 2 * keys.length;
}
