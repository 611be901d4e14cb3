import type { ReportedFinding } from '../core/finding.js';
import { spanContains, type Span } from '../core/span.js';
import type { Job } from '../model/job.js';
import { isLanguageRule } from '../model/language-rules.js';

/**
 * Findings of a job stand in the job's own text. One that stands in the text of a series moves to where the job says what it is made from, and keeps
 * its place in the series beside it: the job is what was ordered, and the series may serve others well. Its fixes would change the other jobs too and
 * so are never safe.
 */
export function relocate(findings: readonly ReportedFinding[], job: Job, own: Span): readonly ReportedFinding[] {
    const { base } = job.block;
    if (!base) return findings;
    const moved = new Set<string>();
    return findings.flatMap((finding): ReportedFinding[] => {
        if (spanContains(own, finding.at) || (isLanguageRule(finding.rule) && finding.at.uri === own.uri)) return [finding];
        const key = `${finding.rule} ${finding.message}`;
        if (moved.has(key)) return [];
        moved.add(key);
        return [{
            ...finding, at: base.span,
            related: [{ at: finding.at, message: `It is written here, in ${base.value}.` }, ...finding.related ?? []],
            ...(finding.fixes && { fixes: finding.fixes.map(fix => ({ ...fix, safety: 'review' as const, title: `${fix.title} (in ${base.value}, for every job made from it)` })) }),
        }];
    });
}

/**
 * What a variant adds to the findings of its job: those the job has too are left out, and the rest say which variant they are of. What is said of the job
 * as a whole stands at the head of each and speaks of each by its name; that is one finding when rule, subject and figures are the same.
 */
export function findingsOfVariant(findings: readonly ReportedFinding[], ofJob: readonly ReportedFinding[], variant: { readonly name: string; readonly own: Span; readonly head: Span; readonly headOfJob: Span }): readonly ReportedFinding[] {
    const known = new Map<string, number>();
    for (const finding of ofJob) { const key = keyOf(finding, variant.headOfJob); known.set(key, (known.get(key) ?? 0) + 1); }
    return findings.filter(finding => {
        const key = keyOf(finding, variant.head);
        const left = known.get(key) ?? 0;
        if (left > 0) known.set(key, left - 1);
        return left === 0;
    }).map(finding => spanContains(variant.own, finding.at) ? finding : { ...finding, message: `In variant ${variant.name}: ${finding.message}` });
}
function keyOf({ rule, at, message, subject, measured, required }: ReportedFinding, head: Span): string {
    const isHead = at.uri === head.uri && at.start === head.start && at.end === head.end;
    return JSON.stringify(isHead ? [rule, subject, measured, required] : [rule, at.uri, at.start, at.end, message]);
}
