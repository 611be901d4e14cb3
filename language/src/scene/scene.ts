import type { Box, InsideSize, Wall } from '../core/geometry.js';
import type { Length } from '../core/length.js';
import type { Span } from '../core/span.js';

/** What a solid belongs to, in the trade's words: the layer it is drawn on, and the one it can be shown or left out by. */
export const solidLayers = ['base', 'walls', 'ceiling', 'openings', 'benches', 'heater', 'guard', 'fittings', 'trim', 'blocking'] as const;
export type SolidLayer = typeof solidLayers[number];

/**
 * One thing of the room as a body: boxes that do not overlap and together are the body, so a panel with its door cut out or a leg with its notch is one
 * solid. In the room frame from the inside origin, exact ticks.
 */
export interface Solid {
    /** Stable: the mark and a running number, or the name of the block. */
    readonly id: string;
    /** What stands on the part; absent for what is no part. */
    readonly mark?: string;
    /** What it is, in trade words: `bench slat`. */
    readonly kind: string;
    readonly layer: SolidLayer;
    readonly boxes: readonly Box[];
    /** The wall it is of or in. */
    readonly wall?: Wall;
    /** One can see through it: glass, and what has no size but a point. */
    readonly isOpen?: boolean;
    /** The text that made it. */
    readonly span?: Span;
}

/** Everything there is to draw of one job. Made once from results and parts; every view is a projection of it. */
export interface Scene {
    readonly inside: InsideSize;
    /** The whole room, outside faces, floor to the top of the ceiling panels. */
    readonly outside: Box;
    /** From the underside of the plates, which is the finished floor, to that of the wall panels. */
    readonly plateThickness: Length;
    /** In the order base, walls, ceiling, openings, benches, heater, fittings, trim. */
    readonly solids: readonly Solid[];
}

/** Letters, digits and hyphens, as an id in a document may be written. */
export const idOf = (...words: readonly (string | number)[]): string => words.join('-').replaceAll(/[^A-Za-z0-9-]+/g, '-');
