import type { RecordedWaiver, ReportedFinding, SeverityChange } from '../core/finding.js';

/** A waiver that accepts something now, with how many findings. */
export interface WaiverInForce extends RecordedWaiver { readonly rule: string; readonly count: number }
/** What the settings made of a rule, with how many findings; `to` is `off` for those left out. */
export interface ChangedSeverity extends SeverityChange { readonly rule: string; readonly count: number }

/** The waivers behind accepted findings, each once, in the order of the findings. */
export function waiversInForce(findings: readonly ReportedFinding[]): readonly WaiverInForce[] {
    return grouped(findings.flatMap(({ rule, waived }) => waived ? [{ ...waived, rule }] : []), ({ rule, at }) => [rule, at.uri, at.start]);
}

/** What the settings changed, each choice once, in the order of the findings. */
export function severityChanges(findings: readonly ReportedFinding[]): readonly ChangedSeverity[] {
    return grouped(findings.flatMap(({ rule, changed }) => changed ? [{ ...changed, rule }] : []), ({ rule, from, to, at }) => [rule, from, to, at.uri, at.start]);
}

function grouped<T>(items: readonly T[], keyOf: (item: T) => readonly unknown[]): readonly (T & { readonly count: number })[] {
    const groups = new Map<string, T & { readonly count: number }>();
    for (const item of items) {
        const key = JSON.stringify(keyOf(item));
        groups.set(key, { ...item, count: (groups.get(key)?.count ?? 0) + 1 });
    }
    return [...groups.values()];
}
