import type { Analysis } from '../analyze.js';
import type { Span } from '../core/span.js';

/** A line above a job; `opens` tells what choosing it shows. */
export interface Lens { readonly at: Span; readonly title: string; readonly opens: 'cut-list' | 'nothing'; readonly job: string | undefined }

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

/** Above each job: how many findings it has, by severity, and how many parts and pieces its cut list will hold. */
export function lensesOf(analysis: Analysis): readonly Lens[] {
    return analysis.jobs.flatMap(({ job, results }): Lens[] => {
        const { block } = job;
        const own = analysis.findings.filter(({ at }) => at.uri === block.span.uri && block.span.start <= at.start && at.start < block.span.end);
        const shown = (['error', 'warning', 'info'] as const).flatMap(severity => {
            const count = own.filter(finding => finding.severity === severity).length;
            return count === 0 ? [] : [counted(count, severity)];
        });
        const pieces = results.parts.reduce((total, part) => total + part.count, 0);
        const name = block.name?.value;
        return [
            { at: block.head, title: shown.length > 0 ? shown.join(', ') : 'no findings', opens: 'nothing', job: name },
            ...(pieces > 0 ? [{ at: block.head, title: `cut list: ${counted(results.parts.length, 'part')}, ${counted(pieces, 'piece')}`, opens: 'cut-list', job: name } as const] : []),
        ];
    });
}
