import * as z from 'zod/mini';
import type { Citation } from '../core/citation.js';
import { showCitation } from '../core/citation.js';
import type { Figure, ReportedFinding } from '../core/finding.js';
import { showLength } from '../core/show.js';
import { spanContains, type Span } from '../core/span.js';
import type { Job } from '../model/job.js';
import { countSeverities, type Places } from './findings-text.js';
import { jobName } from './rendered-job.js';
import { severityChanges, waiversInForce } from './standing.js';

const index = z.int().check(z.nonnegative());
const positionSchema = z.object({ line: z.int().check(z.positive()), column: z.int().check(z.positive()), offset: index });
const placeSchema = z.object({ file: z.string(), start: positionSchema, end: positionSchema });
const severitySchema = z.enum(['error', 'warning', 'info', 'hint']);
const chosenSchema = z.enum(['error', 'warning', 'info', 'hint', 'off']);
const figureSchema = z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('length'), ticks: z.int(), text: z.string() }),
    z.object({ kind: z.literal('amount'), value: z.number(), unit: z.string() }),
    z.object({ kind: z.literal('words'), words: z.string() }),
]);
const sourceSchema = z.object({
    kind: z.enum(['geometry', 'practice', 'manual', 'catalogue', 'house', 'standard']), text: z.string(),
    document: z.optional(z.string()), edition: z.optional(z.string()), clause: z.optional(z.string()), fromMemory: z.optional(z.literal(true)),
});

const findingsSchema = z.object({
    format: z.literal('hotroom-findings'),
    version: z.literal(1),
    files: z.array(z.string()),
    counts: z.object({ error: index, warning: index, info: index, hint: index }),
    findings: z.array(z.object({
        rule: z.string(), severity: severitySchema, message: z.string(), at: placeSchema, job: z.optional(z.string()),
        source: z.optional(sourceSchema), measured: z.optional(figureSchema), required: z.optional(figureSchema), subject: z.optional(z.string()),
        waived: z.optional(z.object({ because: z.string(), by: z.string(), until: z.string(), at: placeSchema })),
        changed: z.optional(z.object({ from: severitySchema, to: chosenSchema, at: placeSchema })),
        related: z.array(z.object({ at: placeSchema, message: z.string() })),
        fixes: z.array(z.object({ title: z.string(), safety: z.enum(['safe', 'review']), edits: z.array(z.object({ at: placeSchema, newText: z.string() })) })),
    })),
    waivers: z.optional(z.array(z.object({ rule: z.string(), because: z.string(), by: z.string(), until: z.string(), at: placeSchema, findings: index }))),
    changedSeverities: z.optional(z.array(z.object({ rule: z.string(), from: severitySchema, to: chosenSchema, at: placeSchema, findings: index }))),
    settings: z.optional(z.array(z.string())),
});

/** Findings as data. Within a version members are only added. Lines and UTF-16 columns count from 1, offsets from 0; the end is behind the last character. */
export type FindingsExport = z.infer<typeof findingsSchema>;

/** JSON Schema (draft 2020-12) of exported findings. */
export const findingsJsonSchema = (): object => z.toJSONSchema(findingsSchema);

/**
 * @param files names of the files that were checked, findings or not
 * @param under names of the settings files that hold for them, what those turned off, and the jobs the findings may be of
 */
export function findingsExport(findings: readonly ReportedFinding[], files: readonly string[], places: Places, under: { readonly settings?: readonly string[]; readonly leftOut?: readonly ReportedFinding[]; readonly jobs?: readonly Job[] } = {}): FindingsExport {
    const place = (span: Span): z.infer<typeof placeSchema> => ({ file: places.sources.nameOf(span.uri), start: position(span, 'start'), end: position(span, 'end') });
    const position = (span: Span, which: 'start' | 'end'): z.infer<typeof positionSchema> => {
        const { line, character } = places[which](span) ?? { line: 0, character: 0 };
        return { line: line + 1, column: character + 1, offset: span[which] };
    };
    return {
        format: 'hotroom-findings', version: 1, files: [...files], counts: { ...countSeverities(findings) },
        findings: findings.map(({ rule, severity, message, at, citation, measured, required, subject, related = [], fixes = [], waived, changed }) => ({
            rule, severity, message, at: place(at), ...jobAt(at, under.jobs ?? []),
            ...(citation && { source: exportCitation(citation) }), ...(measured && { measured: exportFigure(measured) }), ...(required && { required: exportFigure(required) }),
            ...(subject !== undefined && { subject }),
            ...(waived && { waived: { because: waived.because, by: waived.by, until: waived.until, at: place(waived.at) } }),
            ...(changed && { changed: { from: changed.from, to: changed.to, at: place(changed.at) } }),
            related: related.map(one => ({ at: place(one.at), message: one.message })),
            fixes: fixes.map(({ title, safety, edits }) => ({ title, safety, edits: edits.map(({ span, newText }) => ({ at: place(span), newText })) })),
        })),
        waivers: waiversInForce(findings).map(({ rule, because, by, until, at, count }) => ({ rule, because, by, until, at: place(at), findings: count })),
        changedSeverities: severityChanges([...findings, ...under.leftOut ?? []]).map(({ rule, from, to, at, count }) => ({ rule, from, to, at: place(at), findings: count })),
        settings: [...under.settings ?? []],
    };
}

/** The job or variant a place lies in, the innermost. */
function jobAt(at: Span, jobs: readonly Job[]): { readonly job?: string } {
    const size = ({ block: { span } }: Job): number => span.end - span.start;
    const [own] = jobs.filter(({ block }) => spanContains(block.span, at)).sort((a, b) => size(a) - size(b));
    return own ? { job: jobName(own) } : {};
}

function exportFigure(figure: Figure): z.infer<typeof figureSchema> {
    switch (figure.kind) {
        case 'length': return { kind: 'length', ticks: figure.length, text: showLength(figure.length) };
        case 'amount': return { kind: 'amount', value: figure.value, unit: figure.unit };
        case 'words': return { kind: 'words', words: figure.words };
    }
}

function exportCitation(citation: Citation): z.infer<typeof sourceSchema> {
    if (citation.kind !== 'standard') return { kind: citation.kind, text: citation.kind === 'practice' ? `${showCitation(citation)}: ${citation.text}` : citation.text };
    const { kind, text, document, edition, clause, fromMemory } = citation;
    return { kind, text, document, edition, clause, ...(fromMemory && { fromMemory }) };
}
