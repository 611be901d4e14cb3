import { showCount } from '../renderings/show-figures.js';
import { cell, type Table, type TableColumn, type TablesDocument } from '../renderings/tables-document.js';
import { severities } from '../renderings/findings-text.js';
import type { FigureGroup } from './review-figures.js';
import type { ReviewReport } from './review-report.js';

/** What a report says of the job as a whole, in one sentence, without ever calling it approved. */
export function standingSentence({ counts, signOffs, job }: ReviewReport): string {
    const open = severities.filter(severity => counts[severity] > 0).map(severity => showCount(counts[severity], severity));
    const current = signOffs.filter(({ standing }) => standing === 'matches' || standing === 'changed since');
    const signed = job.revision === undefined ? 'It states no revision.' : current.length === 0 ? `Revision ${job.revision} is not signed.`
        : current.some(({ standing }) => standing === 'changed since') ? `Revision ${job.revision} changed after it was signed.` : `Revision ${job.revision} is signed, and unchanged since.`;
    return `${open.length === 0 ? 'No finding is open; that is no approval.' : `Open: ${open.join(', ')}.`}${counts.error > 0 ? ' Do not cut before the errors are settled.' : ''} ${signed}`;
}

const column = (id: string, label: string): TableColumn => ({ id, label, align: 'start' });
const prose = (id: string, label: string): TableColumn => ({ id, label, align: 'start', isProse: true });
function table(id: string, caption: string, columns: readonly TableColumn[], rows: readonly (readonly string[])[]): Table[] {
    return rows.length === 0 ? [] : [{ id, caption, columns, rows: rows.map(row => ({ cells: row.map(text => cell(text)) })) }];
}

/** The report as tables, for a terminal and for Markdown. */
export function reviewTables(report: ReviewReport): TablesDocument {
    const { job, fingerprint, day, findings, waivers, glance, figures, changes, notChecked, sources, signOffs } = report;
    return {
        title: `${job.title}: review`, ...(job.revision !== undefined && { revision: job.revision }),
        subtitle: [`Job ${job.name}`, ...(job.number === undefined ? [] : [`number ${job.number}`]), ...(job.drawnBy === undefined ? [] : [`drawn by ${job.drawnBy}`]), job.file, ...(day === undefined ? [] : [`made ${day}`])].join(', '),
        cautions: report.cautions, csv: [],
        notes: [
            standingSentence(report), ...(fingerprint === undefined ? ['Part of the job cannot be read, so it has no fingerprint.'] : [`Fingerprint of the model: ${fingerprint}.`]),
            ...notChecked.notRun, ...notChecked.bySet.map(({ title, items }) => `Not checked of ${title}: ${items.join('; ')}.`),
            ...sources.manuals.map(manual => `Heater manual used, ${manual}. The manual that comes with the heater goes before it.`), ...sources.catalogues.map(catalogue => `Catalogue used: ${catalogue}`),
        ],
        tables: [
            ...table('findings', 'Findings, the gravest first', [column('severity', 'Severity'), column('rule', 'Finding'), column('where', 'Where'), column('measured', 'Measured'), column('required', 'Required'), prose('source', 'Source'), prose('message', 'Says')],
                findings.map(({ severity, rule, place, measured = '', required = '', source = '', isFromMemory, message, isNew }) => [`${severity}${isNew ? ', new' : ''}`, rule, place.text, measured, required, `${source}${isFromMemory ? ' (figure from memory of the document)' : ''}`, message])),
            ...table('waivers', 'Accepted by waiver', [column('rule', 'Finding'), column('on', 'On'), column('by', 'By'), column('until', 'Until'), column('standing', 'Standing'), column('where', 'Where'), prose('because', 'Because'), prose('accepts', 'Accepts')],
                waivers.map(({ rule, on = '', by, until, standing, place, because, accepts }) => [rule, on, by, until, standing, place.text, because, accepts.join(' ')])),
            ...(changes ? [
                ...(changes.isNewJob ? table('changes', `Changes since ${changes.since}`, [column('what', 'What')], [['This job is new.']]) : []),
                ...changes.groups.flatMap(({ title, rows }, i) => table(`changes-${i + 1}`, `Changes since ${changes.since}: ${title.toLowerCase()}`, [column('what', 'What'), column('how', 'How'), column('where', 'Where'), prose('detail', 'Detail')], rows.map(({ what, how, detail, place = '' }) => [what, how, place, detail]))),
            ] : []),
            ...table('glance', 'At a glance', [column('figure', 'Figure'), column('value', 'Value')], glance.map(({ title, value }) => [title, value])),
            ...figures.flatMap(figureTable),
            ...table('rule-sets', 'Rule sets and editions', [column('document', 'Document'), column('edition', 'Edition'), prose('scope', 'Covers')],
                sources.ruleSets.flatMap(({ title, documents, clauses, clausesFromMemory, isOfSettings }) => [...(documents.length === 0 ? [[title, '', memoryOf(clauses, clausesFromMemory)]] : []), ...documents.map(({ title: name, edition, scope }) => [`${title}: ${name}`, edition, `${scope} ${memoryOf(clauses, clausesFromMemory)}${isOfSettings ? ' Named by the settings of the project.' : ''}`])])),
            ...table('sources', 'Sources cited', [column('source', 'Source'), column('memory', 'Figure from memory'), prose('says', 'Says'), prose('used', 'Used by')], sources.cited.map(({ source, isFromMemory, says, usedBy }) => [source, isFromMemory ? 'yes' : '', says, usedBy.join(', ')])),
            ...table('sign-offs', 'Sign-offs', [column('revision', 'Revision'), column('by', 'By'), column('date', 'Date'), column('fingerprint', 'Fingerprint'), column('standing', 'Standing')], signOffs.map(({ revision, by, date, fingerprint: own, standing }) => [revision, by === '' ? 'nobody' : by, date, own, standing])),
        ],
    };
}

export const memoryOf = (clauses: number, fromMemory: number): string => fromMemory === 0 ? '' : `${fromMemory} of its ${showCount(clauses, 'figure')} ${fromMemory === 1 ? 'was' : 'were'} written down from memory and still ${fromMemory === 1 ? 'has' : 'have'} to be compared with a copy.`;

function figureTable({ title, figures, written }: FigureGroup, index: number): Table[] {
    const rows = table(`figures-${index + 1}`, title, [column('sign', 'Sign'), column('figure', 'Figure'), column('value', 'Value'), column('from', 'From'), prose('how', 'How'), prose('source', 'Source')],
        figures.map(({ isToSign, title: name, value, from, how, source = '' }) => [isToSign ? '[ ]' : '', name, value, from.map(({ text }) => text).join(', '), how, source]));
    return rows.map(own => ({ ...own, footer: written.length > 0 ? [`Also written: ${written.join('; ')}.`] : [] }));
}
