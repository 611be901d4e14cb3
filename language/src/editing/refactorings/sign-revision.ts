import type { Analysis } from '../../analyze.js';
import type { Edit } from '../../core/finding.js';
import { showCount } from '../../renderings/show-figures.js';
import { sameFingerprint } from '../../assembly/model-fingerprint.js';
import { showDate, type CalendarDate } from '../../vocabulary/values.js';
import type { Refactoring } from './refactoring.js';

/**
 * A sign-off for the revision a job states, offered on the head of the job, on its revision and in a sign-off of it. The name is left empty on purpose: a
 * sign-off without one is a mistake of its own until somebody who looked at the job writes theirs. A job that stands with errors is refused.
 * @param today the day it would be signed
 */
export function signRevision({ jobs }: Analysis, uri: string, start: number, end: number, today: CalendarDate): readonly Refactoring[] {
    return jobs.flatMap(({ job, results, findings }): Refactoring[] => {
        const { block, signOffs } = job;
        const { revision } = block.values;
        const touches = (span: { readonly uri: string; readonly start: number; readonly end: number }): boolean => span.uri === uri && span.start <= end && start <= span.end;
        const own = signOffs.filter(({ values }) => values.revision?.value === revision?.value);
        if (!revision || !(touches(block.head) || touches(revision.fact) || own.some(({ span }) => touches(span)))) return [];
        const stale = own.find(({ values }) => values.fingerprint && values.by && values.date && !sameFingerprint(values.fingerprint.value, results.fingerprint));
        if (own.length > 0 && !stale) return [];
        const title = `Sign revision ${revision.value}${stale ? ' again' : ''}`;
        const errors = findings.filter(({ rule, severity }) => severity === 'error' && rule !== 'signed-revision-changed').length;
        if (errors > 0 || !job.isWhole) return [{ title, kind: 'rewrite', edits: [], refusal: job.isWhole ? `The job stands with ${showCount(errors, 'error')}. Settle them first.` : 'Part of the job cannot be read. Mend it first.' }];
        const day = showDate(today);
        const lines = ['sign_off {', `    revision     "${revision.value}"`, '    by           ""', `    date         ${day}`, `    fingerprint  "${results.fingerprint}"`, '}'].map(line => `\n    ${line}`).join('');
        const edits: readonly Edit[] = stale
            ? [[stale.values.by?.span, '""'], [stale.values.date?.span, day], [stale.values.fingerprint?.span, `"${results.fingerprint}"`]].flatMap(([span, newText]) => typeof span === 'object' && typeof newText === 'string' ? [{ span, newText }] : [])
            : [block.insertAt ? { span: block.insertAt, newText: lines } : { span: { ...block.span, start: block.span.end }, newText: ` {${lines}\n}` }];
        return [{ title, kind: 'rewrite', edits }];
    });
}
