import type { Token, TokenTypes } from './token-list.js';
import type { SyntaxProblem } from './problem.js';

/**
 * How much of a text is read. Beyond this a file is no job anybody wrote but a mistake (a log, a drawing, a paste gone wrong) or an attack, and reading
 * it would hold up every other file. A job with its room, benches and heater has about three thousand characters, a maker's whole catalogue ten
 * thousand; blocks of the language nest four deep.
 */
export const limits = { characters: 524_288, lineCharacters: 4000, nesting: 50, factParts: 2000 } as const;

const until = 'Nothing of this file is read until then.';
const figure = (count: number): string => String(count).replace(/\B(?=(?:\d{3})+$)/g, ',');
const problem = (start: number, end: number, message: string): SyntaxProblem => ({ id: 'file-too-large', start, end, damages: [-1], message: `${message} ${until}` });

/** Why a text is not read at all, told by its size and its lines; nothing for any usual text. */
export function overlongText(text: string): SyntaxProblem | undefined {
    if (text.length > limits.characters) {
        return problem(0, 1, `This file is ${figure(text.length)} characters long; Hotroom reads up to ${figure(limits.characters)}. Split it: each job may have a file of its own, and a file takes catalogues from others by use.`);
    }
    if (hasShortLines(text)) return undefined;
    for (let i = 0, start = 0, line = 1; i <= text.length; i++) {
        const code = text.charCodeAt(i);
        if (i < text.length && code !== 10 && code !== 13) continue;
        if (i - start > limits.lineCharacters) return problem(start, start + 1, `Line ${line} is ${figure(i - start)} characters long; Hotroom reads up to ${figure(limits.lineCharacters)} a line. Write one fact a line.`);
        if (!(code === 13 && text.charCodeAt(i + 1) === 10)) line++;
        start = i + 1;
    }
    return undefined;
}

/** Whether no line is too long, line feeds alone counted; carriage returns only make lines shorter. */
function hasShortLines(text: string): boolean {
    for (let start = 0; start <= text.length;) {
        const found = text.indexOf('\n', start);
        const end = found < 0 ? text.length : found;
        if (end - start > limits.lineCharacters) return false;
        start = end + 1;
    }
    return true;
}

/** Why a text is not read at all, told by its blocks. */
export function overdeepBlocks(tokens: readonly Token[], types: TokenTypes): SyntaxProblem | undefined {
    let depth = 0;
    for (const token of tokens) {
        if (token.tokenType === types.closeBrace) depth = Math.max(0, depth - 1);
        if (token.tokenType !== types.openBrace || ++depth <= limits.nesting) continue;
        return problem(token.startOffset, token.startOffset + 1, `Here ${limits.nesting + 1} blocks stand inside each other; Hotroom reads up to ${limits.nesting}. Close the blocks that are open, or put { } in balance.`);
    }
    return undefined;
}

/** The same, told by one fact. */
export function overlongFact(tokens: readonly Token[]): SyntaxProblem | undefined {
    const [first] = tokens;
    if (!first) return undefined;
    if (tokens.length > limits.factParts) {
        return problem(first.startOffset, first.startOffset + 1, `This fact has ${figure(tokens.length)} words and figures; Hotroom reads up to ${figure(limits.factParts)}. End a fact at the end of its line, or split the list.`);
    }
    let depth = 0;
    for (const { image, startOffset } of tokens) {
        if (image === ')') depth = Math.max(0, depth - 1);
        if (image === '(' && ++depth > limits.nesting) {
            return problem(startOffset, startOffset + 1, `Here ${limits.nesting + 1} brackets stand inside each other; Hotroom reads up to ${limits.nesting}. Split the calculation.`);
        }
    }
    return undefined;
}
