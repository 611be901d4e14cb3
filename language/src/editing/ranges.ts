import { endOf } from '../syntax/token-list.js';
import { endOfFact } from './outline.js';
import type { RawFact, RawText } from './raw-facts.js';
import { stretchesInCalculation } from './ranges-in-calculations.js';
import { phraseAround } from './spot.js';
import { lineAt, linesOf } from './text-lines.js';

/** Lines that can be folded away, counted from 0; `imports` and `comment` are what an editor folds together by command. */
export interface Fold { readonly firstLine: number; readonly lastLine: number; readonly kind: 'block' | 'comment' | 'imports' }

/** Blocks of more than one line, remarks of several lines in a row, and the `use` lines at the head. */
export function foldsOf(raw: RawText): readonly Fold[] {
    const lines = linesOf(raw.text);
    const folds: Fold[] = [];
    for (const fact of raw.facts) {
        if (!fact.body?.open) continue;
        const firstLine = lineAt(lines, fact.body.open.startOffset);
        const closeLine = lineAt(lines, endOfFact(fact));
        // The closing brace stays in sight.
        const lastLine = fact.body.close ? closeLine - 1 : closeLine;
        if (lastLine > firstLine) folds.push({ firstLine, lastLine, kind: 'block' });
    }
    const remarks = raw.comments.map(comment => lineAt(lines, comment.startOffset)).filter(line => /^\s*\/\//.test(raw.text.slice(lines[line]?.start, lines[line]?.end)));
    folds.push(...stretches(remarks, 1).map(stretch => ({ ...stretch, kind: 'comment' as const })));
    const uses = raw.file.facts.filter(fact => fact.key?.image === 'use').map(fact => lineAt(lines, fact.start));
    folds.push(...stretches(uses, 1).map(stretch => ({ ...stretch, kind: 'imports' as const })));
    return folds.sort((a, b) => a.firstLine - b.firstLine || b.lastLine - a.lastLine);
}

function stretches(lines: readonly number[], step: number): { firstLine: number; lastLine: number }[] {
    const found: { firstLine: number; lastLine: number }[] = [];
    for (const line of lines) {
        const last = found.at(-1);
        if (last && line - last.lastLine <= step) last.lastLine = line; else found.push({ firstLine: line, lastLine: line });
    }
    return found.filter(({ firstLine, lastLine }) => lastLine > firstLine);
}

export interface Stretch { readonly start: number; readonly end: number }

/** Stretches around an offset from small to large: word, name, what a calculation joins, list member, value, fact, what stands in the block, block, …, the file. */
export function stretchesAround(raw: RawText, offset: number): readonly Stretch[] {
    const found: Stretch[] = [];
    const push = (start: number, end: number): void => {
        const last = found.at(-1);
        if (start <= offset && offset <= end && end > start && (!last || (start <= last.start && end >= last.end && (start < last.start || end > last.end)))) found.push({ start, end });
    };
    for (const token of [...raw.tokens, ...raw.comments]) if (token.tokenType !== raw.types.lineEnd && found.length === 0) push(token.startOffset, endOf(token));
    const around = [...raw.facts].filter(fact => fact.start <= offset && offset <= endOfFact(fact)).reverse();
    for (const fact of around) {
        pushValue(fact, offset, push);
        if (fact.body?.open && fact.body.close) push(endOf(fact.body.open), fact.body.close.startOffset);
        push(fact.start, endOfFact(fact));
    }
    push(0, raw.text.length);
    return found;
}

function pushValue(fact: RawFact, offset: number, push: (start: number, end: number) => void): void {
    const values = fact.tokens.slice(1);
    const { own, behind } = phraseAround(values.filter(token => token.startOffset <= offset), values.filter(token => token.startOffset > offset));
    const member = [...own, ...behind];
    for (const { start, end } of stretchesInCalculation(fact.tokens.slice(1), offset)) push(start, end);
    for (const tokens of [member, values]) {
        const [first] = tokens;
        const last = tokens.at(-1);
        if (first && last) push(first.startOffset, endOf(last));
    }
}
