import type { LexerResult } from 'langium';
import { units } from '../core/quantity.js';
import type { SyntaxProblem } from './problem.js';
import { quotePaths } from './bare-paths.js';
import { endOf, touches, type Token, type TokenTypes } from './token-list.js';
import { WordHabits } from './word-habits.js';

type Report = (problem: Omit<SyntaxProblem, 'damages'>) => void;

/**
 * First pass over the raw tokens, word by word: what is no token at all, quotes of a word processor, decimal commas, unknown units, a missing
 * inch mark. Each is reported once and mended where the meaning is plain; what cannot be mended leaves the list with its line marked.
 * @returns the tokens that go on, and the offsets of those whose line must count as damaged
 */
export function tidyWords(written: readonly Token[], lexerErrors: LexerResult['errors'], text: string, types: TokenTypes, report: Report): { readonly tokens: Token[]; readonly damaged: readonly number[] } {
    const damaged: number[] = [];
    const { tokens: raw, errors } = quotePaths(written, lexerErrors, text, types, report);
    const dropped = reportCharacters(errors, text, report, damaged);
    let at = 0;
    const kept = dropped.length === 0 ? raw : raw.filter(({ startOffset }) => {
        while ((dropped[at]?.end ?? Infinity) <= startOffset) at++;
        return startOffset < (dropped[at]?.start ?? Infinity);
    });
    const tokens: Token[] = [];
    const habits = new WordHabits(types, text, report);
    for (let i = 0; i < kept.length; i++) {
        const token = kept[i];
        if (!token) continue;
        const next = kept[i + 1];
        const meant = habits.read(kept, i, tokens.at(-1));
        if (meant) { tokens.push(meant.token); i += meant.count - 1; continue; }
        if (next && token.tokenType === types.length && /['\u2019\u2018\u2032]$/.test(token.image) && next.tokenType === types.number && gapIsSmall(token, next)) {
            report({
                id: 'inch-mark-missing', start: token.startOffset, end: endOf(next),
                message: `${token.image}${next.image} lacks its inch mark. Write ${token.image}${next.image}".`,
                fix: { title: `Write ${token.image}${next.image}"`, edits: [{ start: endOf(next), end: endOf(next), newText: '"' }] },
            });
            const image = `${token.image}${text.slice(endOf(token), next.startOffset)}${next.image}`;
            tokens.push({ ...token, image, endOffset: endOf(next) - 1 });
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

const gapIsSmall = (a: Token, b: Token): boolean => b.startOffset - endOf(a) <= 1;

/** Reports what the lexer could not read, one message a line; an open quote takes the rest of its line with it. */
function reportCharacters(errors: LexerResult['errors'], text: string, report: Report, damaged: number[]): { start: number; end: number }[] {
    const ranges: { start: number; end: number }[] = [];
    /** Where the line ends on which something was reported: later odd characters of it have the same cause. */
    let reportedUntil = -1;
    let passedUntil = -1;
    for (const { offset, length } of errors) {
        if (offset < passedUntil) continue;
        if (offset < reportedUntil) { ranges.push({ start: offset, end: offset + length }); continue; }
        const lineEnd = endOfLine(text, offset);
        const piece = text.slice(offset, offset + length);
        damaged.push(offset);
        reportedUntil = lineEnd;
        if (/^["\u201c-\u201f\u00ab\u00bb]/.test(piece)) {
            const isStraight = piece.startsWith('"');
            const end = offset + text.slice(offset, lineEnd).trimEnd().length;
            report({
                id: 'text-not-closed', start: offset, end,
                message: isStraight ? 'This text is not closed. A text ends with " on the line it begins on.' : `This text begins with ${piece[0] ?? ''} and is not closed. A text stands between two straight quotes (") on one line.`,
                ...(isStraight && { fix: { title: 'Close the text at the end of the line', edits: [{ start: end, end, newText: '"' }] } }),
            });
            ranges.push({ start: offset, end: lineEnd });
            passedUntil = lineEnd;
        } else {
            const end = Math.min(offset + length, lineEnd);
            report({ id: 'unexpected-character', start: offset, end: Math.max(end, offset + 1), message: characterMessage(piece.trim() || piece) });
            ranges.push({ start: offset, end });
        }
    }
    return ranges;
}

function characterMessage(piece: string): string {
    if (piece.startsWith('=') || piece.startsWith(':')) return `‘${piece[0] ?? ''}’ is not used in a fact. Write the word and then its value, such as top 37".`;
    if (piece.startsWith('#') || piece.startsWith('/*')) return `‘${piece}’ is not used here. A remark begins with //.`;
    const sign = Object.hasOwn(typesetComparisons, piece.charAt(0)) ? typesetComparisons[piece.charAt(0)] : undefined;
    if (sign !== undefined) return `‘${piece.charAt(0)}’ is written ${sign} here.`;
    if (piece.startsWith('%')) return 'A figure per cent is written without a sign.';
    if (piece.startsWith('&')) return '‘&’ is not used here; both are asked for by and.';
    if (piece.startsWith('|')) return '‘|’ is not used here; one of two is asked for by or.';
    if (piece.startsWith('\'')) return '‘\'’ is the foot mark and stands right behind a figure. A text stands in ".';
    if (/^[\u2010-\u2015\u2212]/.test(piece)) return `‘${piece}’ is a dash; a hyphen is needed. Write - between spaces to subtract, and without spaces to join.`;
    if (/^[\u00b0\u00ba\u02da\u2103\u2109]/.test(piece)) return `‘${piece}’ is not used here; a temperature is written with its scale. Write 68 degF or 20 degC.`;
    if (/^[\u2018-\u201b]/.test(piece)) return `‘${piece}’ is not used here; a text stands in straight quotes ("), and a foot mark right behind a figure.`;
    return `‘${piece}’ is not used in this language. Remove it, or put it in a text in quotes.`;
}

const typesetComparisons: Readonly<Record<string, string>> = { '\u2265': '>=', '\u2264': '<=', '\u2260': '!=', '\u2267': '>=', '\u2266': '<=' };

const lineEnds = /[\r\n]/g;
export function endOfLine(text: string, offset: number): number {
    lineEnds.lastIndex = offset;
    return lineEnds.exec(text)?.index ?? text.length;
}
