import type { Span } from '../core/span.js';
import type { Part } from '../engines/parts/part.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import { cautions } from './cautions.js';
import { cutListGroups, type CutListGroup } from './cut-list.js';
import { cutListCsv, cutListTables } from './cut-list-tables.js';
import { documentNotes } from './document-notes.js';
import { jobTrace } from './job-trace.js';
import { panelSchedule, panelScheduleCsv, panelTables } from './panel-schedule.js';
import { sourceOfPart } from './part-source.js';
import { jobName, type RenderedJob } from './rendered-job.js';
import { scaleOf, showCount } from './show-figures.js';
import { stockOffers } from './stock-offers.js';
import { stockPlanCsv, stockPlanTables } from './stock-plan-tables.js';
import type { PlannedStock } from './stock-tasks.js';
import type { TablesDocument } from './tables-document.js';

export interface CutListOptions {
    /** Catalogues of the job's own file and of those it uses, for the notes. */
    readonly catalogues?: readonly Block<'catalogue'>[];
    readonly showPlace?: (span: Span) => string;
}

/**
 * Cut list and panel schedule of one job, with its stock plan when `planned` is given: tables, notes, cautions, and the same as files.
 * @param planned what `planTasks` made of `stockTasks`; without it the document holds the list alone
 */
export function cutListDocument(analysis: RenderedJob, planned?: readonly PlannedStock[], options: CutListOptions = {}): TablesDocument {
    const { job } = analysis;
    const groups = jobGroups(job, analysis.results.parts);
    const unit = scaleOf(analysis);
    const listOptions = { unit, offers: stockOffers(job), ...(options.showPlace && { showPlace: options.showPlace }) };
    const name = jobName(job);
    const revision = job.block.values.revision?.value;
    const number = job.block.values.number?.value;
    const file = fileStem(name);
    const trace = jobTrace(analysis);
    const panels = panelSchedule(analysis);
    return {
        title: `${job.block.title?.value ?? name}: cut list${planned ? ' and stock plan' : ''}`,
        subtitle: [`Job ${name}`, ...(number === undefined ? [] : [`number ${number}`]), ...(trace.errors > 0 ? [`stands with ${showCount(trace.errors, 'error')}: do not cut`] : [])].join(', '),
        ...(revision !== undefined && { revision }),
        tables: [...cutListTables(groups, listOptions), ...(planned ? stockPlanTables(planned, unit) : []), ...panelTables(analysis)],
        notes: documentNotes(analysis, options.catalogues),
        cautions,
        csv: [
            ...(groups.length === 0 ? [] : [
                { fileName: `${file}-cut-list.csv`, text: cutListCsv([{ trace, groups, options: listOptions }]) },
                ...(planned ? [{ fileName: `${file}-stock-plan.csv`, text: stockPlanCsv([{ trace, planned, unit }]) }] : []),
            ]),
            ...(panels.length === 0 ? [] : [{ fileName: `${file}-panels.csv`, text: panelScheduleCsv([{ trace, panels, unit }]) }]),
        ],
    };
}

/** The parts of a job as groups of lines that lead to their blocks. */
export const jobGroups = (job: Job, parts: readonly Part[]): readonly CutListGroup[] => cutListGroups(parts.map(part => {
    const at = sourceOfPart(part, job);
    return { part, ...(at && { at }) };
}));

/** A file name that every system takes, whatever the job is called. */
const fileStem = (name: string): string => name.replaceAll(/[^\p{L}\p{N}_-]+/gu, '-').slice(0, 60) || 'job';
