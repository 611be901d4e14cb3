import { inches, zero, type Length } from '../core/length.js';
import type { Span } from '../core/span.js';
import type { NominalSize, Section } from '../engines/parts/part.js';
import { isKind, type Block } from '../model/block.js';
import { catalogueEntries } from '../model/given-facts.js';
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
