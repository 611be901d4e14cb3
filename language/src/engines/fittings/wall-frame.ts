import { alongWall, boxOnWall, type Box, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { minus } from '../../core/length.js';

/** A box in the frame of one wall seen from inside: u left to right, v up from the finished floor, w from the lining into the room. */
export interface WallBox {
    readonly u: Interval;
    readonly v: Interval;
    readonly w: Interval;
}

export const wallBox = (u: Interval, v: Interval, w: Interval): WallBox => ({ u, v, w });

export const inRoom = (wall: Wall, { u, v, w }: WallBox, inside: InsideSize): Box => boxOnWall(wall, u, v, w, inside);

/** The inverse of `inRoom`: a box of the room frame as seen from inside, facing `wall`. */
export function onWall(wall: Wall, { x, y, z }: Box, inside: InsideSize): WallBox {
    // Turning a stretch end for end is its own inverse, so `alongWall` serves both ways.
    const u = alongWall(wall, wall === 'front' || wall === 'back' ? x : y, inside);
    switch (wall) {
        case 'front': return { u, v: z, w: y };
        case 'left': return { u, v: z, w: x };
        case 'back': return { u, v: z, w: { from: minus(inside.depth, y.to), to: minus(inside.depth, y.from) } };
        case 'right': return { u, v: z, w: { from: minus(inside.width, x.to), to: minus(inside.width, x.from) } };
    }
}
