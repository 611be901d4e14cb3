import { operatorWords, touches, type Token, type TokenTypes } from '../syntax/token-list.js';
import { isWordToken } from './raw-facts.js';

/** A bracket that is open where a cursor stands: of a call with its name, or a plain one. */
export interface OpenBracket {
    /** The name the bracket touches; absent for a plain bracket. */
    readonly name: Token | undefined;
    /** Tokens of the values before the cursor, the last of them the one it stands in. */
    readonly args: readonly (readonly Token[])[];
}

/** One level of an expression that is open at its end. */
export interface Level {
    readonly bracket: OpenBracket | undefined;
    /** The word of a choice the end stands behind: its condition, or one of its values. */
    readonly choice: 'if' | 'then' | 'else' | undefined;
    /** Tokens of what a comparison compares with, when the end stands behind its sign. */
    readonly left: readonly Token[] | undefined;
    /** Tokens since the last comparison, `and`, comma or word of a choice. */
    readonly side: readonly Token[];
    /** Whether the last operand is one of a product, which may have any dimension. */
    readonly isScaled: boolean;
    /** Whether a choice may begin at the end: not behind an operator, nor in the condition of another. */
    readonly mayChoose: boolean;
}

/** What may follow the tokens of an expression as far as it is written. */
export interface ExpressionPlace {
    readonly expects: 'operand' | 'operator';
    /** Words before the last point, when a name is being written. */
    readonly path: readonly string[];
    /** From the whole expression to the innermost bracket. */
    readonly levels: readonly [Level, ...Level[]];
}

interface OpenLevel { name: Token | undefined; isBracket: boolean; args: Token[][]; choice: Level['choice']; left: Token[] | undefined; side: Token[]; isScaled: boolean; isJoined: boolean }
const fresh = (isBracket: boolean, name?: Token): OpenLevel => ({ name, isBracket, args: [[]], choice: undefined, left: undefined, side: [], isScaled: false, isJoined: false });

export const isComparison = (image: string): boolean => /^(?:[<>]=?|!?=)$/.test(image);

/** Reads an expression up to its end, however little of it is there. */
export function expressionPlace(tokens: readonly Token[], types: TokenTypes): ExpressionPlace {
    const levels: OpenLevel[] = [fresh(false)];
    let expects: ExpressionPlace['expects'] = 'operand';
    let isBehindPoint = false;
    tokens.forEach((token, i) => {
        const level = levels.at(-1) as OpenLevel;
        const before = tokens[i - 1];
        const { image } = token;
        const isWord = isWordToken(token, types);
        for (const open of levels) open.args.at(-1)?.push(token);
        const begin = (): void => { level.left = undefined; level.side = []; level.isScaled = false; level.isJoined = false; expects = 'operand'; };
        if (image === '.' && before && isWordToken(before, types)) { level.side.push(token); expects = 'operand'; isBehindPoint = true; return; }
        if (isBehindPoint && isWord) { level.side.push(token); expects = 'operator'; isBehindPoint = false; return; }
        isBehindPoint = false;
        if (image === '(') {
            const name = before && isWordToken(before, types) && touches(before, token) ? before : undefined;
            level.side.push(token);
            levels.push(fresh(true, name));
            expects = 'operand';
            return;
        }
        if (image === ')') {
            if (levels.length > 1) levels.pop();
            levels.at(-1)?.side.push(token);
            expects = 'operator';
            return;
        }
        if (image === ',') {
            level.args.at(-1)?.pop();
            level.args.push([]);
            begin();
            level.choice = undefined;
            return;
        }
        if (expects === 'operand') {
            if (image === 'if') { begin(); level.choice = 'if'; return; }
            level.side.push(token);
            if (image === '-') return;
            expects = 'operator';
            return;
        }
        if (isComparison(image)) { const { side } = level; begin(); level.left = side; level.isJoined = true; }
        else if (image === 'and' || image === 'or' || image === 'x' || image === 'to') { begin(); level.isJoined = true; }
        else if ((image === 'then' && level.choice === 'if') || (image === 'else' && level.choice === 'then')) { begin(); level.choice = image; }
        else {
            level.isScaled = image === '*' || image === '/';
            level.side.push(token);
            const isOperator = /^[-+*/]$/.test(image);
            expects = isOperator ? 'operand' : 'operator';
        }
    });
    const done = levels.map(({ name, isBracket, args, choice, left, side, isScaled, isJoined }): Level => ({ bracket: isBracket ? { name, args } : undefined, choice, left, side, isScaled, mayChoose: !isJoined && side.length === 0 && choice !== 'if' }));
    return { expects, path: behindPoint(tokens, types), levels: done as unknown as [Level, ...Level[]] };
}

/** Words before the point a text ends with. */
function behindPoint(tokens: readonly Token[], types: TokenTypes): readonly string[] {
    const words: string[] = [];
    for (let i = tokens.length - 1; i > 0 && tokens[i]?.image === '.'; i -= 2) {
        const word = tokens[i - 1];
        if (!word || !isWordToken(word, types)) break;
        words.unshift(word.image);
    }
    return words;
}

export const innermost = ({ levels }: ExpressionPlace): Level => levels.at(-1) ?? levels[0];

/** The words of a name with points that a token stands in, up to that token, and the whole of it. */
export function nameAround(tokens: readonly Token[], token: Token, types: TokenTypes): { readonly upTo: readonly string[]; readonly whole: readonly string[]; readonly start: number; readonly last: Token } | undefined {
    if (!isWordToken(token, types)) return undefined;
    const at = tokens.indexOf(token);
    if (at < 0) return undefined;
    let first = at;
    while (tokens[first - 1]?.image === '.' && tokens[first - 2] && isWordToken(tokens[first - 2] as Token, types)) first -= 2;
    let last = at;
    while (tokens[last + 1]?.image === '.' && tokens[last + 2] && isWordToken(tokens[last + 2] as Token, types)) last += 2;
    if (first === last && operatorWords.has(token.image) && token.image !== 'x' && token.image !== 'to') return undefined;
    const words = (from: number, to: number): string[] => tokens.slice(from, to + 1).filter(({ image }) => image !== '.').map(({ image }) => image);
    return { upTo: words(first, at), whole: words(first, last), start: tokens[first]?.startOffset ?? token.startOffset, last: tokens[last] ?? token };
}
