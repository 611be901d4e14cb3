import type { Span } from '../core/span.js';
import { cautions } from '../renderings/cautions.js';
import { showCount } from '../renderings/show-figures.js';
import { cell, type Table, type TableCell, type TableColumn, type TableRow, type TablesDocument } from '../renderings/tables-document.js';
import { hasChanged, nameOfJob, type ComparedJob } from './compare-jobs.js';
import { comparisonMarkdown, reportRows, type ComparedSides, type ReportRow } from './comparison-report.js';
import { consequenceTitles } from './describe-change.js';
import { keyFigures, type KeyFigure } from './key-figures.js';

const columns: readonly TableColumn[] = [
    { id: 'what', label: 'What', align: 'start' },
    { id: 'how', label: 'How', align: 'start' },
    { id: 'before', label: 'Before', align: 'start', side: 'before' },
    { id: 'now', label: 'Now', align: 'start', side: 'now' },
];
const figureColumns: readonly TableColumn[] = [
    { id: 'figure', label: 'Figure', align: 'start' },
    { id: 'difference', label: 'Difference', align: 'start' },
    { id: 'before', label: 'Before', align: 'start', side: 'before' },
    { id: 'now', label: 'Now', align: 'start', side: 'now' },
];

/** A comparison as tables, each row leading to either side, and as Markdown for a pull request. */
export interface ComparisonDocument extends TablesDocument {
    readonly markdown: string;
}

/**
 * The jobs of two sides beside each other, grouped by what a change asks for, with the figures a reviewer looks at first.
 * @param sides what they are called: `the last commit`, `birch.hotroom as edited`
 */
export function comparisonDocument(jobs: readonly ComparedJob[], sides: ComparedSides): ComparisonDocument {
    const [only, another] = jobs;
    const changed = jobs.filter(hasChanged);
    const rows = changed.filter(({ before, after }) => before && after).flatMap(job => reportRows(job)).reduce((sum, group) => sum + group.rows.length, 0);
    const counted = [...(rows > 0 ? [showCount(rows, 'change')] : []), ...countOf(jobs, ({ before }) => !before, 'new'), ...countOf(jobs, ({ after }) => !after, 'gone')];
    return {
        title: `${only && !another ? titleOf(only) : showCount(jobs.length, 'job')}: what changed`,
        subtitle: `${sides.before} → ${sides.after}: ${counted.join(', ') || 'no change of meaning'}`,
        tables: jobs.flatMap((job, i) => tablesOf(job, i, another !== undefined)),
        notes: [
            ...changed.flatMap(job => job.before && job.after ? [] : [`Job ${nameOf(job)} is ${job.before ? 'gone' : 'new'}: there is nothing to compare it with.`]),
            ...(another && changed.length < jobs.length ? [`${showCount(jobs.length - changed.length, 'job')} mean${jobs.length - changed.length === 1 ? 's' : ''} the same on both sides.`] : []),
            'The wood is priced as it is cut; boards, saw cuts and offcuts are told by the stock plan of the cut list.',
        ],
        cautions, csv: [], markdown: comparisonMarkdown(jobs, sides),
    };
}

const countOf = (jobs: readonly ComparedJob[], test: (job: ComparedJob) => boolean, what: string): readonly string[] => {
    const count = jobs.filter(test).length;
    return count === 0 ? [] : [`${showCount(count, 'job')} ${what}`];
};
const nameOf = ({ before, after }: ComparedJob): string => { const job = after ?? before; return job ? nameOfJob(job) : ''; };
const titleOf = (job: ComparedJob): string => (job.after ?? job.before)?.model.model.job.title ?? nameOf(job);

function tablesOf(job: ComparedJob, index: number, isOneOfSeveral: boolean): readonly Table[] {
    const { before, after } = job;
    if (!before || !after || (isOneOfSeveral && !hasChanged(job))) return [];
    const [id, caption] = isOneOfSeveral ? [`job-${index + 1}-`, `${nameOf(job)}: `] : ['', ''];
    const place = (side: 'before' | 'after', span: Span | undefined): string | undefined => {
        const own = side === 'before' ? before : after;
        return span && (own.showPlaceInside ?? own.showPlace)(span);
    };
    return [
        { id: `${id}figures`, caption: `${caption}Figures`, columns: figureColumns, rows: changedFirst(keyFigures(before, after)).map(figure => figureRow(figure, place)) },
        ...reportRows(job).map(({ consequence, rows }): Table => ({
            id: `${id}${consequence}`, caption: `${caption}${consequenceTitles[consequence]}`, columns, rows: rows.map(row => changeRow(row, place)),
        })),
    ];
}

const changedFirst = (figures: readonly KeyFigure[]): readonly KeyFigure[] => [...figures.filter(({ isChanged }) => isChanged), ...figures.filter(({ isChanged }) => !isChanged)];

type ShowPlace = (side: 'before' | 'after', span: Span | undefined) => string | undefined;

const figureRow = ({ title, before, after, difference, places }: KeyFigure, place: ShowPlace): TableRow => ({
    cells: [cell(`${title.slice(0, 1).toUpperCase()}${title.slice(1)}`), cell(difference), placed(before, place('before', places.before)), placed(after, place('after', places.after))],
    ...(places.before && { before: places.before }), ...(places.after && { at: places.after }),
});

const changeRow = ({ subject, says, before, after, spans }: ReportRow, place: ShowPlace): TableRow => ({
    cells: [cell(subject), cell(says), placed(before, place('before', spans.before)), placed(after, place('after', spans.after))],
    ...(spans.before && { before: spans.before }), ...(spans.after && { at: spans.after }),
});

/** A side that has no such row says so with nothing. */
const placed = (text: string | undefined, place: string | undefined): TableCell => ({ text: text ?? '', ...(place !== undefined && { place }) });
