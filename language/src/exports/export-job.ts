import { showCitation } from '../core/citation.js';
import type { Figure, ReportedFinding } from '../core/finding.js';
import type { Length } from '../core/length.js';
import { spanContains, type Span } from '../core/span.js';
import type { JobAnalysis } from '../analysis/analyze-job.js';
import type { Part } from '../engines/parts/part.js';
import type { Job } from '../model/job.js';
import type { Waiver } from '../model/waivers.js';
import { cutListGroups, compareMarks, totals } from '../renderings/cut-list.js';
import { panelSchedule, type ScheduledPanel } from '../renderings/panel-schedule.js';
import { sourceOfPart } from '../renderings/part-source.js';
import { jobName, isReadWhole } from '../renderings/rendered-job.js';
import { catalogueEntries, stockOffers, type StockOffer } from '../renderings/stock-offers.js';
import { boardPrice } from '../renderings/stock-tasks.js';
import { showDate, type CalendarDate } from '../vocabulary/values.js';
import { byText, factsOfBlock, factsWithin, modelLength, namedBlocks, type PlacedFact } from './given-facts.js';
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
    const blocks = namedBlocks(job.block.children.filter(({ kind }) => kind !== 'variant'));
    const given = [...factsOfBlock(job.block, 'job').filter(([path]) => path !== 'job' && path !== 'job.number' && path !== 'job.revision'), ...blocks.flatMap(([name, block]) => factsWithin(block, name))];
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

/** Rows under keys of their own, in the order of the keys; what shares one is numbered in the order of what it says, which is no order of the text. */
function keyed<T>(rows: readonly T[], keyOf: (row: T) => string, saysOf: (row: T) => unknown): readonly (readonly [string, T])[] {
    return [...grouped(rows, keyOf)].sort(([a], [b]) => byText(a, b)).flatMap(([key, same]) => same.map(row => [JSON.stringify(saysOf(row)), row] as const).sort(([a], [b]) => byText(a, b))
        .map(([, row], i) => [i === 0 ? key : `${key} (${i + 1})`, row] as const));
}

/** Entries of catalogues the job reaches; two of one name in two catalogues are numbered by what they say. */
function catalogueFacts(job: Job): readonly PlacedFact[] {
    const entries = catalogueEntries(job).map(block => ({ name: block.name?.value ?? block.kind, block }));
    return keyed(entries, ({ name }) => name, ({ name, block }) => factsWithin(block, name).map(([path, value]) => [path, value])).flatMap(([name, { block }]) => factsWithin(block, name));
}

function grouped<T>(rows: readonly T[], keyOf: (row: T) => string): ReadonlyMap<string, readonly T[]> {
    const groups = new Map<string, T[]>();
    for (const row of rows) {
        const group = groups.get(keyOf(row));
        if (group) group.push(row); else groups.set(keyOf(row), [row]);
    }
    return groups;
}

function exportFigure(figure: Figure): ModelFigure {
    switch (figure.kind) {
        case 'length': return { kind: 'length', ...modelLength(figure.length) };
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
        mark: panel.mark, side, kind: panel.kind, place: { measuredFrom: from.wall, face: from.face, distance: modelLength(distance) },
        cover: modelLength(panel.cover), overall: modelLength(panel.overall), height: modelLength(panel.height), thickness: modelLength(panel.thickness),
        ...(tongue !== undefined && { tongue }), holds: [...holds].sort(byText),
        cutOuts: cutOuts.map(one => ({
            of: one.of, what: one.what, width: modelLength(one.width), height: modelLength(one.height), isPart: one.isPart, fromLeftEdge: modelLength(one.fromLeft), overFinishedFloor: modelLength(one.overFloor),
        })).sort((a, b) => byText(a.of, b.of)),
        ...(panel.weight.isKnown && { massKg: panel.weight.kg }),
    };
}

const section = ({ thickness, width }: Part['section']): ModelPart['section'] => ({ thickness: modelLength(thickness), width: modelLength(width) });

function exportPart(part: Part): ModelPart {
    const { allowance, place } = part;
    return {
        mark: part.mark, part: part.what, count: part.count, ...(part.material.stock !== undefined && { stock: part.material.stock }), ...(part.nominal !== undefined && { nominal: part.nominal }),
        section: section(part.section), length: modelLength(part.length), ...(allowance !== undefined && { allowance: modelLength(allowance) }),
        endsDegrees: { left: part.ends.left, right: part.ends.right, ...(part.ends.across && { across: part.ends.across }) },
        notches: part.notches.map(({ side, end, from, length, depth, toward, clears }) =>
            ({ side, measuredFrom: end, from: modelLength(from), length: modelLength(length), depth: modelLength(depth), ...(toward && { toward }), clears })),
        cut: part.cut, goesTo: part.goesTo, ...(part.measure !== undefined && { measure: part.measure }),
        ...(place && {
            place: {
                wall: place.wall, between: place.between, stretches: place.stretches.map(({ from, to }) => ({ from: modelLength(from), to: modelLength(to) })),
                ...(place.heights && { bottom: modelLength(place.heights.from), top: modelLength(place.heights.to) }),
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
            section: own, pieces, length: modelLength(net), ...(price && (price.per === 'ft' || price.per === 'm') && { netCost: { ...boardPrice(price, net, group.section) } }),
        };
    }).sort((a, b) => byText(a.key, b.key));
}
