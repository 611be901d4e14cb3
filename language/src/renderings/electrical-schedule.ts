import type { AssembledCircuit } from '../assembly/circuits.js';
import { inWallWords } from './zone-words.js';
import { showList } from '../core/show.js';
import type { Span } from '../core/span.js';
import { toConfirm, type ScheduleLine, type ScheduleSection } from '../engines/electrical/index.js';
import type { Block } from '../model/block.js';
import { ruleById } from '../rules/index.js';
import { zoneScopeLine } from '../rule-sets/index.js';
import { cautions } from './cautions.js';
import { sourceNotes, stateNotes } from './document-notes.js';
import { jobTrace } from './job-trace.js';
import { jobName, type ScheduledJob } from './rendered-job.js';
import { showCount } from './show-figures.js';
import { cell, footerLines, type Table, type TableColumn, type TablesDocument } from './tables-document.js';

export interface ScheduleOptions {
    /** Catalogues of the job's own file and of those it uses, for the notes. */
    readonly catalogues?: readonly Block<'catalogue'>[];
}

/**
 * The electrical schedule of one job: for each heater what is given, every figure with its formula, inputs and source, what is missing and what nobody looked at; the
 * zones where the rules have them; and what was found wrong. It is for an electrician to confirm, and says so below every table.
 */
export function electricalScheduleDocument(analysis: ScheduledJob, { catalogues = [] }: ScheduleOptions = {}): TablesDocument {
    const { job, results: { circuits } } = analysis;
    const { number, revision } = job.block.values;
    const { errors } = jobTrace(analysis);
    return {
        title: `${job.block.title?.value ?? jobName(job)}: electrical schedule`,
        subtitle: [`Job ${jobName(job)}`, ...(number ? [`number ${number.value}`] : []), ...(errors > 0 ? [`stands with ${showCount(errors, 'error')}`] : [])].join(', '),
        ...(revision && { revision: revision.value }),
        tables: [...circuits.flatMap(circuitTables), ...zoneTables(analysis), ...findingTables(analysis)],
        notes: [
            ...stateNotes(analysis),
            ...(circuits.some(({ family }) => family === 'us') ? ['Circuits are calculated by the NEC; ampacities are those of copper.'] : []),
            ...(circuits.some(({ result }) => result.steps.some(({ citation }) => citation.kind === 'standard' && citation.fromMemory))
                ? ['A source marked from memory was written down without a copy at hand: compare the figure with the document before relying on it.'] : []),
            ...sourceNotes(analysis, catalogues),
        ],
        cautions: [toConfirm, ...cautions.filter(caution => /^(Worked|Heat|Electricity|Fire)/.test(caution))],
        csv: [], everyPage: toConfirm,
        whenEmpty: 'No circuit could be worked out: a heater with its power, and a supply, are needed.',
    };
}

/** `stove, 6 kW wall heater, circuit stove_feed`. */
export const circuitTitle = ({ heater, block }: AssembledCircuit): string =>
    [heater.name, ...(heater.model.title ? [heater.model.title.value] : []), block?.name ? `circuit ${block.name.value}` : 'without a circuit block'].join(', ');

const givenColumns: readonly TableColumn[] = [
    { id: 'what', label: 'Given', align: 'start' }, { id: 'value', label: 'Value', align: 'start' }, { id: 'source', label: 'Source', align: 'start' },
];
const figureColumns: readonly TableColumn[] = [
    { id: 'figure', label: 'Figure', align: 'start' }, { id: 'value', label: 'Value', align: 'end' }, { id: 'formula', label: 'Formula', align: 'start' }, { id: 'source', label: 'Source', align: 'start' },
    { id: 'inputs', label: 'With', align: 'start', isProse: true }, { id: 'note', label: 'Note', align: 'start', isProse: true },
];
const openColumns: readonly TableColumn[] = [{ id: 'what', label: 'State', align: 'start' }, { id: 'value', label: 'What', align: 'start' }];

export const showInputs = ({ inputs = [] }: Pick<ScheduleLine, 'inputs'>): string => inputs.map(({ name, text }) => `${name} = ${text}`).join('; ');

function circuitTables(circuit: AssembledCircuit): readonly Table[] {
    const at: Span = circuit.block?.head ?? circuit.heater.block.head;
    const lines = (...sections: readonly ScheduleSection[]): readonly ScheduleLine[] => circuit.schedule.filter(({ section }) => sections.includes(section));
    const id = (what: string): string => `${circuit.heater.name.replaceAll('_', '-')}-${what}`;
    const title = circuitTitle(circuit);
    const open = lines('lacks', 'unchecked');
    return [
        { id: id('given'), caption: `${title}: what is given`, columns: givenColumns, rows: lines('supply', 'manual', 'run', 'existing').map(line => ({ at, cells: [cell(line.label), cell(line.value), cell(line.source || 'this job')] })) },
        {
            id: id('figures'), caption: `${title}: figures`, columns: figureColumns,
            rows: lines('figure').map(line => ({ at, cells: [cell(line.label), cell(line.value, line.figure?.value), cell(line.formula ?? ''), cell(line.source), cell(showInputs(line)), cell(line.note ?? '')] })),
            ...(lines('figure').length === 0 && { footer: ['No figure could be worked out from what is given.'] }),
        },
        { id: id('open'), caption: `${title}: not given and not checked`, columns: openColumns, rows: open.map(line => ({ at, cells: [cell(line.label), cell(line.value)] })) },
    ];
}

/** The zones of the IEC rules as solids, and what stands in them. */
function zoneTables({ job, results: { zones } }: ScheduledJob): readonly Table[] {
    if (!zones) return [];
    const columns: readonly TableColumn[] = [{ id: 'what', label: 'Zone or equipment', align: 'start' }, { id: 'where', label: 'Where', align: 'start' }];
    const rows = [
        ...inWallWords(zones.solids, job.unit).map(({ zone, words }) => ({ cells: [cell(`Zone ${zone}`), cell(words)] })),
        ...zones.equipment.map(({ name, zones: stands, ratingC, waterDigit }) => ({
            cells: [cell(name), cell([stands.length === 0 ? 'outside the zones' : `zone ${showList(stands.map(String))}`, ...(ratingC === undefined ? [] : [`rated ${ratingC} °C`]), ...(waterDigit === undefined ? [] : [`water digit ${waterDigit}`])].join(', '))],
        })),
    ];
    return [{ id: 'zones', caption: 'Zones', columns, rows, footer: footerLines([zoneScopeLine], columns) }];
}

/** What stands open about the wiring, waived or not. */
function findingTables({ findings }: ScheduledJob): readonly Table[] {
    const electrical = findings.filter(({ rule }) => ruleById(rule)?.family === 'electrical');
    if (electrical.length === 0) return [];
    const columns: readonly TableColumn[] = [{ id: 'severity', label: 'Severity', align: 'start' }, { id: 'rule', label: 'Finding', align: 'start' }, { id: 'message', label: 'What', align: 'start', isProse: true }];
    return [{ id: 'findings', caption: 'Findings about the wiring', columns, rows: electrical.map(({ severity, rule, message, at }) => ({ at, cells: [cell(severity), cell(rule), cell(message)] })) }];
}
