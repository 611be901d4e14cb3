import type { LexerResult } from 'langium';
import type { SyntaxProblem } from './problem.js';
import { endOf, withImage, type Token, type TokenTypes } from './token-list.js';

const path = /^[ \t]+(?:'([^'\r\n]+)'|([^\s"';{}]+))/;
const looksLikePath = /[/\\]|\.hotroom$/;

/** The path behind a `use` written without quotes, or in single ones, becomes the text it means; the characters of it that are no token go with it. */
export function quotePaths(raw: readonly Token[], errors: LexerResult['errors'], text: string, types: TokenTypes, report: (problem: Omit<SyntaxProblem, 'damages'>) => void): { readonly tokens: readonly Token[]; readonly errors: LexerResult['errors'] } {
    const found = new Map<Token, { readonly quoted: Token; readonly end: number }>();
    let depth = 0;
    raw.forEach((token, i) => {
        if (token.tokenType === types.openBrace) depth++;
        if (token.tokenType === types.closeBrace) depth--;
        if (token.image !== 'use' || depth > 0 || (i > 0 && raw[i - 1]?.tokenType !== types.lineEnd)) return;
        const start = endOf(token);
        const match = path.exec(text.slice(start, start + 1000));
        const written = match?.[1] ?? match?.[2];
        if (!match || written === undefined || !looksLikePath.test(written)) return;
        const [end, first] = [start + match[0].length, start + match[0].search(/[^ \t]/)];
        const quoted = `"${written.replaceAll('\\', '/')}"`;
        report({
            id: 'use-not-a-path', start: first, end, message: `A path stands in quotes: use ${quoted}.`,
            fix: { title: 'Put the path in quotes', edits: [{ start: first, end, newText: quoted }] },
        });
        const column = (token.startColumn ?? 1) + first - token.startOffset;
        found.set(token, { end, quoted: { ...withImage(token, types.text, quoted), startOffset: first, endOffset: end - 1, startColumn: column, endColumn: column + end - first - 1 } });
    });
    if (found.size === 0) return { tokens: raw, errors };
    let passedUntil = -1;
    const tokens = raw.flatMap(token => {
        if (token.startOffset < passedUntil) return [];
        const path = found.get(token);
        if (path) passedUntil = path.end;
        return path ? [token, path.quoted] : [token];
    });
    const ranges = [...found.values()].map(({ quoted, end }) => ({ start: quoted.startOffset, end }));
    return { tokens, errors: errors.filter(({ offset }) => !ranges.some(({ start, end }) => start <= offset && offset < end)) };
}
