import type { Span } from '../core/span.js';
import * as ast from '../syntax/generated/ast.js';
import type { Reading } from './reading.js';

/** Comparisons as people say them, the longer first, and the sign each is written with. */
const spokenSigns: readonly (readonly [words: string, sign: string])[] = [
    ['is not more than', '<='], ['is no more than', '<='], ['is not less than', '>='], ['is no less than', '>='], ['is at least', '>='], ['is at most', '<='], ['is more than', '>'], ['is greater than', '>'],
    ['is less than', '<'], ['is not', '!='], ['no more than', '<='], ['not more than', '<='], ['no less than', '>='], ['not less than', '>='], ['at least', '>='], ['at most', '<='], ['more than', '>'],
    ['greater than', '>'], ['less than', '<'], ['equal to', '='], ['is', '='], ['equals', '='], ['equal', '='], ['exceeds', '>'], ['above', '>'], ['over', '>'], ['below', '<'], ['under', '<'],
];

/**
 * Whether a condition is written in words, such as `bench.top is at least 36"` or `bench.top between 16" and 40"`; reports how it is written then.
 * @param terms the terms of the fact, which no sign joins
 */
export function reportSpokenComparison(terms: readonly (ast.Expr | undefined)[], reading: Reading): boolean {
    const [first, ...others] = terms.flatMap(term => term ?? []);
    if (!first) return false;
    const words = others.map(term => ast.isWord(term) && term.path.length === 0 ? term.ref.$refText : undefined);
    const [between, ends] = words[0] === 'is' && words[1] === 'between' ? [words[1], others[2]] : [words[0], others[1]];
    if (between === 'between' && ast.isLogic(ends) && ends.operator === 'and' && !ast.isLogic(ends.left)) {
        const subject = reading.textOf(first);
        const meant = `${subject} >= ${reading.textOf(ends.left)} and ${subject} <= ${reading.textOf(ends.right)}`;
        tell('between', others[0], ends, meant, first, ends, reading);
        return true;
    }
    for (const [spoken, sign] of spokenSigns) {
        const count = spoken.split(' ').length;
        const value = others[count];
        if (words.slice(0, count).join(' ') !== spoken || !value) continue;
        tell(spoken, others[0], others[count - 1], `${reading.textOf(first)} ${sign} ${reading.textOf(value)}`, first, value, reading, sign);
        return true;
    }
    return false;
}

function tell(spoken: string, from: ast.Expr | undefined, to: ast.Expr | undefined, meant: string, first: ast.Expr, last: ast.Expr, reading: Reading, sign?: string): void {
    const over = (one: ast.Expr, other: ast.Expr): Span => ({ uri: reading.uri, start: reading.spanOf(one).start, end: reading.spanOf(other).end });
    reading.report('part-not-expected', over(from ?? first, to ?? last), `‘${spoken}’ is written ${sign === undefined ? 'as two comparisons' : sign} in a condition: ${meant}.`,
        { fixes: [reading.replace(`Write ${meant}`, over(first, last), meant)] });
}
