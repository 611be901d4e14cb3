import { neighbours, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { inches, minus, negate, plus, sum, zero, type Length } from '../../core/length.js';
import type { RunEnd } from './division.js';
import type { CornerName, RunSide, ShellInput, ShellLayer } from './shell-input.js';

/** Lining a corner panel shows beside the strip its neighbour hides. Common practice, no source. */
export const leastCornerLining: Length = inches(3);

/** T: the sum of the layers, never typed in twice. */
export const thicknessOf = (layers: readonly ShellLayer[]): Length => sum(...layers.map(layer => layer.thickness));

export type WallThickness = Readonly<Record<Wall, Length>>;

/** Whether a wall runs through at one of its ends, as seen from inside. */
export function runsThrough(input: Pick<ShellInput, 'corners' | 'system'>, wall: Wall, end: RunSide): boolean {
    switch (input.corners) {
        case 'front_and_back': return wall === 'front' || wall === 'back';
        case 'sides': return wall === 'left' || wall === 'right';
        case 'pinwheel': return end === (input.system.pinwheelThroughAt ?? 'left');
    }
}

/** The corner at one end of a wall, as seen from inside. */
export function cornerAt(wall: Wall, end: RunSide): CornerName {
    const other = neighbours[wall][end];
    const depthWall = wall === 'front' || wall === 'back' ? wall : other === 'front' ? 'front' : 'back';
    const sideWall = wall === 'left' || wall === 'right' ? wall : other === 'left' ? 'left' : 'right';
    return `${depthWall}_${sideWall}`;
}

/** Outside length of a wall's face. */
export const outsideLength = (input: Pick<ShellInput, 'width' | 'depth'>, wall: Wall): Length => wall === 'front' || wall === 'back' ? input.width : input.depth;

/** Lining to lining; the height is from the finished floor to the ceiling lining. */
export function insideSize(input: Pick<ShellInput, 'width' | 'depth' | 'height'>, thickness: WallThickness, ceilingThickness: Length): InsideSize {
    return {
        width: minus(input.width, plus(thickness.left, thickness.right)),
        depth: minus(input.depth, plus(thickness.front, thickness.back)),
        height: minus(input.height, ceilingThickness),
    };
}

/** What limits an end of a run: a through corner hides T of its neighbour and keeps T + 3" wide. */
export function runEnd(isThrough: boolean, neighbourThickness: Length): RunEnd {
    return isThrough ? { covered: neighbourThickness, least: plus(neighbourThickness, leastCornerLining) } : { covered: zero, least: zero };
}

export interface WallRun {
    /** In the wall's u, which is zero at the left inside corner: a through end lies T beyond it. */
    readonly interval: Interval;
    readonly left: RunEnd;
    readonly right: RunEnd;
    readonly runsThrough: Readonly<Record<RunSide, boolean>>;
}

/** The stretch of wall its own panels have to fill: the full outside dimension where it runs through, else up to the neighbour's lining. */
export function wallRun(input: Pick<ShellInput, 'width' | 'depth' | 'corners' | 'system'>, wall: Wall, thickness: WallThickness): WallRun {
    const left = thickness[neighbours[wall].left];
    const right = thickness[neighbours[wall].right];
    const through = { left: runsThrough(input, wall, 'left'), right: runsThrough(input, wall, 'right') };
    const inside = minus(outsideLength(input, wall), plus(left, right));
    return {
        interval: { from: through.left ? negate(left) : zero, to: through.right ? plus(inside, right) : inside },
        left: runEnd(through.left, left), right: runEnd(through.right, right), runsThrough: through,
    };
}
