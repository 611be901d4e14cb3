import type { InsideSize, Interval, Wall } from '../../core/geometry.js';
import type { Length } from '../../core/length.js';
import type { BasePlate } from './base-plates.js';
import type { CeilingShell } from './ceiling.js';
import type { ClosingCorner, NoClosingCorner } from './closing-corner.js';
import type { BrokenSoftRule, DivisionFault, DivisionScore } from './division.js';
import type { Suggestion, Suggestions } from './division-suggestions.js';
import type { AssemblyHeadroom } from './headroom.js';
import type { PanelWeight } from './panel-weight.js';
import type { CornerName, RunSide } from './shell-input.js';

/** A panel or section as the shop builds it and the crew puts it up. */
export interface ShellPanel {
    /** `FRONT-2`, `CEILING-3`. */
    readonly mark: string;
    readonly kind: 'module' | 'made_to_measure' | 'door_section' | 'window_section';
    /** Name of the door or window in it. */
    readonly opening?: string;
    /** Width it takes of the run, and width with its tongues. */
    readonly cover: Length;
    readonly overall: Length;
    /** Wall panel: its height. Ceiling panel: its length along the span. */
    readonly height: Length;
    readonly thickness: Length;
    /** Wall panel: in the wall's u. Ceiling panel: from the outside left (x) or front (y) of the room, across the span. */
    readonly at: Interval;
    /** Edge that locks on the panel put up before it; the other edge takes the next one. Seen from inside, or for a ceiling toward the panel with the lower number. */
    readonly hookEdge: RunSide;
    /** Edges that carry a tongue: the hook edge, except where the chain of the wall begins. */
    readonly tongueEdges: readonly RunSide[];
    /** Strip of the inside face behind the neighbouring wall at a through corner; absent elsewhere. */
    readonly cornerStrip?: { readonly left?: Length; readonly right?: Length };
    readonly weight: PanelWeight;
}

export interface ShellJoint {
    /** `FRONT-1/FRONT-2`. */
    readonly between: readonly [string, string];
    /** In the wall's u, or across the ceiling's span. */
    readonly at: Length;
    readonly broken: readonly BrokenSoftRule[];
}

/** One wall. A wall that does not close has no panels; everything else about it is still there. */
export interface WallShell {
    readonly wall: Wall;
    readonly thickness: Length;
    /** The run its panels have to fill, in the wall's u: it starts below zero where the wall runs through. */
    readonly run: Interval;
    readonly runsThrough: Readonly<Record<RunSide, boolean>>;
    readonly panelHeight: Length;
    readonly panels: readonly ShellPanel[];
    readonly joints: readonly ShellJoint[];
    readonly score?: DivisionScore;
    readonly suggestions: Suggestions;
}

/** Outside sizes that close, or save a panel made to measure, on every wall and ceiling they change. */
export interface SizeSuggestions {
    readonly axis: 'width' | 'depth';
    readonly sizesThatClose: readonly Suggestion[];
    readonly sizesThatSave: readonly Suggestion[];
}

export interface ShellResult {
    /** T of each wall: the sum of its layers. */
    readonly thickness: Readonly<Record<Wall, Length>>;
    readonly ceilingThickness: Length;
    /** Lining to lining, and from the finished floor to the ceiling lining. A size may be zero or less: `room-has-no-inside` says so. */
    readonly inside: InsideSize;
    readonly wallPanelHeight: Length;
    readonly walls: Readonly<Record<Wall, WallShell>>;
    readonly ceiling: CeilingShell | undefined;
    readonly sizes: readonly SizeSuggestions[];
    readonly closing: ClosingCorner | undefined;
    readonly basePlates: readonly BasePlate[];
    readonly headroom: AssemblyHeadroom;
    readonly problems: readonly ShellProblem[];
}

export type ShellProblem =
    | { readonly kind: 'room-has-no-inside'; readonly axis: 'width' | 'depth' | 'height'; readonly outside: Length; readonly takenByShell: Length }
    | { readonly kind: 'room-too-large'; readonly axis: 'width' | 'depth'; readonly outside: Length; readonly limit: Length }
    | { readonly kind: 'no-panel-widths' }
    | { readonly kind: 'too-many-panel-mixtures'; readonly modules: readonly Length[] }
    | { readonly kind: 'panel-width-unusable'; readonly width: Length; readonly least: Length }
    | { readonly kind: 'wall-does-not-close'; readonly wall: Wall; readonly run: Length; readonly fault: DivisionFault; readonly suggestions: Suggestions }
    | { readonly kind: 'opening-not-measured-from-neighbour'; readonly opening: string; readonly wall: Wall; readonly from: Wall }
    | { readonly kind: 'opening-wider-than-section'; readonly opening: string; readonly clear: Length; readonly section: Length }
    | { readonly kind: 'opening-overlaps-corner'; readonly wall: Wall; readonly opening: string; readonly corner: CornerName; readonly by: Length; readonly suggestions: Suggestions }
    | { readonly kind: 'openings-overlap'; readonly wall: Wall; readonly first: string; readonly second: string; readonly by: Length; readonly suggestions: Suggestions }
    | { readonly kind: 'corner-panel-too-narrow'; readonly wall: Wall; readonly corner: CornerName; readonly left: Length; readonly least: Length; readonly suggestions: Suggestions }
    | { readonly kind: 'joint-in-fastening-zone'; readonly wall: Wall; readonly joint: Length; readonly between: readonly [string, string]; readonly name: string; readonly zone: Interval }
    | { readonly kind: 'joint-near-fastening'; readonly wall: Wall; readonly joint: Length; readonly between: readonly [string, string]; readonly name: string; readonly fastening: 'ledger-end' | 'leg-fastening'; readonly distance: Length; readonly least: Length }
    | { readonly kind: 'no-closing-corner'; readonly reason: NoClosingCorner }
    | { readonly kind: 'ceiling-does-not-close'; readonly run: Length; readonly fault: DivisionFault; readonly suggestions: Suggestions }
    | { readonly kind: 'span-not-stated'; readonly size: Length }
    | { readonly kind: 'plate-cannot-be-spliced'; readonly wall: Wall; readonly mark: string; readonly length: Length; readonly longestPiece: Length };
