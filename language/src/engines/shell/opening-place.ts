import { insideRun, neighbours, type InsideSize, type Interval } from '../../core/geometry.js';
import { half, minus, plus, type Length } from '../../core/length.js';
import type { ShellOpening } from './shell-input.js';

/** Where an opening lies on its wall, in the wall's u. */
export interface OpeningPlace {
    readonly clear: Interval;
    /** The whole section with the frame around the opening. */
    readonly section: Interval;
}

/** An opening is placed when it is measured from a wall next to its own; one that is not takes no part in anything. */
export const isPlaced = ({ wall, from }: ShellOpening): boolean => from === neighbours[wall].left || from === neighbours[wall].right;

/** Places an opening and its section from the neighbouring wall it is measured from; from the left one when it names no neighbour. */
export function alongWallOpening(opening: ShellOpening, inside: InsideSize): OpeningPlace {
    const edge = opening.edgeToClear ?? half(minus(opening.sectionWidth, opening.clearWidth));
    const run = insideRun(opening.wall, inside);
    if (opening.from === neighbours[opening.wall].right) {
        const clearTo = minus(run, opening.near);
        const sectionTo = plus(clearTo, edge);
        return { clear: { from: minus(clearTo, opening.clearWidth), to: clearTo }, section: { from: minus(sectionTo, opening.sectionWidth), to: sectionTo } };
    }
    const from = minus(opening.near, edge);
    return { clear: { from: opening.near, to: plus(opening.near, opening.clearWidth) }, section: { from, to: plus(from, opening.sectionWidth) } };
}

/** The distance to write for an opening that a suggestion moves by `change` to the right, as seen from inside. */
export const nearAfterMove = (opening: ShellOpening, change: Length): Length =>
    opening.from === neighbours[opening.wall].right ? minus(opening.near, change) : plus(opening.near, change);
