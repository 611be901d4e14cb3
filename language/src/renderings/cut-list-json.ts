import * as z from 'zod/mini';
import { isReadWhole, jobName, type RenderedJob } from './rendered-job.js';
import { walls } from '../core/geometry.js';
import type { Length } from '../core/length.js';
import { showLength } from '../core/show.js';
import type { Span } from '../core/span.js';
import { isMoulding, mouldingPractice } from '../engines/fittings/ceiling-moulding.js';
import type { PartPlace } from '../engines/parts/part.js';
import { notCheckedBy } from '../rule-sets/index.js';
import { cautions } from './cautions.js';
import { finishedLength, notchFace, notchFaceWidth, showEnds, type CutListLine } from './cut-list.js';
import { jobGroups } from './cut-list-document.js';
import { notOnList } from './not-on-list.js';
import { showCutOut } from './panel-cut-outs.js';
import { panelSchedule, showPanelPlace, type ScheduledPanel } from './panel-schedule.js';
import { measuredPlace, numberingRule, showPartPlace } from './part-place.js';
import { purposeOf, sawUnit, scaleOf, type Scale } from './show-figures.js';
import { boardCaution, numberBoards, planWarnings, sawStops, stopLetters, stopName, type NumberedBoard, type NumberedPlan } from './saw-stops.js';
import { showGap, showSlatGap, slatGaps, type SlatGap } from './slat-gaps.js';
import type { PlannedStock } from './stock-tasks.js';

const count = z.int().check(z.nonnegative());
const lengthSchema = z.object({ ticks: z.int(), text: z.string() });
const moneySchema = z.object({ minor: z.int(), currency: z.string() });
const placeSchema = z.object({ file: z.string(), start: count, end: count });

const wallSchema = z.enum(walls);
const faceSchema = z.enum(['lining', 'outside']);

const partSchema = z.object({
    mark: z.string(), part: z.string(), count: z.int().check(z.positive()),
    stock: z.optional(z.string()), nominal: z.optional(z.string()),
    section: z.object({ thickness: lengthSchema, width: lengthSchema }),
    length: lengthSchema,
    endsDegrees: z.object({ left: z.number(), right: z.number() }), ends: z.optional(z.string()),
    finishedLength: z.optional(lengthSchema), allowance: z.optional(lengthSchema),
    notches: z.array(z.object({
        side: z.enum(['top', 'bottom', 'front', 'back']), from: lengthSchema, length: lengthSchema, depth: lengthSchema, clears: z.string(),
        measuredFrom: z.optional(z.enum(['head', 'left end'])), face: z.optional(z.string()), faceWidth: z.optional(lengthSchema), toward: z.optional(wallSchema),
    })),
    place: z.optional(z.object({
        wall: wallSchema, measuredFrom: wallSchema, face: faceSchema, distances: z.array(lengthSchema), bottom: z.optional(lengthSchema), top: z.optional(lengthSchema), text: z.string(),
    })),
    cut: z.enum(['shop', 'site']), goesTo: z.string(), measure: z.optional(z.string()), at: z.optional(placeSchema),
});

const panelSchema = z.object({
    mark: z.string(), side: z.enum([...walls, 'ceiling']), kind: z.enum(['module', 'made_to_measure', 'door_section', 'window_section']),
    place: z.object({ measuredFrom: wallSchema, face: faceSchema, distance: lengthSchema, text: z.string() }),
    cover: lengthSchema, overall: lengthSchema, height: lengthSchema, thickness: lengthSchema, tongue: z.optional(z.string()), holds: z.array(z.string()), at: z.optional(placeSchema),
    cutOuts: z.optional(z.array(z.object({
        of: z.string(), what: z.enum(['opening', 'clear glass', 'frame']), width: lengthSchema, height: lengthSchema, isPart: z.boolean(),
        fromLeftEdge: lengthSchema, overFinishedFloor: lengthSchema, overLowerEdge: lengthSchema, text: z.string(),
    }))),
});

const boardSchema = z.object({
    number: z.optional(z.int().check(z.positive())), length: lengthSchema,
    stops: z.string().register(z.globalRegistry, { description: 'Name of the setting: boards of one name are cut alike. The letter of each stop stands with its cut.' }),
    cuts: z.array(z.object({ mark: z.string(), length: lengthSchema, stop: z.optional(z.string()) })),
    kerf: lengthSchema, trim: lengthSchema, offcut: lengthSchema, caution: z.optional(z.string()),
});

const stockPlanSchema = z.object({
    stock: z.optional(z.string()),
    whyNotPlanned: z.optional(z.string()),
    plan: z.optional(z.object({
        objective: z.enum(['price', 'length']), proof: z.union([z.literal('proven'), z.object({ gap: z.number() })]), method: z.string(),
        totalLength: lengthSchema, totalCost: z.optional(moneySchema), boards: z.array(boardSchema),
        stops: z.optional(z.array(z.object({ letter: z.string(), length: lengthSchema, pieces: count }))), warnings: z.optional(z.array(z.string())),
        missing: z.array(z.object({ length: lengthSchema, count })), unplaceable: z.array(z.object({ mark: z.string(), length: lengthSchema, count })),
    })),
});

const slatsSchema = z.object({
    of: z.enum(['bench', 'head rest', 'duckboard']), name: z.string(), count, width: lengthSchema, depth: lengthSchema,
    gap: z.object({ ticks: z.object({ numerator: z.int(), denominator: z.int().check(z.positive()) }).register(z.globalRegistry, { description: 'One gap, exactly: a fraction of ticks.' }), text: z.string() }),
    flush: z.literal('both edges'), text: z.string(),
});

const cutListSchema = z.object({
    format: z.literal('hotroom-cut-list'),
    version: z.literal(1),
    jobs: z.array(z.object({
        name: z.string(), title: z.optional(z.string()), number: z.optional(z.string()), revision: z.optional(z.string()),
        isWhole: z.boolean(),
        unit: z.enum(['in', 'ft_in', 'ft', 'mm', 'cm', 'm']),
        parts: z.array(partSchema), panels: z.optional(z.array(panelSchema)),
        stockPlan: z.optional(z.array(stockPlanSchema)),
        findings: z.object({ error: count, warning: count, info: count, hint: count }),
        ruleSets: z.array(z.object({ id: z.string(), title: z.string(), documents: z.array(z.object({ title: z.string(), edition: z.string() })) })),
        ruleSetsNamedBy: z.optional(z.literal('settings')),
        notChecked: z.array(z.string()), notOnList: z.optional(z.array(z.string())), numbering: z.optional(z.string()), slats: z.optional(z.array(slatsSchema)), practice: z.optional(z.array(z.string())),
    })),
    cautions: z.array(z.string()),
});

/** Cut lists as data. Within a version members are only added. Lengths are exact ticks of 12.5 nm with the text a saw operator reads. */
export type CutListExport = z.infer<typeof cutListSchema>;

/** JSON Schema (draft 2020-12) of the exported cut list. */
export const cutListJsonSchema = (): object => z.toJSONSchema(cutListSchema);

/** Reads an exported cut list back; the answer says what is wrong with it when it is none. */
export function readCutList(text: string): { readonly ok: true; readonly list: CutListExport } | { readonly ok: false; readonly why: string } {
    let value: unknown;
    try { value = JSON.parse(text); } catch { return { ok: false, why: 'This is not JSON.' }; }
    const parsed = cutListSchema.safeParse(value);
    if (parsed.success) return { ok: true, list: parsed.data };
    return { ok: false, why: parsed.error.issues.slice(0, 3).map(({ path, message }) => `${path.join('.')}: ${message}`).join('; ') };
}

export interface ExportedJob {
    readonly analysis: RenderedJob;
    readonly planned?: readonly PlannedStock[];
    /** Name of a file as the reader knows it; without it the uri stands. */
    readonly showFile?: (uri: string) => string;
}

export function cutListExport(jobs: readonly ExportedJob[]): CutListExport {
    return { format: 'hotroom-cut-list', version: 1, jobs: jobs.map(exportJob), cautions: [...cautions] };
}

function exportJob({ analysis, planned, showFile = uri => uri }: ExportedJob): CutListExport['jobs'][number] {
    const { job, results, ruleSets, findings } = analysis;
    const place = ({ uri, start, end }: Span): z.infer<typeof placeSchema> => ({ file: showFile(uri), start, end });
    const { number, revision } = job.block.values;
    const scale = scaleOf(analysis);
    const count = (severity: string): number => findings.filter(finding => finding.severity === severity).length;
    return {
        name: jobName(job), ...(job.block.title && { title: job.block.title.value }), ...(number && { number: number.value }), ...(revision && { revision: revision.value }),
        isWhole: isReadWhole(job), unit: job.unit,
        parts: jobGroups(job, results.parts).flatMap(({ lines }) => lines.map(line => exportPart(line, scale, place))),
        panels: panelSchedule(analysis).map(panel => exportPanel(panel, scale, place)),
        ...(planned && { stockPlan: exportPlans(planned, scale) }),
        findings: { error: count('error'), warning: count('warning'), info: count('info'), hint: count('hint') },
        ruleSets: ruleSets.map(({ id, title, documents }) => ({ id, title, documents: documents.map(document => ({ title: document.title, edition: document.edition })) })),
        ...(ruleSets.length > 0 && !job.block.written.has('rules') && { ruleSetsNamedBy: 'settings' as const }),
        notChecked: [...notCheckedBy(ruleSets)], notOnList: [...notOnList(analysis)], numbering: numberingRule,
        slats: slatGaps(analysis).map(gap => exportSlats(gap, scale)), practice: results.parts.some(isMoulding) ? [mouldingPractice] : [],
    };
}

const exportLength = (length: Length, unit: Scale): { ticks: number; text: string } => ({ ticks: length, text: showLength(length, sawUnit(unit), purposeOf(unit)) });

function exportPart({ part, at }: CutListLine, unit: Scale, place: (span: Span) => z.infer<typeof placeSchema>): z.infer<typeof partSchema> {
    const length = (value: Length): z.infer<typeof lengthSchema> => exportLength(value, unit);
    return {
        mark: part.mark, part: part.what, count: part.count,
        ...(part.material.stock !== undefined && { stock: part.material.stock }), ...(part.nominal !== undefined && { nominal: part.nominal }),
        section: { thickness: length(part.section.thickness), width: length(part.section.width) },
        length: length(part.length), finishedLength: length(finishedLength(part)), ...(part.allowance !== undefined && { allowance: length(part.allowance) }), endsDegrees: { left: part.ends.left, right: part.ends.right }, ends: showEnds(part.ends),
        notches: part.notches.map(notch => ({
            side: notch.side, from: length(notch.from), length: length(notch.length), depth: length(notch.depth), clears: notch.clears,
            measuredFrom: notch.end, face: notchFace(notch, part.section, unit), faceWidth: length(notchFaceWidth(notch, part.section)), ...(notch.toward && { toward: notch.toward }),
        })),
        ...(part.place && { place: exportPlace(part.place, unit) }),
        cut: part.cut, goesTo: part.goesTo, ...(part.measure !== undefined && { measure: part.measure }), ...(at && { at: place(at) }),
    };
}

function exportPlace(place: PartPlace, unit: Scale): NonNullable<z.infer<typeof partSchema>['place']> {
    const length = (value: Length): z.infer<typeof lengthSchema> => exportLength(value, unit);
    const { from, between, distances } = measuredPlace(place);
    return {
        wall: place.wall, measuredFrom: from, face: between === 'linings' ? 'lining' : 'outside', distances: distances.map(length),
        ...(place.heights && { bottom: length(place.heights.from), top: length(place.heights.to) }), text: showPartPlace(place, unit),
    };
}

function exportPanel(scheduled: ScheduledPanel, unit: Scale, place: (span: Span) => z.infer<typeof placeSchema>): z.infer<typeof panelSchema> {
    const length = (value: Length): z.infer<typeof lengthSchema> => exportLength(value, unit);
    const { panel, side, from, distance, tongue, holds, cutOuts, at } = scheduled;
    return {
        mark: panel.mark, side, kind: panel.kind, place: { measuredFrom: from.wall, face: from.face, distance: length(distance), text: showPanelPlace(scheduled, unit) },
        cover: length(panel.cover), overall: length(panel.overall), height: length(panel.height), thickness: length(panel.thickness),
        ...(tongue !== undefined && { tongue }), holds: [...holds],
        cutOuts: cutOuts.map(one => ({
            of: one.of, what: one.what, width: length(one.width), height: length(one.height), isPart: one.isPart,
            fromLeftEdge: length(one.fromLeft), overFinishedFloor: length(one.overFloor), overLowerEdge: length(one.overPanel), text: showCutOut(one, unit),
        })), ...(at && { at: place(at) }),
    };
}

const exportSlats = (one: SlatGap, unit: Scale): z.infer<typeof slatsSchema> => ({
    of: one.kind, name: one.name, count: one.slats, width: exportLength(one.slatWidth, unit), depth: exportLength(one.depth, unit),
    gap: { ticks: { numerator: Number(one.gap.n), denominator: Number(one.gap.d) }, text: showGap(one.gap, unit) }, flush: 'both edges', text: showSlatGap(one, unit),
});

export function exportPlans(planned: readonly PlannedStock[], unit: Scale): z.infer<typeof stockPlanSchema>[] {
    const numbered = numberBoards(planned);
    return planned.map(one => exportPlan(one, numbered.find(plan => plan.one === one), unit));
}

function exportPlan({ stock, whyNot, plan }: PlannedStock, numbered: NumberedPlan | undefined, unit: Scale): z.infer<typeof stockPlanSchema> {
    const length = (value: Length): z.infer<typeof lengthSchema> => exportLength(value, unit);
    const letters = plan ? stopLetters(plan, unit) : new Map<Length, string>();
    const board = ({ number, board: one }: NumberedBoard): z.infer<typeof boardSchema> => {
        const { stockLength, patternIndex, cuts, kerfTotal, trimTotal, offcut } = one;
        const caution = boardCaution(one, unit);
        return {
            number, length: length(stockLength), stops: stopName(patternIndex), cuts: cuts.map(cut => ({ mark: cut.mark, length: length(cut.length), stop: letters.get(cut.length) ?? '' })),
            kerf: length(kerfTotal), trim: length(trimTotal), offcut: length(offcut), ...(caution !== undefined && { caution }),
        };
    };
    return {
        ...(stock !== undefined && { stock }), ...(whyNot !== undefined && { whyNotPlanned: whyNot }),
        ...(plan && {
            plan: {
                objective: plan.objective, proof: plan.proof === 'proven' ? 'proven' : { gap: plan.proof.gap }, method: plan.method,
                totalLength: length(plan.totalLength), ...(plan.totalCost && { totalCost: { ...plan.totalCost } }), boards: (numbered?.boards ?? []).map(board),
                stops: sawStops(plan, unit).map(({ letter, lengths: [value], pieces }) => ({ letter, length: length(value), pieces })), warnings: numbered ? [...planWarnings(numbered)] : [],
                missing: plan.missing.map(one => ({ length: length(one.stockLength), count: one.count })),
                unplaceable: plan.unplaceable.map(one => ({ mark: one.mark, length: length(one.length), count: one.count })),
            },
        }),
    };
}
