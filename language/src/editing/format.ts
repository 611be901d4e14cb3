import { isReadingReport, type HotroomLexer } from '../syntax/lexer.js';
import type { SyntaxProblem, SyntaxProblemId } from '../syntax/problem.js';
import { endOf } from '../syntax/token-list.js';
import { alignedColumns, codeLines, layOut, type CodeLine } from './format-lines.js';
import type { RawText } from './raw-facts.js';
import { smallestChange, type TextChange } from './text-lines.js';

export interface FormatOptions {
    /** One level of indentation: some spaces or a tab. */
    readonly indent: string;
    /** Lines to format, first and last, counted from 0; all when absent. */
    readonly lines?: { readonly first: number; readonly last: number };
}

/** Problems of braces: while one is there, indentation is what tells where blocks end, and stays. */
const structural: ReadonlySet<SyntaxProblemId> = new Set(['block-not-closed', 'brace-without-partner', 'brace-missing', 'brace-on-its-own-line', 'line-without-a-word']);

/**
 * Changes that bring a text into its usual shape: blocks indented, one space before `{`, a fact's value in column 10 (one space behind a longer
 * key), one space between values unless lines in a row were lined up by hand, no blanks at line ends, one blank line at most, a line end at
 * the end (unless braces are out of balance). Touches white space only, keeps remarks and kinds of line end, and leaves alone what cannot be read. Doing it twice does nothing more.
 */
export function formatText(raw: RawText, lexer: HotroomLexer, { indent, lines: wanted }: FormatOptions): readonly TextChange[] {
    const problems = problemsOf(raw.text, lexer);
    if (!problems) return [];
    const keepsIndent = raw.surplus !== 0 || problems.some(problem => structural.has(problem.id));
    const damaged = [...problems.filter(problem => problem.id !== 'block-not-closed'), ...raw.errors.map(({ offset, length }) => ({ start: offset, end: offset + length }))];
    const lines = codeLines(raw, damaged);
    const columns = alignedColumns(lines, raw);
    const texts = lines.map(line => line.isFrozen ? undefined : `${keepsIndent ? ownIndent(raw.text, line) : indent.repeat(line.depth)}${layOut(line, columns)}`);
    const isWanted = (i: number): boolean => !wanted || (wanted.first <= i && i <= wanted.last);
    const lastWritten = lines.findLastIndex(({ shape, isFrozen }) => shape !== 'blank' || isFrozen);
    const changes: TextChange[] = [];
    lines.forEach((line, i) => {
        if (!isWanted(i)) return;
        const { start, end, lineEnd } = line.line;
        if (line.shape === 'blank' && !line.isFrozen) {
            const isExtra = i > lastWritten || lines.slice(0, i).every(isBlank) || (lines[i - 1] !== undefined && isBlank(lines[i - 1] as CodeLine));
            if (isExtra && lineEnd !== '') changes.push({ start, end: end + lineEnd.length, newText: '' });
            else if (end > start) changes.push({ start, end, newText: '' });
            return;
        }
        const before = raw.text.slice(start, end);
        const code = texts[i];
        if (code !== undefined) {
            const after = line.comment ? withComment(lines, texts, i) : code.trimEnd();
            const change = readsTheSame(before, after, lexer) ? smallestChange(start, before, after) : undefined;
            if (change) changes.push(change);
        }
        if (i === lastWritten && lineEnd === '' && !keepsIndent) changes.push({ start: end, end, newText: lines.find(other => other.line.lineEnd !== '')?.line.lineEnd ?? '\n' });
    });
    return changes;
}

const isBlank = (line: CodeLine): boolean => line.shape === 'blank' && !line.isFrozen;

/** Mistakes of a text; nothing when it is too large or nested too deeply to be read at all. */
function problemsOf(text: string, lexer: HotroomLexer): readonly SyntaxProblem[] | undefined {
    try {
        const { report } = lexer.tokenize(text);
        if (!isReadingReport(report)) return [];
        return report.isUnread ? undefined : report.problems;
    } catch (error) {
        if (error instanceof RangeError) return undefined;
        throw error;
    }
}

function ownIndent(text: string, { line, tokens, comment }: CodeLine): string {
    return text.slice(line.start, tokens[0]?.startOffset ?? comment?.startOffset ?? line.start);
}

/** A remark keeps its distance from the code; remarks of lines in a row that stood in one column stand in one column again. */
function withComment(lines: readonly CodeLine[], texts: readonly (string | undefined)[], i: number): string {
    const { comment, tokens, line } = lines[i] as CodeLine;
    const code = texts[i] ?? '';
    const image = comment?.image.trimEnd() ?? '';
    if (!comment || tokens.length === 0) return `${code}${image}`;
    const column = comment.startOffset - line.start;
    const hasSameColumn = (other: CodeLine | undefined, at: number): boolean =>
        other?.comment !== undefined && other.tokens.length > 0 && texts[at] !== undefined && other.comment.startOffset - other.line.start === column;
    let first = i;
    let last = i;
    while (hasSameColumn(lines[first - 1], first - 1)) first--;
    while (hasSameColumn(lines[last + 1], last + 1)) last++;
    if (first < last) return `${code.padEnd(Math.max(column, ...texts.slice(first, last + 1).map(other => (other?.length ?? 0) + 1)))}${image}`;
    const gap = comment.startOffset - endOf(tokens.at(-1) ?? comment);
    return `${code}${' '.repeat(Math.max(1, gap))}${image}`;
}

/** Whether two lines have the same tokens and the same mistakes: moving `7'  6"` together would make one figure of two. */
function readsTheSame(before: string, after: string, lexer: HotroomLexer): boolean {
    const images = (line: string): string => lexer.raw(line).tokens.map(token => token.image).join('\n');
    const mistakes = (line: string): string => problemsOf(line, lexer)?.map(problem => problem.id).join() ?? '';
    return images(before) === images(after) && mistakes(before) === mistakes(after);
}
