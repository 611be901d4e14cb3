import type { Length } from '../core/length.js';
import type { SolidLayer } from '../scene/scene.js';

/** A point of a view in ticks, right and up. Whole ticks in every view but the axonometric ones. */
export interface Point { readonly x: number; readonly y: number }
export const point = (x: number, y: number): Point => ({ x, y });

export const drawingLayers = ['base', 'walls', 'ceiling', 'openings', 'benches', 'heater', 'guard', 'fittings', 'trim', 'blocking', 'hatch', 'swing', 'clearances', 'zones', 'dimensions', 'marks', 'notes'] as const;
export type Layer = SolidLayer | typeof drawingLayers[number];

/**
 * Types of line by their use. Widths in the ratio 1 : 2 : 4, line group 0.35: ISO 128-2:2020, 5 and table of line types, from memory.
 * `cut` continuous extra-wide; `visible` continuous wide; `thin` continuous narrow (hatching, dimensions, leaders, joints behind); `hidden` dashed narrow;
 * `centre` long-dashed dotted narrow (cutting planes, axes); `moving` long-dashed double-dotted narrow (ends of travel, what must stay free).
 */
export type LineStyle = 'cut' | 'visible' | 'thin' | 'hidden' | 'centre' | 'moving';
export const lineWidthMm: Readonly<Record<LineStyle, number>> = { cut: 0.7, visible: 0.35, thin: 0.18, hidden: 0.18, centre: 0.18, moving: 0.18 };
/** Dash and gap in mm on the paper; nothing for a continuous line. */
export const dashesMm: Readonly<Record<LineStyle, readonly number[]>> = { cut: [], visible: [], thin: [], hidden: [2.2, 0.8], centre: [6, 0.9, 0.3, 0.9], moving: [5, 0.8, 0.3, 0.8, 0.3, 0.8] };

export interface Stroke {
    readonly kind: 'line';
    readonly layer: Layer;
    readonly style: LineStyle;
    readonly from: Point;
    readonly to: Point;
    /** Id of the solid it is an edge of. */
    readonly of?: string;
}
/** Counterclockwise from one direction to the other, degrees from the right. */
export interface Arc {
    readonly kind: 'arc';
    readonly layer: Layer;
    readonly style: LineStyle;
    readonly centre: Point;
    readonly radius: number;
    readonly fromDegrees: number;
    readonly toDegrees: number;
    readonly of?: string;
}

/** A text on the paper with the box it fills. `at` is the middle of the box; `turn` 90 reads from the right of the sheet. */
export interface Lettering {
    readonly text: string;
    readonly at: Point;
    /** Of the capitals, mm on the paper: 1.8, 2.5, 3.5 or 5 (ISO 3098-1, nominal sizes, from memory). */
    readonly heightMm: number;
    readonly turn: 0 | 90;
    /** Size of its box in mm on the paper, before it is turned. */
    readonly widthMm: number;
    readonly isBold?: boolean;
}
export interface Label {
    readonly kind: 'label';
    readonly layer: Layer;
    readonly lettering: Lettering;
    /** From what it names to the text. */
    readonly leader?: readonly [Point, Point];
    readonly of?: string;
}

/**
 * A figure and the two points it holds between, as a view shows them. `from` and `to` are on the thing, `line` are the ends of the dimension line; the distance of
 * the ends is the measure.
 */
export interface Dimension {
    readonly kind: 'dimension';
    readonly id: string;
    /** One after another on a line; all from one point; or alone between two points. */
    readonly form: 'chain' | 'overall' | 'running' | 'single';
    readonly from: Point;
    readonly to: Point;
    readonly line: readonly [Point, Point];
    readonly measure: Length;
    readonly lettering: Lettering;
    readonly leader?: readonly [Point, Point];
}

export type Item = Stroke | Arc | Label | Dimension;

/** One view with everything on it, before it is put on a sheet. */
export interface Drawing {
    readonly items: readonly Item[];
    /** A solid's words, by its id, for titles. */
    readonly titles: ReadonlyMap<string, { readonly title: string; readonly span?: { readonly start: number; readonly end: number; readonly uri: string } }>;
}
