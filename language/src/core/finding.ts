import type { Citation } from './citation.js';
import type { Length } from './length.js';
import type { Span } from './span.js';

export type Severity = 'error' | 'warning' | 'info' | 'hint';

/** A measured or required figure with its unit. */
export type Figure =
    | { readonly kind: 'length'; readonly length: Length }
    | { readonly kind: 'amount'; readonly value: number; readonly unit: string }
    | { readonly kind: 'words'; readonly words: string };
export const lengthFigure = (length: Length): Figure => ({ kind: 'length', length });
export const amount = (value: number, unit: string): Figure => ({ kind: 'amount', value, unit });
export const inWords = (words: string): Figure => ({ kind: 'words', words });

export interface Edit { readonly span: Span; readonly newText: string }
/** `safe`: the meaning stays (spelling, units, marks). `review`: the design changes and someone has to agree. */
export interface Fix { readonly title: string; readonly safety: 'safe' | 'review'; readonly edits: readonly Edit[] }
export interface Related { readonly at: Span; readonly message: string }

/** What a rule found, before anybody decides how severe it is. */
export interface Finding {
    /** Where: the one text the designer would change. */
    readonly at: Span;
    /** What is wrong, measured against required with its source, and what to do. */
    readonly message: string;
    readonly citation?: Citation;
    readonly measured?: Figure;
    readonly required?: Figure;
    /** Path in the facts tree of what is measured, such as `stove` or `upper.head_clearance`. */
    readonly subject?: string;
    readonly related?: readonly Related[];
    /** Where it really stands, when it is told elsewhere: in the text of a series that several jobs share. */
    readonly origin?: Span;
    readonly fixes?: readonly Fix[];
    /** When one finding of a rule is less (or more) grave than the rule's usual. */
    readonly severity?: Severity;
    /** False when this one may never be waived although others of its rule may. */
    readonly isWaivable?: false;
}

/** Who accepted a finding, why, and until when. */
export interface RecordedWaiver {
    readonly because: string;
    readonly by: string;
    /** The last day it holds, as `2027-03-01`. */
    readonly until: string;
    readonly at: Span;
}

/** What the settings of a project made of a severity. */
export interface SeverityChange {
    readonly from: Severity;
    readonly to: Severity | 'off';
    /** Where the settings say so. */
    readonly at: Span;
}

/** A finding with the id of its rule and the severity that holds here. */
export interface ReportedFinding extends Finding {
    readonly rule: string;
    readonly severity: Severity;
    /** Set when the job records that somebody accepted it; it is then no more than an info. */
    readonly waived?: RecordedWaiver;
    /** Set when the settings of the project chose its severity. */
    readonly changed?: SeverityChange;
}
