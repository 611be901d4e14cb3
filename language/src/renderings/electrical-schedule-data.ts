import * as z from 'zod/mini';
import { toConfirm } from '../engines/electrical/index.js';
import { notCheckedBy, zoneScopeLine } from '../rule-sets/index.js';
import { cautions } from './cautions.js';
import { toCsv, type CsvField } from './csv.js';
import { showInputs } from './electrical-schedule.js';
import { jobTrace, traceFields, traceHeader } from './job-trace.js';
import { isReadWhole, jobName, type ScheduledJob } from './rendered-job.js';
import { inWallWords } from './zone-words.js';

const count = z.int().check(z.nonnegative());
const lineSchema = z.object({
    section: z.enum(['supply', 'manual', 'run', 'existing', 'figure', 'lacks', 'unchecked', 'caution']), key: z.optional(z.string()), label: z.string(), text: z.string(),
    value: z.optional(z.number()), unit: z.optional(z.string()), formula: z.optional(z.string()), inputs: z.optional(z.array(z.object({ name: z.string(), text: z.string() }))),
    source: z.string(), note: z.optional(z.string()),
});
const scheduleSchema = z.object({
    format: z.literal('hotroom-electrical-schedule'),
    version: z.literal(1),
    confirm: z.string(),
    jobs: z.array(z.object({
        name: z.string(), title: z.optional(z.string()), number: z.optional(z.string()), revision: z.optional(z.string()), isWhole: z.boolean(),
        circuits: z.array(z.object({ heater: z.string(), circuit: z.optional(z.string()), family: z.enum(['us', 'iec']), lines: z.array(lineSchema) })),
        zones: z.optional(z.object({
            scope: z.string(), zones: z.array(z.object({ zone: z.int(), text: z.string() })),
            equipment: z.array(z.object({ name: z.string(), zones: z.array(z.int()), ratingC: z.optional(z.number()), waterDigit: z.optional(z.number()) })),
        })),
        findings: z.object({ error: count, warning: count, info: count, hint: count }),
        ruleSets: z.array(z.object({ id: z.string(), title: z.string(), documents: z.array(z.object({ title: z.string(), edition: z.string() })) })),
        notChecked: z.array(z.string()),
    })),
    cautions: z.array(z.string()),
});

/** Electrical schedules as data. Within a version members are only added. */
export type ElectricalScheduleExport = z.infer<typeof scheduleSchema>;

/** Reads an exported schedule back; the answer says what is wrong with it when it is none. */
export function readElectricalSchedule(text: string): { readonly ok: true; readonly schedule: ElectricalScheduleExport } | { readonly ok: false; readonly why: string } {
    let value: unknown;
    try { value = JSON.parse(text); } catch { return { ok: false, why: 'This is not JSON.' }; }
    const parsed = scheduleSchema.safeParse(value);
    if (parsed.success) return { ok: true, schedule: parsed.data };
    return { ok: false, why: parsed.error.issues.slice(0, 3).map(({ path, message }) => `${path.join('.')}: ${message}`).join('; ') };
}

export const electricalScheduleExport = (jobs: readonly ScheduledJob[]): ElectricalScheduleExport =>
    ({ format: 'hotroom-electrical-schedule', version: 1, confirm: toConfirm, jobs: jobs.map(exportJob), cautions: [...cautions] });

function exportJob({ job, results: { circuits, zones }, findings, ruleSets }: ScheduledJob): ElectricalScheduleExport['jobs'][number] {
    const { number, revision } = job.block.values;
    const of = (severity: string): number => findings.filter(finding => finding.severity === severity).length;
    return {
        name: jobName(job), ...(job.block.title && { title: job.block.title.value }), ...(number && { number: number.value }), ...(revision && { revision: revision.value }), isWhole: isReadWhole(job),
        circuits: circuits.map(({ heater, block, family, schedule }) => ({
            heater: heater.name, ...(block?.name && { circuit: block.name.value }), family,
            lines: schedule.map(({ section, key, label, value, figure, formula, inputs, source, note }) => ({
                section, ...(key !== undefined && { key }), label, text: value, ...(figure && { value: figure.value, unit: figure.unit }), ...(formula !== undefined && { formula }),
                ...(inputs && { inputs: inputs.map(input => ({ ...input })) }), source, ...(note !== undefined && { note }),
            })),
        })),
        ...(zones && {
            zones: {
                scope: zoneScopeLine, zones: inWallWords(zones.solids, job.unit).map(({ zone, words }) => ({ zone, text: words })),
                equipment: zones.equipment.map(({ name, zones: stands, ratingC, waterDigit }) => ({ name, zones: [...stands], ...(ratingC !== undefined && { ratingC }), ...(waterDigit !== undefined && { waterDigit }) })),
            },
        }),
        findings: { error: of('error'), warning: of('warning'), info: of('info'), hint: of('hint') },
        ruleSets: ruleSets.map(({ id, title, documents }) => ({ id, title, documents: documents.map(document => ({ title: document.title, edition: document.edition })) })),
        notChecked: [...notCheckedBy(ruleSets)],
    };
}

const csvHeader = [...traceHeader, 'heater', 'circuit', 'family', 'section', 'key', 'label', 'text', 'value', 'unit', 'formula', 'inputs', 'source', 'note', 'confirm'] as const;

/** One record a line of the schedule; each says that it is for an electrician to confirm, so that a sheet cut in two still does. */
export function electricalScheduleCsv(jobs: readonly ScheduledJob[]): string {
    return toCsv(csvHeader, jobs.flatMap(analysis => analysis.results.circuits.flatMap(({ heater, block, family, schedule }) => schedule.map((line): CsvField[] => [
        ...traceFields(jobTrace(analysis)), heater.name, block?.name?.value, family, line.section, line.key, line.label, line.value, line.figure?.value, line.figure?.unit, line.formula,
        showInputs(line), line.source, line.note, toConfirm,
    ]))));
}
