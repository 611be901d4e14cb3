import { endOf, type Token } from '../syntax/token-list.js';
import { blocksIn, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import { isStatement } from '../vocabulary/statements.js';
import type { RawFact, RawText } from './raw-facts.js';
import { padKey } from './samples.js';
import { lineAt, linesOf, type TextLine } from './text-lines.js';

/** A line with what formatting needs to know of it. */
export interface CodeLine {
    readonly line: TextLine;
    /** Tokens of the line, semicolons included, and the remark behind them. */
    readonly tokens: readonly Token[];
    readonly comment: Token | undefined;
    /** How many blocks the line stands in; one more when it carries a fact on. */
    readonly depth: number;
    /** `fact`: one property alone on its line; `block`: a block that opens and closes on it; `let`: a name and its value. Lines of one shape in a row are laid out together. */
    readonly shape: 'fact' | 'block' | 'let' | 'other' | 'blank';
    /** Whether the line is left as it stands, because it could not be read. */
    readonly isFrozen: boolean;
}

/** Sorts tokens, remarks and damage into the lines they stand on. */
export function codeLines(raw: RawText, damaged: readonly { readonly start: number; readonly end: number }[]): readonly CodeLine[] {
    const lines = linesOf(raw.text);
    const tokensOf: Token[][] = lines.map(() => []);
    for (const token of raw.tokens) if (token.tokenType !== raw.types.lineEnd || token.image === ';') tokensOf[lineAt(lines, token.startOffset)]?.push(token);
    const comments = new Map(raw.comments.map(comment => [lineAt(lines, comment.startOffset), comment]));
    const frozen = new Set<number>();
    for (const { start, end } of damaged) for (let i = lineAt(lines, start); i <= lineAt(lines, Math.max(start, end - 1)); i++) frozen.add(i);
    const first = new Map<Token, RawFact>();
    const carriedOn = new Set<Token>();
    for (const fact of raw.facts) fact.tokens.forEach((token, i) => { if (i === 0) first.set(token, fact); else carriedOn.add(token); });
    let depth = 0;
    return lines.map((line, i) => {
        const tokens = tokensOf[i] ?? [];
        const comment = comments.get(i);
        const leading = tokens.findIndex(token => token.tokenType !== raw.types.closeBrace);
        const closed = leading < 0 ? tokens.length : leading;
        const isCarriedOn = tokens[0] !== undefined && carriedOn.has(tokens[0]);
        const at = Math.max(0, depth - closed) + (isCarriedOn ? 1 : 0);
        for (const token of tokens) depth = Math.max(0, depth + (token.tokenType === raw.types.openBrace ? 1 : token.tokenType === raw.types.closeBrace ? -1 : 0));
        return { line, tokens, comment, depth: at, shape: shapeOf(tokens, comment, tokens[0] && first.get(tokens[0]), raw), isFrozen: frozen.has(i) };
    });
}

function shapeOf(tokens: readonly Token[], comment: Token | undefined, fact: RawFact | undefined, raw: RawText): CodeLine['shape'] {
    if (tokens.length === 0) return comment ? 'other' : 'blank';
    const isPlain = tokens.every(token => token.tokenType !== raw.types.openBrace && token.tokenType !== raw.types.closeBrace && token.image !== ';');
    const key = fact?.key?.image;
    if (isPlain && key !== undefined && isStatement(fact?.scope.kind ?? '', key)) return key === 'let' ? 'let' : 'other';
    if (isPlain) return key !== undefined && tokens.length > 1 && fact?.scope.kind !== 'file' && !(isBlockKind(key) && blocksIn(fact?.scope.kind ?? '').includes(key) && !propertiesOf(fact?.scope.kind ?? '').has(key)) ? 'fact' : 'other';
    const open = tokens.findIndex(token => token.tokenType === raw.types.openBrace);
    return open > 0 && tokens.at(-1)?.tokenType === raw.types.closeBrace && tokens.filter(token => token.tokenType === raw.types.openBrace).length === 1
        && tokens.filter(token => token.tokenType === raw.types.closeBrace).length === 1 ? 'block' : 'other';
}

/** Spaces that stay wider than one, by the token before which they stand: the offset from the first value or word that the token keeps. */
export type Columns = ReadonlyMap<Token, number>;

/** Where the author has lined things up over several lines in a row, they stay in line. */
export function alignedColumns(lines: readonly CodeLine[], raw: RawText): Columns {
    const columns = new Map<Token, number>();
    for (const run of runsOf(lines)) {
        if (run[0]?.shape === 'block') alignAt(run, token => token.tokenType === raw.types.openBrace, columns);
        else if (run[0]?.shape === 'let') alignAt(run, ({ image }) => image === '=', columns);
        else alignValues(run, columns);
    }
    return columns;
}

function runsOf(lines: readonly CodeLine[]): CodeLine[][] {
    const runs: CodeLine[][] = [];
    let before: CodeLine | undefined;
    for (const line of lines) {
        const isLaidOut = (line.shape === 'fact' || line.shape === 'block' || line.shape === 'let') && !line.isFrozen;
        if (isLaidOut && before?.shape === line.shape && before.depth === line.depth && !before.isFrozen) runs.at(-1)?.push(line);
        else if (isLaidOut) runs.push([line]);
        before = line;
    }
    return runs;
}

/** Braces of one-line blocks in a row, and the signs of names in a row, stand in one column as soon as one of them has been moved out. */
function alignAt(run: readonly CodeLine[], isMark: (token: Token) => boolean, columns: Map<Token, number>): void {
    const heads = run.flatMap(({ tokens }) => {
        const at = tokens.findIndex(isMark);
        const [key] = tokens;
        const brace = tokens[at];
        const before = tokens[at - 1];
        return key && brace && before ? [{ brace, width: joined(tokens.slice(0, at)).length, column: brace.startOffset - key.startOffset, gap: brace.startOffset - endOf(before) }] : [];
    });
    if (heads.length < 2 || heads.every(({ gap }) => gap <= 1)) return;
    const widest = Math.max(...heads.map(({ width }) => width));
    const [head] = heads;
    const isShared = head !== undefined && head.column > widest && heads.every(({ column }) => column === head.column);
    for (const { brace } of heads) columns.set(brace, isShared ? head.column : widest + 1);
}

/** A value that stands in the same column as one of another line in a row keeps it. */
function alignValues(run: readonly CodeLine[], columns: Map<Token, number>): void {
    const wide = run.flatMap(({ tokens }, i) => {
        const [, value] = tokens;
        return value ? tokens.slice(2).flatMap((token, j) => {
            const before = tokens[j + 1];
            return before && token.startOffset - endOf(before) > 1 ? [{ token, line: i, column: token.startOffset - value.startOffset }] : [];
        }) : [];
    });
    for (const { token, line, column } of wide) if (wide.some(other => other.line !== line && other.column === column)) columns.set(token, column);
}

/** What stands between two tokens of a line. */
function gapBetween(left: Token, right: Token): string {
    const isSign = (image: string): boolean => /^(?:[<>]=?|!?=|[*+/])$/.test(image);
    if (right.image === ';' || right.image === ',' || left.image === '(' || right.image === ')') return '';
    if (/^[{};,]$/.test(left.image) || /^[{}]$/.test(right.image) || isSign(left.image) || isSign(right.image)) return ' ';
    return endOf(left) === right.startOffset ? '' : ' ';
}

function joined(tokens: readonly Token[]): string {
    return tokens.reduce((text, token, i) => { const before = tokens[i - 1]; return `${text}${before ? gapBetween(before, token) : ''}${token.image}`; }, '');
}

/** The tokens of a line as they should stand, without indentation and remark. */
export function layOut({ tokens, shape }: CodeLine, columns: Columns): string {
    const [key] = tokens;
    if (!key) return '';
    let text = key.image;
    let from = 0;
    tokens.slice(1).forEach((token, i) => {
        const before = tokens[i] ?? key;
        const column = columns.get(token);
        if (shape === 'fact' && i === 0 && endOf(before) < token.startOffset) { text = padKey(key.image); from = text.length; }
        else if (column !== undefined) text = text.padEnd(Math.max(from + column, text.length + 1));
        else text += gapBetween(before, token);
        text += token.image;
    });
    return text;
}
