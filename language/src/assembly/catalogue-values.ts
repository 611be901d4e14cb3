import type { Length } from '../core/length.js';
import { nominalFor } from '../engines/parts/lumber.js';
import type { NominalSize, Section } from '../engines/parts/part.js';
import type { WallPlace } from '../engines/fittings/wall-place.js';
import type { Block, Given, Link } from '../model/block.js';
import type { Place } from '../vocabulary/values.js';

/** A stock as the engines take it. */
export interface StockChoice {
    readonly stock: string;
    readonly nominal?: NominalSize;
    readonly section: Section;
    readonly longest?: Length;
}

/** The stock a link leads to; nothing while its section is not written. */
export function stockOf(link: Link<'stock'> | undefined): StockChoice | undefined {
    const block = link?.block;
    const size = block?.values.section?.value;
    if (!link || !block || !size) return undefined;
    const section: Section = { thickness: size.width, width: size.height };
    const written = block.values.nominal?.value;
    const nominal = written !== undefined && isNominal(written) ? written : nominalFor(section);
    const lengths = block.values.lengths?.value ?? [];
    return { stock: link.name, section, ...(nominal && { nominal }), ...(lengths.length > 0 && { longest: Math.max(...lengths) as Length }) };
}
const isNominal = (text: string): text is NominalSize => /^\d+x\d+$/.test(text);

interface Placeable { readonly values: { readonly from?: Given<Place>; readonly centre?: Given<Place> } }
/** Where a thing stands along its wall; to its middle when it is written with `centre`. */
export function placeOf({ values: { from, centre } }: Placeable): WallPlace | undefined {
    if (from) return { from: from.value.wall, distance: from.value.distance, to: 'near_edge' };
    return centre && { from: centre.value.wall, distance: centre.value.distance, to: 'middle' };
}

/** The wall a block stands on; nothing while it is not written. */
export const wallOf = (block: Block): Block['walls'][number]['value'] | undefined => block.walls[0]?.value;

/** An object without the members that have no value: optional facts go into engine inputs this way. */
export function given<T extends object>(values: { readonly [K in keyof T]: T[K] | undefined }): { readonly [K in keyof T]?: Exclude<T[K], undefined> } {
    const known: Record<string, unknown> = {};
    for (const [key, value] of Object.entries(values)) if (value !== undefined) known[key] = value;
    return known as { readonly [K in keyof T]?: Exclude<T[K], undefined> };
}
