import type { Interval, Wall } from '../../core/geometry.js';
import type { Length } from '../../core/length.js';
import type { NominalSize, Section } from '../parts/part.js';
import type { WidthRange } from './stretch.js';

/** Which walls run through at the corners. In a pinwheel every wall runs through at one end and stops against its neighbour at the other. */
export type CornerScheme = 'front_and_back' | 'sides' | 'pinwheel';
/** Left or right as seen from inside the room facing the wall. */
export type RunSide = 'left' | 'right';
/** Way the ceiling panels lie: their length runs from front to back, or from left to right. */
export type CeilingSpan = 'front_to_back' | 'left_to_right';
export const cornerNames = ['front_left', 'front_right', 'back_left', 'back_right'] as const;
export type CornerName = typeof cornerNames[number];

export interface ShellLayer {
    readonly role: 'lining' | 'air_gap' | 'barrier' | 'core' | 'sheathing' | 'facing';
    readonly name: string;
    /** Real thickness in the wall: insulation counts compressed. Zero for a foil. */
    readonly thickness: Length;
    /** kg/m3 of the layer as built: for a core, insulation and frame together. Absent when it is not known; an air gap needs none. */
    readonly densityKgPerM3?: number;
}

/** What the shop makes: widths, joints and base plates. */
export interface PanelSystem {
    readonly modules: readonly Length[];
    /** Cover widths a made-to-measure panel may have, both ends included. */
    readonly madeToMeasure?: WidthRange;
    /** Depth of a tongue or hook in the next panel; overall width is cover width plus this on each tongue edge. */
    readonly engagement: Length;
    /** Order in which a chain of panels is put up, as seen from inside; it gives every panel its hand. Default left to right. */
    readonly chainStartsAt?: RunSide;
    /** End at which a pinwheel wall runs through. Default left. */
    readonly pinwheelThroughAt?: RunSide;
    readonly plate: {
        readonly section: Section;
        readonly nominal?: NominalSize;
        /** Catalogue name of its stock. */
        readonly stock?: string;
        /** Longest piece that can be cut from the stock; absent when lengths are not known. */
        readonly longestPiece?: Length;
        /** From the outside of the facing to the outer edge of the plate. */
        readonly setIn: Length;
    };
}

/** A door or window section, placed by its clear opening or glass as the designer measures it. */
export interface ShellOpening {
    readonly name: string;
    readonly kind: 'door' | 'window';
    readonly wall: Wall;
    /** Neighbouring wall whose lining the place is measured from. */
    readonly from: Wall;
    /** From that lining to the near edge of the clear opening or glass. */
    readonly near: Length;
    /** Width of the clear opening or glass, and cover width of the section around it. */
    readonly clearWidth: Length;
    readonly sectionWidth: Length;
    /** From the section's edge on the `from` side to the clear opening; default: the opening stands in the middle of its section. */
    readonly edgeToClear?: Length;
    /** What the base plate does under a door: it stays as a threshold, or it is cut out over the clear opening. */
    readonly plate: 'threshold' | 'cut_out';
    /** What a cut-out door takes of the base plate, in the wall's u: jamb to jamb, outside. Default: the clear opening. */
    readonly cutOut?: Interval;
    /** Mass of the section with its door or window, kg. */
    readonly massKg?: number;
}

/** Something fastened to a wall that a joint should keep clear of, in the wall's u (from its left inside corner, seen from inside). */
export type WallFastening =
    | { readonly kind: 'fastening-zone'; readonly name: string; readonly wall: Wall; readonly zone: Interval }
    | { readonly kind: 'ledger-end' | 'leg-fastening'; readonly name: string; readonly wall: Wall; readonly at: Length };

/** A job's shell. All sizes are outside sizes; lengths of any value are answered with a result or a problem, never with an exception. */
export interface ShellInput {
    /** Along the front, to the back, and from the finished floor to the top of the ceiling panels. */
    readonly width: Length;
    readonly depth: Length;
    readonly height: Length;
    readonly corners: CornerScheme;
    /** Layers inside to outside; a wall may have fewer than another (no facing on a hidden wall). */
    readonly wallLayers: Readonly<Record<Wall, readonly ShellLayer[]>>;
    readonly ceilingLayers: readonly ShellLayer[];
    readonly ceilingSpan?: CeilingSpan;
    readonly system: PanelSystem;
    readonly openings: readonly ShellOpening[];
    readonly fastenings: readonly WallFastening[];
    /** Sides that stand clear of the building. */
    readonly freeSides: readonly Wall[];
    /** The corner to close last, when the designer names it. */
    readonly closingCorner?: CornerName;
    /** Height of the building's ceiling over the finished floor in up to three places; the lowest governs. Absent when it is not measured. */
    readonly siteCeiling?: readonly Length[];
    /** Room between a closed side and the building, for a ceiling panel that has to swing past it. Default 1". */
    readonly closedSideGap?: Length;
}
