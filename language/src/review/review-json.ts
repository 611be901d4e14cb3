import * as z from 'zod/mini';
import type { ReviewReport } from './review-report.js';

const severity = z.enum(['error', 'warning', 'info', 'hint']);
const index = z.int().check(z.nonnegative());
const figure = z.object({ path: z.string(), title: z.string(), value: z.string(), how: z.string(), from: z.array(z.string()), source: z.optional(z.string()), isToSign: z.boolean() });
const report = z.object({
    job: z.object({ name: z.string(), title: z.string(), number: z.optional(z.string()), revision: z.optional(z.string()), drawnBy: z.optional(z.string()), file: z.string() }),
    fingerprint: z.optional(z.string().check(z.regex(/^[0-9a-f]{32}$/))), day: z.optional(z.string()),
    counts: z.object({ error: index, warning: index, info: index, hint: index }),
    findings: z.array(z.object({
        severity, rule: z.string(), title: z.string(), message: z.string(), place: z.string(), measured: z.optional(z.string()), required: z.optional(z.string()),
        source: z.optional(z.string()), sourceSays: z.optional(z.string()), isFromMemory: z.optional(z.literal(true)), usualSeverity: z.optional(severity), isNew: z.optional(z.literal(true)),
    })),
    waivers: z.array(z.object({
        rule: z.string(), on: z.optional(z.string()), because: z.string(), by: z.string(), until: z.string(), standing: z.enum(['in force', 'over', 'accepts nothing']), place: z.string(), accepts: z.array(z.string()),
    })),
    glance: z.array(figure), figures: z.array(z.object({ title: z.string(), figures: z.array(figure), written: z.array(z.string()) })),
    changes: z.optional(z.object({ since: z.string(), isNewJob: z.boolean(), groups: z.array(z.object({ title: z.string(), rows: z.array(z.object({ what: z.string(), how: z.string(), detail: z.string(), place: z.optional(z.string()) })) })) })),
    notChecked: z.object({ bySet: z.array(z.object({ title: z.string(), items: z.array(z.string()) })), notRun: z.array(z.string()) }),
    sources: z.object({
        ruleSets: z.array(z.object({ title: z.string(), scope: z.string(), isOfSettings: z.boolean(), documents: z.array(z.object({ title: z.string(), edition: z.string(), scope: z.string() })), clauses: index, clausesFromMemory: index })),
        cited: z.array(z.object({ kind: z.enum(['geometry', 'practice', 'manual', 'catalogue', 'house', 'standard']), source: z.string(), says: z.string(), isFromMemory: z.boolean(), usedBy: z.array(z.string()) })),
        manuals: z.array(z.string()), catalogues: z.array(z.string()),
    }),
    signOffs: z.array(z.object({ revision: z.string(), by: z.string(), date: z.string(), fingerprint: z.string(), place: z.string(), standing: z.enum(['matches', 'changed since', 'another revision', 'cannot be told']) })),
    cautions: z.array(z.string()),
});
const reviewSchema = z.object({ format: z.literal('hotroom-review'), version: z.literal(1), reports: z.array(report) });

/** Review reports as data; within a version members are only added. */
export type ReviewExport = z.infer<typeof reviewSchema>;
/** JSON Schema (draft 2020-12) of exported reports. */
export const reviewJsonSchema = (): object => z.toJSONSchema(reviewSchema);

/** Places become the words a reader finds them by; the rest stands as it is. */
export const reviewExport = (reports: readonly ReviewReport[]): ReviewExport =>
    ({ format: 'hotroom-review', version: 1, reports: reports.map(one => withPlacesInWords(one) as ReviewExport['reports'][number]) });

function withPlacesInWords(value: unknown): unknown {
    if (Array.isArray(value)) return value.map(withPlacesInWords);
    if (typeof value !== 'object' || value === null) return value;
    if ('at' in value && 'text' in value) return value.text;
    return Object.fromEntries(Object.entries(value).map(([key, member]) => [key, withPlacesInWords(member)]));
}
