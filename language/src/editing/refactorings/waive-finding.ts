import type { Analysis } from '../../analyze.js';
import type { ReportedFinding } from '../../core/finding.js';
import { spanContains } from '../../core/span.js';
import { allRules } from '../../rules/index.js';
import { showDate, type CalendarDate } from '../../vocabulary/values.js';
import type { Refactoring } from './refactoring.js';

/**
 * A waiver for each finding at a place that may be waived. Reason and name are left empty on purpose: a waiver without them is a mistake of its own until
 * somebody fills them in.
 * @param until the day offered as its end
 */
export function waiveFindings(analysis: Analysis, uri: string, start: number, end: number, until: CalendarDate): readonly (Refactoring & { readonly finding: ReportedFinding })[] {
    return analysis.findings.flatMap(finding => {
        if (finding.at.uri !== uri || finding.at.start > end || start > finding.at.end || !mayBeWaived(finding)) return [];
        const owner = analysis.jobs.find(({ findings }) => findings.includes(finding));
        if (!owner) return [];
        const { block } = owner.job;
        const subject = finding.subject?.split('.')[0];
        const named = block.children.find(child => child.name?.value === subject) ?? block.children.find(child => spanContains(child.span, finding.at));
        const on = named ? ` on ${named.name?.value ?? named.kind}` : '';
        const line = `waive ${finding.rule}${on} because "" by "" until ${showDate(until)}`;
        const edit = block.insertAt ? { span: block.insertAt, newText: `\n    ${line}` } : { span: { ...block.span, start: block.span.end }, newText: ` {\n    ${line}\n}` };
        return [{ title: `Waive ${finding.rule}${on}`, kind: 'rewrite' as const, edits: [edit], finding }];
    });
}

const mayBeWaived = ({ rule, waived, isWaivable, severity, citation }: ReportedFinding): boolean =>
    !waived && isWaivable !== false && severity !== 'hint' && (citation?.kind === 'house' || allRules.some(({ id, isWaivable: may }) => id === rule && may));
