import type { LexerResult } from 'langium';
import { units } from '../core/quantity.js';
import type { SyntaxProblem } from './problem.js';
import { endOf, touches, withType, type Token, type TokenTypes } from './token-list.js';

type Report = (problem: Omit<SyntaxProblem, 'damages'>) => void;

/**
 * First pass over the raw tokens, word by word: what is no token at all, quotes of a word processor, decimal commas, unknown units, a missing
 * inch mark. Each is reported once and mended where the meaning is plain; what cannot be mended leaves the list with its line marked.
 * @returns the tokens that go on, and the offsets of those whose line must count as damaged
 */
export function tidyWords(raw: readonly Token[], errors: LexerResult['errors'], text: string, types: TokenTypes, report: Report): { readonly tokens: Token[]; readonly damaged: readonly number[] } {
    const damaged: number[] = [];
    const dropped = reportCharacters(errors, text, report, damaged);
    const kept = raw.filter(token => !dropped.some(range => range.start <= token.startOffset && token.startOffset < range.end));
    const tokens: Token[] = [];
    for (let i = 0; i < kept.length; i++) {
        const token = kept[i];
        if (!token) continue;
        const next = kept[i + 1];
        const after = kept[i + 2];
        reportCurly(token, types, report);
        if (next && after && next.image === ',' && isFigure(token, types) && isFigure(after, types) && touches(token, next) && touches(next, after) && /^\d+$/.test(token.image)) {
            const written = `${token.image},${after.image}`;
            report({
                id: 'decimal-comma', start: token.startOffset, end: endOf(after),
                message: `${written} has a decimal comma; the decimal mark is a point. Write ${token.image}.${after.image}.`,
                fix: { title: `Write ${token.image}.${after.image}`, edits: [{ start: next.startOffset, end: endOf(next), newText: '.' }] },
            });
            tokens.push({ ...withType(after, after.tokenType), image: `${token.image}.${after.image}`, startOffset: token.startOffset, startColumn: token.startColumn ?? 1 });
            i += 2;
            continue;
        }
        if (next && token.tokenType === types.length && /['\u2019\u2018\u2032]$/.test(token.image) && next.tokenType === types.number && gapIsSmall(token, next)) {
            report({
                id: 'inch-mark-missing', start: token.startOffset, end: endOf(next),
                message: `${token.image}${next.image} lacks its inch mark. Write ${token.image}${next.image}".`,
                fix: { title: `Write ${token.image}${next.image}"`, edits: [{ start: endOf(next), end: endOf(next), newText: '"' }] },
            });
            const image = `${token.image}${text.slice(endOf(token), next.startOffset)}${next.image}`;
            tokens.push({ ...token, image, endOffset: token.startOffset + image.length - 1 });
            damaged.push(token.startOffset);
            i += 1;
            continue;
        }
        if (next && token.tokenType === types.number && next.tokenType === types.word && touches(token, next)) {
            report({
                id: 'unknown-unit', start: token.startOffset, end: endOf(next),
                message: `${next.image} is not a unit. Units are ${Object.keys(units).join(', ')} and three capitals for money.`,
            });
            tokens.push(token);
            damaged.push(token.startOffset);
            i += 1;
            continue;
        }
        tokens.push(token);
    }
    return { tokens, damaged };
}

const isFigure = (token: Token, types: TokenTypes): boolean =>
    token.tokenType === types.number || token.tokenType === types.quantity || token.tokenType === types.length;
const gapIsSmall = (a: Token, b: Token): boolean => b.startOffset - endOf(a) <= 1;

function reportCurly(token: Token, types: TokenTypes, report: Report): void {
    if (token.tokenType !== types.length || !/[\u2018\u2019\u201c\u201d]/.test(token.image)) return;
    const straight = token.image.replace(/[\u2018\u2019]/g, '\'').replace(/[\u201c\u201d]/g, '"');
    report({
        id: 'curly-quote', start: token.startOffset, end: endOf(token),
        message: `${token.image} has the curly quotes of a word processor. Write ${straight}.`,
        fix: { title: `Write ${straight}`, edits: [{ start: token.startOffset, end: endOf(token), newText: straight }] },
    });
}

/** Reports what the lexer could not read, one message a line; an open quote takes the rest of its line with it. */
function reportCharacters(errors: LexerResult['errors'], text: string, report: Report, damaged: number[]): { start: number; end: number }[] {
    const ranges: { start: number; end: number }[] = [];
    for (const { offset, length } of errors) {
        if (ranges.some(range => range.start <= offset && offset < range.end)) continue;
        const lineEnd = endOfLine(text, offset);
        const piece = text.slice(offset, offset + length);
        damaged.push(offset);
        if (/^["\u201c\u201d]/.test(piece)) {
            const end = offset + text.slice(offset, lineEnd).trimEnd().length;
            report({
                id: 'text-not-closed', start: offset, end,
                message: 'This text is not closed. A text ends with " on the line it begins on.',
                fix: { title: 'Close the text at the end of the line', edits: [{ start: end, end, newText: '"' }] },
            });
            ranges.push({ start: offset, end: lineEnd });
        } else {
            const end = Math.min(offset + length, lineEnd);
            report({ id: 'unexpected-character', start: offset, end: Math.max(end, offset + 1), message: characterMessage(piece.trim() || piece) });
            // Later odd characters of the same line have the same cause.
            ranges.push({ start: offset, end });
            const rest = errors.filter(error => error.offset > offset && error.offset < lineEnd);
            for (const other of rest) ranges.push({ start: other.offset, end: other.offset + other.length });
        }
    }
    return ranges;
}

function characterMessage(piece: string): string {
    if (piece.startsWith('=') || piece.startsWith(':')) return `‘${piece[0] ?? ''}’ is not used in a fact. Write the word and then its value, such as top 37".`;
    if (piece.startsWith('#') || piece.startsWith('/*')) return `‘${piece}’ is not used here. A remark begins with //.`;
    if (piece.startsWith('\'')) return '‘\'’ is the foot mark and stands right behind a figure. A text stands in ".';
    if (piece.startsWith('\u00d7')) return '‘\u00d7’ is not used in a size. Write x between spaces, such as 8" x 4".';
    return `‘${piece}’ is not used in this language. Remove it, or put it in a text in quotes.`;
}

export function endOfLine(text: string, offset: number): number {
    const match = /[\r\n]/.exec(text.slice(offset));
    return match ? offset + match.index : text.length;
}
