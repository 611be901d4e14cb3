import type { Length } from '../core/length.js';
import { isMetric, showLength, type LengthUnit } from '../core/show.js';
import { goodPractice } from '../rule-sets/good-practice.js';
import { showAtLeast, showAtMost } from './rounding.js';
import { strictest, type ClauseKey, type Condition, type Governing, type RuleSet } from '../rule-sets/index.js';

/**
 * The clause that governs a key. Common practice counts even where the job does not name it, as it speaks only where no published clause does.
 * @param options `without`: conditions the job does not meet
 */
export const governing = <K extends ClauseKey>(ruleSets: readonly RuleSet[], key: K, options: { readonly without?: readonly Condition[] } = {}): Governing<K> | undefined =>
    strictest(ruleSets.some(({ id }) => id === goodPractice.id) ? ruleSets : [...ruleSets, goodPractice], key, options);

/** What common practice alone says of a key. */
export const practised = <K extends ClauseKey>(key: K): Governing<K> | undefined => strictest([goodPractice], key);

/**
 * A required length as a message has it: exactly in the designer's unit, else in its own with the designer's beside it, `500 mm (≈19 11/16")`, rounded
 * up where it is the least and down where it is the most.
 */
export function showRequired(length: Length, unit: LengthUnit, bound: 'least' | 'most' = 'least'): string {
    const text = showLength(length, unit);
    return text.startsWith('≈') ? `${showLength(length, isMetric(unit) ? 'in' : 'mm')} (${bound === 'least' ? showAtLeast(length, unit) : showAtMost(length, unit)})` : text;
}
