import type { Citation } from '../core/citation.js';
import type { Finding, Severity } from '../core/finding.js';
import type { Length } from '../core/length.js';
import type { Results } from '../assembly/results.js';
import type { Job } from '../model/job.js';
import type { RuleSet } from '../rule-sets/index.js';

export type RuleFamily = 'job' | 'site' | 'shell' | 'opening' | 'bench' | 'heater' | 'electrical' | 'air' | 'climate' | 'signing';

/** What a rule reads. It never sees syntax, never computes what an engine has computed, and never decides severity. */
export interface RuleInput {
    readonly job: Job;
    readonly results: Results;
    /** The rule sets the job names. */
    readonly ruleSets: readonly RuleSet[];
    /** A length exactly, in the unit the designer writes. */
    readonly show: (length: Length) => string;
    /** The same job changed, put through the engines: for advice that has to hold. Nothing but the job differs. */
    readonly whatIf: (job: Job) => RuleInput;
}

/** One rule: its public id, its documentation, and its check. The handbook page and `explain` are made of these fields. */
export interface Rule {
    /** kebab-case, names the wrong thing seen, equals the file's name; public and never reused. */
    readonly id: string;
    readonly family: RuleFamily;
    readonly title: string;
    /** Usual severity; a finding may carry its own, a project may change it. */
    readonly severity: Severity;
    readonly why: string;
    /** Blocks that replace or join those of the standard job (examples/birch-point.hotroom): a remark `// without vent exhaust` takes one away. */
    readonly bad: string;
    readonly good: string;
    /** Where the requirement usually comes from; the finding carries the one that governs. */
    readonly sources: readonly Citation[];
    /** False for what can never be waived: clearances, sensor, limiter, glass, door latch. */
    readonly isWaivable: boolean;
    /** Whether findings offer a fix, and of which kind. */
    readonly fixes: 'none' | 'safe' | 'review';
    readonly check: (input: RuleInput) => Iterable<Finding>;
}

export const defineRule = (rule: Rule): Rule => Object.freeze(rule);
