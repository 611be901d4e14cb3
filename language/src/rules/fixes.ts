import type { Fix } from '../core/finding.js';
import type { Length } from '../core/length.js';
import { isMetric, showLength, showWritable, type LengthUnit } from '../core/show.js';
import type { Span } from '../core/span.js';

/** A length as it can be written in a job, in the designer's unit where that is exact; `undefined` for one no mark shows. */
export function exactText(length: Length, unit: LengthUnit): string | undefined {
    return [showLength(length, unit), showLength(length, isMetric(unit) ? 'in' : 'mm')].find(text => !text.startsWith('≈'));
}

/** A length to put into a job: exactly, in the designer's unit where that can be; where no mark shows it, the next the shop can mark. */
export const writtenLength = (length: Length, unit: LengthUnit): string => exactText(length, unit) ?? showWritable(length, unit).replace('≈', '');

/** Replaces a value: the design changes, so someone has to agree. */
export const replaceValue = (title: string, span: Span, newText: string): Fix => ({ title, safety: 'review', edits: [{ span, newText }] });

/** Adds a fact behind another, on its line: that is right in a block of one line and in one of many. */
export const addFact = (title: string, after: Span, text: string): Fix =>
    ({ title, safety: 'review', edits: [{ span: { ...after, start: after.end }, newText: `; ${text}` }] });

/** Replaces a length by another, where that can be written exactly. */
export function replaceLength(what: string, span: Span, length: Length, unit: LengthUnit): readonly Fix[] {
    const text = exactText(length, unit);
    return text === undefined ? [] : [replaceValue(`Set the ${what} to ${text}`, span, text)];
}
