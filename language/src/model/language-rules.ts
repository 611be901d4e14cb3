import type { Severity } from '../core/finding.js';
import type { SyntaxProblemId } from '../syntax/problem.js';

/** A mistake in how the language is used. These have public ids, documentation and severities like every other rule. */
export interface LanguageRule {
    readonly id: LanguageRuleId;
    readonly title: string;
    readonly severity: Severity;
    readonly why: string;
    readonly bad: string;
    readonly good: string;
}
export type LanguageRuleId = SyntaxProblemId
    | 'figure-unreadable' | 'division-by-zero' | 'mixed-dimensions' | 'name-in-calculation' | 'part-not-expected' | 'length-not-exact' | 'unit-missing'
    | 'value-of-another-kind' | 'unknown-word' | 'unknown-name' | 'fact-repeated' | 'block-repeated' | 'fact-missing' | 'name-missing' | 'wall-missing'
    | 'name-taken' | 'block-without-body' | 'property-with-body' | 'use-not-found' | 'use-outside-workspace' | 'use-not-a-path' | 'name-from-two-files'
    | 'value-out-of-range' | 'date-impossible' | 'facts-exclude-each-other' | 'reading-failed';
