import { grow, insideRun, interval, neighbours, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { area, half, inches, minus, plus, sum, times, zero, type Area, type Length } from '../../core/length.js';
import type { Size } from '../../vocabulary/values.js';
import { alongTheWall, type PlaceProblem, type WallPlace } from '../fittings/wall-place.js';
import { leafSwing, type LeafSwing } from './swing.js';

/** A door as the job and its model state it. */
export interface DoorInput {
    readonly name: string;
    readonly wall: Wall;
    /** Of the clear opening. */
    readonly place?: WallPlace;
    /** The neighbouring wall the hinges are toward. */
    readonly hinge: Wall;
    readonly swing: 'outward' | 'inward';
    readonly leaf: Size;
    readonly leafThickness?: Length;
    /** The clear opening with the leaf open at 90 degrees. */
    readonly clear: Size;
    /** Cover width of the wall section the door comes in. */
    readonly section: Length;
    /** Top and both sides; one figure, so the three are equal. */
    readonly gap?: Length;
    readonly bottomGap?: Length;
    /** Height over the finished floor; absent or zero when the base plate is cut out and there is none. */
    readonly threshold?: Length;
    /** Face width of one jamb, which is that of the head too. */
    readonly frameWidth?: Length;
    readonly pane?: Size;
}

/** Where the trade gives no figure of its own. Common practice, no source. */
export const doorDefaults = { leafThickness: inches(1, 1, 2), gap: inches(0, 1, 8), bottomGap: inches(0, 1, 2) } as const;

export type Threshold = { readonly kind: 'cut_out' } | { readonly kind: 'raised'; readonly height: Length };

/** The hand by the pull side: hinges on the left as one stands there to pull the leaf open is left-hand. */
export interface Hand {
    readonly hand: 'left-hand' | 'right-hand';
    readonly seenFrom: 'outside' | 'inside';
}

/** A stretch along and up one wall, in its own u and v. */
export interface Opening { readonly u: Interval; readonly v: Interval }

export type DoorProblem =
    | PlaceProblem
    | { readonly kind: 'hinge-not-on-a-neighbour'; readonly wall: Wall; readonly hinge: Wall; readonly neighbours: readonly [Wall, Wall] }
    /** The stated clear width is more than the open leaf leaves between the jambs. */
    | { readonly kind: 'clear-wider-than-leaf-leaves'; readonly stated: Length; readonly atMost: Length }
    | { readonly kind: 'clear-higher-than-frame'; readonly stated: Length; readonly atMost: Length }
    /** The frame stands beyond the section's edge on the side of the wall `toward`. */
    | { readonly kind: 'frame-wider-than-section'; readonly toward: Wall; readonly over: Length }
    | { readonly kind: 'door-higher-than-room'; readonly top: Length; readonly room: Length };

export interface Door {
    readonly name: string;
    readonly wall: Wall;
    /** Inside length of its wall, lining to lining. */
    readonly wallRun: Length;
    readonly clear: Opening;
    readonly clearWidth: Length;
    readonly clearHeight: Length;
    /** Centred on the clear opening. */
    readonly section: Interval;
    /** Between the jambs, and from the floor or threshold to the underside of the head. */
    readonly frameOpening: Opening;
    readonly leaf: Opening;
    readonly leafSize: Size;
    readonly gaps: { readonly top: Length; readonly sides: Length; readonly bottom: Length };
    /** Under the leaf, over its width: often an air path. */
    readonly underLeaf: Area;
    readonly threshold: Threshold;
    readonly hinge: Wall;
    readonly hand: Hand;
    readonly swing: LeafSwing;
    readonly frameWidth: Length;
    /** From the top of the head to the ceiling lining; below zero when the door does not fit. */
    readonly overHead: Length;
    readonly paneArea?: Area;
}

/**
 * Places a door: clear opening, section, frame, leaf, gaps, hand and swing.
 *
 * The opening between the jambs is the leaf and two gaps. With the leaf open at 90 degrees its thickness stands in that opening on the hinge side, so the
 * clear opening is taken flush with the latch jamb and what it is narrower lies on the hinge side.
 * @param inside inside dimensions of the room
 * @returns no door when nothing says where it is or on which side it hinges; figures that contradict each other are problems beside it
 */
export function placeDoor(input: DoorInput, inside: InsideSize): { readonly door?: Door; readonly problems: readonly DoorProblem[] } {
    const { wall, leaf, clear } = input;
    const ends = neighbours[wall];
    const placed = alongTheWall(wall, input.place, clear.width, inside);
    const problems: DoorProblem[] = [...placed.problems];
    const isHinged = input.hinge === ends.left || input.hinge === ends.right;
    if (!isHinged) problems.push({ kind: 'hinge-not-on-a-neighbour', wall, hinge: input.hinge, neighbours: [ends.left, ends.right] });
    const clearU = placed.stretch;
    if (!clearU || !isHinged) return { problems };

    const gap = input.gap ?? doorDefaults.gap;
    const bottomGap = input.bottomGap ?? doorDefaults.bottomGap;
    const thickness = input.leafThickness ?? doorDefaults.leafThickness;
    const frameWidth = input.frameWidth ?? zero;
    const floor = input.threshold ?? zero;
    const between = plus(leaf.width, times(gap, 2));
    const hingesAtLowerU = input.hinge === ends.left;

    const frameU = hingesAtLowerU ? interval(minus(clearU.to, between), clearU.to) : interval(clearU.from, plus(clearU.from, between));
    const frameV = interval(floor, sum(floor, bottomGap, leaf.height, gap));
    const leafU = interval(plus(frameU.from, gap), minus(frameU.to, gap));
    const leafV = interval(plus(floor, bottomGap), sum(floor, bottomGap, leaf.height));
    const beside = half(minus(input.section, clear.width));
    const sectionFrom = minus(clearU.from, beside);
    const section = interval(sectionFrom, plus(sectionFrom, input.section));
    const overHead = minus(inside.height, plus(frameV.to, frameWidth));

    const leaves = minus(between, thickness);
    if (clear.width > leaves) problems.push({ kind: 'clear-wider-than-leaf-leaves', stated: clear.width, atMost: leaves });
    if (clear.height > minus(frameV.to, floor)) problems.push({ kind: 'clear-higher-than-frame', stated: clear.height, atMost: minus(frameV.to, floor) });
    const frame = grow(frameU, frameWidth);
    if (frame.from < section.from) problems.push({ kind: 'frame-wider-than-section', toward: ends.left, over: minus(section.from, frame.from) });
    if (frame.to > section.to) problems.push({ kind: 'frame-wider-than-section', toward: ends.right, over: minus(frame.to, section.to) });
    if (overHead < 0) problems.push({ kind: 'door-higher-than-room', top: minus(inside.height, overHead), room: inside.height });

    const opensOutward = input.swing === 'outward';
    const door: Door = {
        name: input.name, wall, wallRun: insideRun(wall, inside), section, hinge: input.hinge, frameWidth, overHead, leafSize: leaf,
        clear: { u: clearU, v: interval(floor, plus(floor, clear.height)) },
        clearWidth: clear.width, clearHeight: clear.height,
        frameOpening: { u: frameU, v: frameV },
        leaf: { u: leafU, v: leafV },
        gaps: { top: gap, sides: gap, bottom: bottomGap },
        underLeaf: area(leaf.width, bottomGap),
        threshold: floor > 0 ? { kind: 'raised', height: floor } : { kind: 'cut_out' },
        hand: handOf({ hingesAtLowerU, opensOutward }),
        swing: leafSwing({
            side: opensOutward ? 'outside' : 'inside',
            pivot: hingesAtLowerU ? leafU.from : leafU.to,
            latchAt: hingesAtLowerU ? 'higher_u' : 'lower_u',
            leafWidth: leaf.width, leafThickness: thickness, v: leafV,
        }),
        ...(input.pane && { paneArea: area(input.pane.width, input.pane.height) }),
    };
    return { door, problems };
}

/** Low u is on the left as seen from inside, so on the right as seen from outside, which is the pull side of an outward leaf. */
function handOf({ hingesAtLowerU, opensOutward }: { readonly hingesAtLowerU: boolean; readonly opensOutward: boolean }): Hand {
    return { hand: hingesAtLowerU === opensOutward ? 'right-hand' : 'left-hand', seenFrom: opensOutward ? 'outside' : 'inside' };
}
