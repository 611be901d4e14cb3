import { endOf, type Token } from '../syntax/token-list.js';
import type { Stretch } from './ranges.js';

/** What joins the parts of a calculation, from the closest tie to the loosest. */
const ties: readonly ReadonlySet<string>[] = [['*', '/'], ['+', '-'], ['x'], ['to'], ['=', '!=', '<', '<=', '>', '>='], ['and'], ['or'], ['if', 'then', 'else'], [',']].map(words => new Set(words));

/**
 * Stretches of a calculation around an offset from small to large: a name with its dots, a call, what each sign joins, a bracket. From tokens alone; a
 * stretch may come twice.
 */
export function stretchesInCalculation(tokens: readonly Token[], offset: number): readonly Stretch[] {
    const found: Stretch[] = [];
    const bracket = bracketAround(tokens, offset);
    if (bracket) {
        const inner = tokens.slice(bracket.open + 1, bracket.close);
        found.push(...stretchesInCalculation(inner, offset), ...of(inner));
        found.push(...of(tokens.slice(bracket.open, bracket.close + 1)));
        found.push(...of(tokens.slice(pathStart(tokens, bracket.open), bracket.close + 1)));
    } else {
        const at = tokens.findIndex(token => token.startOffset <= offset && offset <= endOf(token));
        if (at >= 0) found.push(...of(tokens.slice(pathStart(tokens, at + 1), pathEnd(tokens, at) + 1)));
    }
    for (let loosest = 0; loosest <= ties.length; loosest++) found.push(...of(partAround(tokens, offset, word => ties.findIndex(tie => tie.has(word)) >= loosest)));
    return found;
}

const of = (tokens: readonly Token[]): readonly Stretch[] => { const [first] = tokens; const last = tokens.at(-1); return first && last ? [{ start: first.startOffset, end: endOf(last) }] : []; };

/** The widest bracket around an offset. */
function bracketAround(tokens: readonly Token[], offset: number): { readonly open: number; readonly close: number } | undefined {
    let [depth, open] = [0, -1];
    for (const [i, token] of tokens.entries()) {
        if (token.image === '(' && depth++ === 0) open = i;
        if (token.image !== ')' || depth === 0 || --depth > 0) continue;
        if ((tokens[open]?.startOffset ?? Infinity) < offset && offset < endOf(token)) return { open, close: i };
    }
    return undefined;
}

/** Where the name begins that ends before the token at `end`, without a blank; `end` itself when there is none. */
function pathStart(tokens: readonly Token[], end: number): number {
    let at = end;
    for (let i = end - 1; i >= 0; i--) {
        const [token, next] = [tokens[i], tokens[i + 1]];
        const isJoined = token !== undefined && (i === end - 1 ? tokens[end]?.image !== '(' || endOf(token) === tokens[end].startOffset : token.image === '.' || next?.image === '.');
        if (!token || !isJoined || !/^(?:\.|[A-Za-z_][\w-]*)$/.test(token.image)) break;
        at = i;
    }
    return at;
}
function pathEnd(tokens: readonly Token[], start: number): number {
    let at = start;
    while (tokens[at + 1]?.image === '.' || (tokens[at]?.image === '.' && tokens[at + 1])) at++;
    return at;
}

/** The tokens between two signs, those in brackets not counted, that an offset stands in. */
function partAround(tokens: readonly Token[], offset: number, divides: (word: string) => boolean): readonly Token[] {
    let depth = 0;
    let part: Token[] = [];
    for (const token of tokens) {
        if (token.image === ')') depth--;
        if (depth === 0 && divides(token.image)) {
            if (part.length > 0 && (part[0]?.startOffset ?? 0) <= offset && offset <= endOf(part.at(-1) ?? token)) return part;
            part = [];
        } else part.push(token);
        if (token.image === '(') depth++;
    }
    const last = part.at(-1);
    return last && (part[0]?.startOffset ?? 0) <= offset && offset <= endOf(last) ? part : [];
}
