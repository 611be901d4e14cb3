import { inches, zero, type Length } from '../core/length.js';
import type { Span } from '../core/span.js';
import type { NominalSize, Section } from '../engines/parts/part.js';
import { isKind, type Block, type Link } from '../model/block.js';
import type { Job } from '../model/job.js';
import type { Price } from '../vocabulary/values.js';

/** One saw cut, where the catalogue does not say. Common practice, no source. */
export const usualKerf: Length = inches(0, 1, 8);

/** Boards of one section and grade as the catalogue offers them. */
export interface StockOffer {
    readonly name: string;
    readonly title?: string;
    readonly nominal?: NominalSize;
    readonly section: Section;
    readonly species?: string;
    readonly grade?: string;
    readonly lengths: readonly Length[];
    /** Absent when the catalogue gives none: no price, no guess. */
    readonly price?: Price;
    readonly kerf: Length;
    readonly endTrim: Length;
    /** Boards in the store, all of the longest length. */
    readonly onHand?: number;
    readonly at: Span;
}

/** The stocks a job can cut from, by name: every stock entry reached from its blocks through the catalogue. */
export function stockOffers(job: Job): ReadonlyMap<string, StockOffer> {
    const offers = new Map<string, StockOffer>();
    for (const entry of catalogueEntries(job)) {
        if (!isKind(entry, 'stock') || !entry.name || offers.has(entry.name.value)) continue;
        const offer = offerOf(entry, entry.name.value);
        if (offer) offers.set(offer.name, offer);
    }
    return offers;
}

/** Every catalogue entry a job depends on, in the order it is reached: what its blocks name, what those entries name, and so on. */
export function catalogueEntries(job: Job): readonly Block[] {
    const found = new Set<Block>();
    const visit = (block: Block): void => {
        for (const linked of linkedBlocks(block)) {
            if (found.has(linked)) continue;
            found.add(linked);
            visit(linked);
        }
        for (const child of block.children) visit(child);
    };
    visit(job.block);
    return [...found].filter(block => !isWithin(block, job.block));
}

const isWithin = (inner: Block, outer: Block): boolean =>
    inner.span.uri === outer.span.uri && inner.span.start >= outer.span.start && inner.span.end <= outer.span.end;

function linkedBlocks(block: Block): readonly Block[] {
    return Object.values(block.values as Readonly<Record<string, { readonly value: unknown } | undefined>>).flatMap(given => blocksOf(given?.value));
}

function blocksOf(value: unknown): readonly Block[] {
    if (Array.isArray(value)) return value.flatMap(blocksOf);
    if (typeof value !== 'object' || value === null) return [];
    if ('of' in value) return blocksOf(value.of);
    return isLink(value) && value.block ? [value.block] : [];
}
const isLink = (value: object): value is Link => 'block' in value && 'name' in value && 'span' in value;

function offerOf(block: Block<'stock'>, name: string): StockOffer | undefined {
    const { values } = block;
    if (!values.section) return undefined;
    const nominal = values.nominal?.value;
    return {
        name,
        ...(block.title && { title: block.title.value }),
        ...(isNominal(nominal) && { nominal }),
        section: { thickness: values.section.value.width, width: values.section.value.height },
        ...(values.species && { species: values.species.value }),
        ...(values.grade && { grade: values.grade.value }),
        lengths: [...new Set(values.lengths?.value ?? [])].filter(length => length > 0).sort((a, b) => b - a),
        ...(values.price && { price: values.price.value }),
        kerf: values.kerf?.value ?? usualKerf,
        endTrim: values.end_trim?.value ?? zero,
        ...(values.on_hand && { onHand: values.on_hand.value }),
        at: block.head,
    };
}

const isNominal = (text: string | undefined): text is NominalSize => text !== undefined && /^\d+x\d+$/.test(text);
