import type { Sourced, Span } from '../core/span.js';
import * as ast from '../syntax/generated/ast.js';
import { textOf } from '../syntax/words.js';
import type { CalendarDate } from '../vocabulary/values.js';
import { wordText } from './evaluate.js';
import { readDate } from './read-date.js';
import type { Reading } from './reading.js';

/** A finding somebody has accepted, as the job records it. */
export interface Waiver {
    readonly rule: Sourced<string>;
    /** The block it is about; every finding of the rule when it names none. */
    readonly subject?: Sourced<string>;
    readonly because: string;
    readonly by: string;
    readonly until: Sourced<CalendarDate>;
    /** The whole line. */
    readonly span: Span;
}

const form = 'waive ⟨finding⟩ on ⟨block⟩ because "⟨reason⟩" by "⟨who⟩" until ⟨day⟩';

/** Reads the `waive` lines among some facts; a line that does not say who, why and until when is told so and waives nothing. */
export function readWaivers(facts: readonly ast.Fact[], reading: Reading, isDamaged: (fact: ast.Fact) => boolean): readonly Waiver[] {
    return facts.flatMap((fact): Waiver[] => {
        if (fact.key !== 'waive' || fact.braced || isDamaged(fact)) return [];
        const waiver = readWaiver(fact, reading);
        return waiver ? [waiver] : [];
    });
}

function readWaiver(fact: ast.Fact, reading: Reading): Waiver | undefined {
    const terms: readonly (ast.Expr | undefined)[] = fact.phrases[0]?.terms ?? [];
    const extra = fact.phrases[1]?.terms[0];
    const [rule] = terms;
    if (!rule || !ast.isWord(rule)) {
        reading.report('waiver-incomplete', rule ?? fact, `A waiver names the finding it accepts. Write ${form}.`);
        return undefined;
    }
    let subject: Sourced<string> | undefined;
    let because: string | undefined;
    let by: string | undefined;
    let until: Sourced<CalendarDate> | undefined;
    let odd: ast.Expr | undefined = extra;
    for (let i = 1; i < terms.length; i += 2) {
        const [word, value] = [terms[i], terms[i + 1]];
        const key = ast.isWord(word) ? wordText(word) : '';
        if (key === 'on' && ast.isWord(value)) subject = { value: wordText(value), span: reading.spanOf(value) };
        else if (key === 'because' && ast.isText(value)) because = textOf(value).trim();
        else if (key === 'by' && ast.isText(value)) by = textOf(value).trim();
        else if (key === 'until' && ast.isDateLiteral(value)) {
            const day = readDate(value, reading);
            if (!day) return undefined;
            until = { value: day, span: reading.spanOf(value) };
        } else { odd ??= word; break; }
    }
    const missing = [because ? '' : 'the reason (because "…")', by ? '' : 'who decided it (by "…")', until ? '' : 'until when (until 2027-03-01)'].filter(Boolean);
    if (odd || missing.length > 0 || !because || !by || !until) {
        reading.report('waiver-incomplete', odd ?? rule, odd && missing.length === 0
            ? `‘${reading.textOf(odd)}’ does not belong in a waiver. Write ${form}.`
            : `This waiver lacks ${missing.join(', ')}. Write ${form}.`);
        return undefined;
    }
    return { rule: { value: wordText(rule), span: reading.spanOf(rule) }, ...(subject && { subject }), because, by, until, span: reading.spanOf(fact) };
}
