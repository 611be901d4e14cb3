import { interval, intervalsOverlap, type InsideSize } from '../../core/geometry.js';
import { half, minus, plus, ticks, zero, type Length } from '../../core/length.js';
import type { PlanBox } from './free-floor.js';

/** A T within a square: arms and base of one width, the base in the middle. */
export interface TShape { readonly square: Length; readonly arm: Length }
export type TStem = 'to_front' | 'to_back' | 'to_left' | 'to_right';
export interface PlacedT { readonly stem: TStem; readonly bar: PlanBox; readonly base: PlanBox }

/**
 * A place for a T-shaped turning space on the free floor, in any of the four positions square to the walls, or nothing. Exact: the leftmost and frontmost place the T can stand
 * in touches something on both axes, so only those whole-tick places are tried.
 */
export function placeT({ square, arm }: TShape, taken: readonly PlanBox[], { width, depth }: InsideSize): PlacedT | undefined {
    if (square > width || square > depth) return undefined;
    for (const stem of ['to_front', 'to_back', 'to_left', 'to_right'] as const) {
        const pieces = piecesAt(stem, square, arm, zero, zero);
        const list = [pieces.bar, pieces.base];
        const xs = starts(zero, minus(width, square), taken.flatMap(({ x }) => list.map(piece => minus(x.to, piece.x.from))));
        const ys = starts(zero, minus(depth, square), taken.flatMap(({ y }) => list.map(piece => minus(y.to, piece.y.from))));
        for (const x of xs) for (const y of ys) {
            const placed = piecesAt(stem, square, arm, x, y);
            if ([placed.bar, placed.base].every(piece => taken.every(box => !(intervalsOverlap(piece.x, box.x) && intervalsOverlap(piece.y, box.y))))) return { stem, ...placed };
        }
    }
    return undefined;
}

const starts = (least: Length, most: Length, edges: readonly Length[]): readonly Length[] => [...new Set([least, ...edges])].filter(at => at >= least && at <= most).sort((a, b) => a - b);

function piecesAt(stem: TStem, square: Length, arm: Length, x: Length, y: Length): { readonly bar: PlanBox; readonly base: PlanBox } {
    const [wholeX, wholeY] = [interval(x, plus(x, square)), interval(y, plus(y, square))];
    const side = half(minus(square, arm));
    const middle = (from: Length): PlanBox['x'] => interval(plus(from, side), plus(from, ticks(side + arm)));
    switch (stem) {
        case 'to_front': return { bar: { x: wholeX, y: interval(minus(wholeY.to, arm), wholeY.to) }, base: { x: middle(x), y: wholeY } };
        case 'to_back': return { bar: { x: wholeX, y: interval(y, plus(y, arm)) }, base: { x: middle(x), y: wholeY } };
        case 'to_left': return { bar: { x: interval(minus(wholeX.to, arm), wholeX.to), y: wholeY }, base: { x: wholeX, y: middle(y) } };
        case 'to_right': return { bar: { x: interval(x, plus(x, arm)), y: wholeY }, base: { x: wholeX, y: middle(y) } };
    }
}
