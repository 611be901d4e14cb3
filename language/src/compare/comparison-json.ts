import * as z from 'zod/mini';
import { changeWords, consequences, whats } from './change.js';
import { hasChanged, nameOfJob, placeOfRow, type ComparedJob } from './compare-jobs.js';
import type { ComparedSides } from './comparison-report.js';

const sideSchema = z.object({ key: z.string(), value: z.unknown(), place: z.optional(z.string()) });
const jobSideSchema = z.object({ file: z.string(), name: z.string() });
const comparisonSchema = z.object({
    format: z.literal('hotroom-comparison'), version: z.literal(1), before: z.string(), after: z.string(),
    jobs: z.array(z.object({
        is: z.enum(['same', 'changed', 'added', 'gone']), before: z.optional(jobSideSchema), after: z.optional(jobSideSchema),
        changes: z.array(z.object({
            consequence: z.enum(consequences), what: z.enum(whats), in: z.optional(z.string()), says: z.array(z.enum(changeWords)),
            from: z.optional(sideSchema), to: z.optional(sideSchema),
        })),
    })),
});

/** A comparison as data; the values are rows of exported models. Within a version members are only added. */
export type ComparisonExport = z.infer<typeof comparisonSchema>;

/** JSON Schema (draft 2020-12) of exported comparisons. */
export const comparisonJsonSchema = (): object => z.toJSONSchema(comparisonSchema);
export const readComparison = (value: unknown): ComparisonExport => comparisonSchema.parse(value);

export function comparisonExport(jobs: readonly ComparedJob[], sides: ComparedSides): ComparisonExport {
    return { format: 'hotroom-comparison', version: 1, before: sides.before, after: sides.after, jobs: jobs.map(exportJob) };
}

function exportJob(job: ComparedJob): ComparisonExport['jobs'][number] {
    const { before, after, changes } = job;
    return {
        is: !before ? 'added' : !after ? 'gone' : hasChanged(job) ? 'changed' : 'same',
        ...(before && { before: { file: before.file, name: nameOfJob(before) } }), ...(after && { after: { file: after.file, name: nameOfJob(after) } }),
        changes: changes.map(change => {
            const { consequence, what, says, from, to } = change;
            const [old, now] = [from && before && placeOfRow(change, 'from', before), to && after && placeOfRow(change, 'to', after)];
            return {
                consequence, what, ...(change.in !== undefined && { in: change.in }), says: [...says],
                ...(from && { from: { key: from.key, value: from.value, ...(old !== undefined && { place: old }) } }), ...(to && { to: { key: to.key, value: to.value, ...(now !== undefined && { place: now }) } }),
            };
        }),
    };
}
