import { showCitation } from '../core/citation.js';
import type { Figure, ReportedFinding } from '../core/finding.js';
import type { Length } from '../core/length.js';
import { spanContains, type Span } from '../core/span.js';
import type { JobAnalysis } from '../analysis/analyze-job.js';
import type { Part } from '../engines/parts/part.js';
import { byText, catalogueFacts, factLength, factsOfJob, factsOfSignOffs, keyed, namedBlocks } from '../model/given-facts.js';
import type { Job } from '../model/job.js';
import type { Waiver } from '../model/waivers.js';
import { cutListGroups, compareMarks, totals } from '../renderings/cut-list.js';
import { panelSchedule, type ScheduledPanel } from '../renderings/panel-schedule.js';
import { sourceOfPart } from '../renderings/part-source.js';
import { jobName, isReadWhole } from '../renderings/rendered-job.js';
import { stockOffers, type StockOffer } from '../renderings/stock-offers.js';
import { boardPrice } from '../renderings/stock-tasks.js';
import { showDate, type CalendarDate } from '../vocabulary/values.js';
import type { JobModel, ModelFigure, ModelFinding, ModelPanel, ModelPart, ModelStock, ModelWaiver } from './model-schema.js';

/** Where the rows of a model come from: collection and key of the row → its place in the text. */
export type ModelPlaces = ReadonlyMap<string, Span>;
export const placeKey = (what: 'job' | 'given' | 'catalogue' | 'finding' | 'waiver' | 'panel' | 'part', key: string): string => `${what} ${key}`;

export interface ExportedModel {
    readonly model: JobModel;
    readonly places: ModelPlaces;
    /** The findings behind those of the model, by key. */
    readonly findings: ReadonlyMap<string, ReportedFinding>;
}

/** Computed facts that repeat what the panels of a model say. */
const isToldByPanels = /^room\.(front|left|back|right)\.panels$/;

/**
 * One analysed job as data. Give it a job that was analysed in inches (`jobModels` does): figures in words then hold the same lengths whatever the
 * writer's unit is.
 * @param findings those that concern the job, the mistakes of its text with them
 */
export function exportJob({ job, results, facts, ruleSets }: Pick<JobAnalysis, 'job' | 'results' | 'facts' | 'ruleSets'>, findings: readonly ReportedFinding[], today: CalendarDate | undefined): ExportedModel {
    const places = new Map<string, Span>([[placeKey('job', jobName(job)), job.block.head]]);
    const { number, revision } = job.block.values;
    const given = [...factsOfJob(job), ...factsOfSignOffs(job)];
    const catalogue = catalogueFacts(job);
    for (const [path, , at] of given) places.set(placeKey('given', path), at);
    for (const [path, , at] of catalogue) places.set(placeKey('catalogue', path), at);
    const panels = panelSchedule({ job, results }).map(panel => ({ panel: exportPanel(panel), at: panel.at }));
    for (const { panel, at } of panels) if (at) places.set(placeKey('panel', panel.mark), at);
    const parts = keyed(results.parts.map(part => ({ row: exportPart(part), at: sourceOfPart(part, job) })), ({ row }) => row.mark, ({ row }) => row);
    for (const [mark, { at }] of parts) if (at) places.set(placeKey('part', mark), at);
    const behind = new Map<string, ReportedFinding>();
    const found = keyed(findings.map(finding => ({ finding, row: exportFinding(finding, job) })), ({ row }) => `${row.rule} on ${row.about}`, ({ row }) => row);
    for (const [key, { finding }] of found) { places.set(placeKey('finding', key), finding.at); behind.set(key, finding); }
    const waivers = keyed(job.waivers.map(waiver => ({ waiver, row: exportWaiver(waiver, today) })), ({ row }) => row.about === undefined ? row.rule : `${row.rule} on ${row.about}`, ({ row }) => row);
    for (const [key, { waiver }] of waivers) places.set(placeKey('waiver', key), waiver.span);
    const title = job.block.title?.value;
    return {
        model: {
            job: {
                name: jobName(job), ...(title !== undefined && { title }), ...(number && { number: number.value }), ...(revision && { revision: revision.value }),
                ...(job.variant && { variant: job.variant.name }), isWhole: isReadWhole(job),
            },
            ruleSets: ruleSets.map(one => ({ id: one.id, title: one.title, documents: one.documents.map(document => ({ title: document.title, edition: document.edition })) })).sort((a, b) => byText(a.id, b.id)),
            given: record(given), catalogue: record(catalogue),
            computed: record(facts.under().filter(({ path }) => !isToldByPanels.test(path)).map(one => [one.path, { title: one.title, value: exportFigure(one.value) }] as const)),
            panels: panels.map(({ panel }) => panel).sort((a, b) => compareMarks(a.mark, b.mark)),
            parts: parts.map(([mark, { row }]) => ({ ...row, mark })).sort((a, b) => compareMarks(a.mark, b.mark)),
            stock: exportStock(results.parts, stockOffers(job)), findings: found.map(([key, { row }]) => ({ key, ...row })).sort(byKey), waivers: waivers.map(([key, { row }]) => ({ key, ...row })).sort(byKey),
        },
        places, findings: behind,
    };
}

const byKey = (a: { readonly key: string }, b: { readonly key: string }): number => compareMarks(a.key, b.key);

/** Members in the order of their names; of two with one name the first stays. */
function record<T>(entries: readonly (readonly [string, T, ...unknown[]])[]): Record<string, T> {
    const first = new Map<string, T>();
    for (const [key, value] of entries) if (!first.has(key)) first.set(key, value);
    return Object.fromEntries([...first].sort(([a], [b]) => byText(a, b)));
}

function exportFigure(figure: Figure): ModelFigure {
    switch (figure.kind) {
        case 'length': return { kind: 'length', ...factLength(figure.length) };
        case 'amount': return { kind: 'amount', value: figure.value, unit: figure.unit };
        case 'words': return { kind: 'words', words: figure.words };
        default: return figure satisfies never;
    }
}

/** What a finding is about: its subject, else the block it stands in. */
function exportFinding({ rule, severity, measured, required, citation, subject, waived, at }: ReportedFinding, job: Job): Omit<ModelFinding, 'key'> {
    const [holder] = namedBlocks(job.block.children).find(([, block]) => spanContains(block.span, at)) ?? [];
    return {
        rule, about: subject ?? holder ?? 'job', severity, ...(measured && { measured: exportFigure(measured) }), ...(required && { required: exportFigure(required) }),
        ...(citation && { source: showCitation(citation) }), ...(waived && { waived: { because: waived.because, by: waived.by, until: waived.until } }),
    };
}

function exportWaiver({ rule, subject, because, by, until }: Waiver, today: CalendarDate | undefined): Omit<ModelWaiver, 'key'> {
    const day = showDate(until.value);
    return { rule: rule.value, ...(subject && { about: subject.value }), because, by, until: day, isOver: today !== undefined && day < showDate(today) };
}

function exportPanel({ panel, side, from, distance, tongue, holds, cutOuts }: ScheduledPanel): ModelPanel {
    return {
        mark: panel.mark, side, kind: panel.kind, place: { measuredFrom: from.wall, face: from.face, distance: factLength(distance) },
        cover: factLength(panel.cover), overall: factLength(panel.overall), height: factLength(panel.height), thickness: factLength(panel.thickness),
        ...(tongue !== undefined && { tongue }), holds: [...holds].sort(byText),
        cutOuts: cutOuts.map(one => ({
            of: one.of, what: one.what, width: factLength(one.width), height: factLength(one.height), isPart: one.isPart, fromLeftEdge: factLength(one.fromLeft), overFinishedFloor: factLength(one.overFloor),
        })).sort((a, b) => byText(a.of, b.of)),
        ...(panel.weight.isKnown && { massKg: panel.weight.kg }),
    };
}

const section = ({ thickness, width }: Part['section']): ModelPart['section'] => ({ thickness: factLength(thickness), width: factLength(width) });

function exportPart(part: Part): ModelPart {
    const { allowance, place } = part;
    return {
        mark: part.mark, part: part.what, count: part.count, ...(part.material.stock !== undefined && { stock: part.material.stock }), ...(part.nominal !== undefined && { nominal: part.nominal }),
        section: section(part.section), length: factLength(part.length), ...(allowance !== undefined && { allowance: factLength(allowance) }),
        endsDegrees: { left: part.ends.left, right: part.ends.right, ...(part.ends.across && { across: part.ends.across }) },
        notches: part.notches.map(({ side, end, from, length, depth, toward, clears }) =>
            ({ side, measuredFrom: end, from: factLength(from), length: factLength(length), depth: factLength(depth), ...(toward && { toward }), clears })),
        cut: part.cut, goesTo: part.goesTo, ...(part.measure !== undefined && { measure: part.measure }),
        ...(place && {
            place: {
                wall: place.wall, between: place.between, stretches: place.stretches.map(({ from, to }) => ({ from: factLength(from), to: factLength(to) })),
                ...(place.heights && { bottom: factLength(place.heights.from), top: factLength(place.heights.to) }),
            },
        }),
    };
}

/** What is cut of each stock in all, before saw cuts and offcuts. */
function exportStock(parts: readonly Part[], offers: ReadonlyMap<string, StockOffer>): ModelStock[] {
    return cutListGroups(parts.map(part => ({ part }))).map((group): ModelStock => {
        const { pieces, length } = totals(group.lines);
        const own = section(group.section);
        const name = group.stock ?? 'no stock';
        const net = Number(length) as Length;
        const price = offers.get(name)?.price;
        return {
            key: `${name} ${own.thickness.text} x ${own.width.text}`, ...(group.stock !== undefined && { stock: group.stock }), ...(group.nominal !== undefined && { nominal: group.nominal }),
            section: own, pieces, length: factLength(net), ...(price && (price.per === 'ft' || price.per === 'm') && { netCost: { ...boardPrice(price, net, group.section) } }),
        };
    }).sort((a, b) => byText(a.key, b.key));
}
