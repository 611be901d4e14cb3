import type { Span } from '../core/span.js';
import { escapeMarkdown } from '../renderings/markdown.js';
import { printable } from '../renderings/printable.js';
import { hang } from '../renderings/report-text.js';
import { showCount } from '../renderings/show-figures.js';
import { consequences, type Change, type Consequence } from './change.js';
import { hasChanged, nameOfJob, placeOfJob, placeOfRow, spanOfRow, type ComparedJob, type SideJob } from './compare-jobs.js';
import { keyFigures } from './key-figures.js';
import { consequenceTitles, describeChange, type Description } from './describe-change.js';

/** What two sides are called: `main`, `HEAD`, `jobs`. */
export interface ComparedSides { readonly before: string; readonly after: string }

/** One row of a report. */
export interface ReportRow extends Description {
    readonly change: Change;
    /** Where it stands: on the later side, else on the earlier. */
    readonly place?: string;
    /** Both places as spans, to lead there; a row without a text of its own leads to its job. */
    readonly spans: { readonly before?: Span; readonly after?: Span };
}

/** The changes of a job that is on both sides, by what they ask for. Facts of a block that came or went are told by its own row. */
export function reportRows({ before, after, changes }: ComparedJob): readonly { readonly consequence: Consequence; readonly rows: readonly ReportRow[] }[] {
    const sourceOf = (what: Change['what']): string => what === 'catalogue' ? 'catalogue' : 'job';
    const whole = new Set(changes.flatMap(({ what, from, to }) => (what === 'given' || what === 'catalogue') && (!from || !to) && isBlock(to ?? from) ? [`${sourceOf(what)} ${(to ?? from)?.key ?? ''}`] : []));
    const isToldByBlock = ({ what, from, to }: Change): boolean => {
        const words = (to ?? from)?.key.split('.') ?? [];
        return (what === 'given' || what === 'computed' || what === 'catalogue') && (!from || !to) && words.some((_, i) => i > 0 && whole.has(`${sourceOf(what)} ${words.slice(0, i).join('.')}`));
    };
    const rows = changes.filter(change => !isToldByBlock(change)).map(change => rowOf(change, before, after));
    return consequences.flatMap(consequence => {
        const own = rows.filter(({ change }) => change.consequence === consequence);
        return own.length > 0 ? [{ consequence, rows: own }] : [];
    });
}
const isBlock = (side: { readonly value: unknown } | undefined): boolean => typeof side?.value === 'object' && side.value !== null && 'kind' in side.value && side.value.kind === 'block';

function rowOf(change: Change, before: SideJob | undefined, after: SideJob | undefined): ReportRow {
    const on = (side: 'from' | 'to'): SideJob | undefined => side === 'from' ? before : after;
    const place = (change.to && after && placeOfRow(change, 'to', after)) ?? (change.from && before && placeOfRow(change, 'from', before));
    const [was, is] = [change.from && before && (spanOfRow(change, 'from', before) ?? placeOfJob(before)), change.to && after && (spanOfRow(change, 'to', after) ?? placeOfJob(after))];
    return {
        ...describeChange(change, {
            unit: (after ?? before)?.model.own().job.unit ?? 'in',
            figureWords: (side, path) => { const found = on(side)?.model.own().facts.get(path); return found?.kind === 'value' && found.fact.value.kind === 'words' ? found.fact.value.words : undefined; },
            message: (side, key) => on(side)?.model.messageOf(key),
        }),
        change, ...(place !== undefined && { place }), spans: { ...(was && { before: was }), ...(is && { after: is }) },
    };
}

export const titleOfPair = ({ before, after }: ComparedJob): string => {
    const [job, old] = [after ?? before, before];
    if (!job) return '';
    const changed = after && old ? [...(nameOfJob(old) === nameOfJob(job) ? [] : [nameOfJob(old)]), ...(old.file === job.file ? [] : [`in ${old.file}`])] : [];
    const was = changed.length > 0 ? `, was ${changed.join(' ')}` : '';
    return `${nameOfJob(job)} in ${job.file}${was}`;
};

export function summaryOf(jobs: readonly ComparedJob[]): string {
    const count = (test: (job: ComparedJob) => boolean): number => jobs.filter(test).length;
    const [added, gone, changed, same] = [count(job => !job.before), count(job => !job.after), count(job => job.before !== undefined && job.after !== undefined && hasChanged(job)), count(job => !hasChanged(job))];
    const words = [[changed, 'changed'], [added, 'added'], [gone, 'gone'], [same, 'without a change of meaning']] as const;
    return `${showCount(jobs.length, 'job')}: ${words.flatMap(([number, what]) => number > 0 ? [`${number} ${what}`] : []).join(', ') || 'nothing to compare'}.`;
}

/** For a terminal. */
export function comparisonText(jobs: readonly ComparedJob[], sides: ComparedSides, width: number): string {
    const lines = [printable(`${sides.before} → ${sides.after}`), ''];
    for (const job of jobs.filter(hasChanged)) {
        lines.push(printable(titleOfPair(job)));
        if (!job.before) lines.push('  This job is new.');
        if (!job.after) lines.push('  This job is gone.');
        for (const figure of changedFigures(job)) lines.push(...hang(figure, width - 2, '').map(line => `  ${line}`));
        for (const { consequence, rows } of job.before && job.after ? reportRows(job) : []) {
            lines.push('', `  ${consequenceTitles[consequence]}`);
            for (const row of rows) lines.push(...hang(rowText(row), width - 4, '- ').map(line => `    ${line}`));
        }
        lines.push('');
    }
    return [...lines, summaryOf(jobs), ''].join('\n');
}

/** `pieces to cut: 81 → 79 (-2)`. */
const changedFigures = ({ before, after }: ComparedJob): readonly string[] => (before && after ? keyFigures(before, after) : []).filter(({ isChanged }) => isChanged)
    .map(figure => `${figure.title}: ${figure.before ?? 'none'} → ${figure.after ?? 'none'}${['changed', 'added', 'gone'].includes(figure.difference) ? '' : ` (${figure.difference})`}`);

const rowText = ({ subject, says, detail, place }: ReportRow): string => `${subject}: ${says}${detail === '' ? '' : `. ${detail}`}${place === undefined ? '' : ` (${place})`}`;

/** For a pull request. */
export function comparisonMarkdown(jobs: readonly ComparedJob[], sides: ComparedSides): string {
    const lines = [`# ${escapeMarkdown(`${sides.before} → ${sides.after}`)}`, '', escapeMarkdown(summaryOf(jobs)), ''];
    for (const job of jobs.filter(hasChanged)) {
        lines.push(`## ${escapeMarkdown(titleOfPair(job))}`, '');
        if (!job.before) lines.push('This job is new.', '');
        if (!job.after) lines.push('This job is gone.', '');
        const figures = changedFigures(job);
        if (figures.length > 0) lines.push(...figures.map(figure => `- ${escapeMarkdown(figure)}`), '');
        for (const { consequence, rows } of job.before && job.after ? reportRows(job) : []) {
            lines.push(`### ${consequenceTitles[consequence]}`, '', '| What | How | Detail | Where |', '| --- | --- | --- | --- |');
            for (const { subject, says, detail, place = '' } of rows) lines.push(`| ${[subject, says, detail, place].map(escapeMarkdown).join(' | ')} |`);
            lines.push('');
        }
    }
    return lines.join('\n');
}
