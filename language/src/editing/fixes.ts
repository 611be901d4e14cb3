import type { Edit, Fix, ReportedFinding } from '../core/finding.js';

/** Findings that touch a stretch of the text and offer a fix. */
export const fixableAt = (findings: readonly ReportedFinding[], uri: string, start: number, end: number): readonly ReportedFinding[] =>
    findings.filter(({ at, fixes }) => at.uri === uri && at.start <= end && start <= at.end && (fixes?.length ?? 0) > 0);

/**
 * All fixes of a file that keep its meaning, as one: of fixes that touch each other the first in the text is taken, and asking again gives the rest.
 * @returns the edits of this file; empty when there is nothing to do
 */
export function safeEdits(findings: readonly ReportedFinding[], uri: string): readonly Edit[] {
    const taken: Edit[] = [];
    for (const { fixes } of findings) {
        const fix: Fix | undefined = fixes?.find(candidate => candidate.safety === 'safe');
        if (!fix?.edits.every(edit => edit.span.uri === uri)) continue;
        const isFree = fix.edits.every(edit => taken.every(other => edit.span.end < other.span.start || other.span.end < edit.span.start));
        if (isFree) taken.push(...fix.edits);
    }
    return taken.sort((a, b) => a.span.start - b.span.start);
}
