import { inches, minus, splitEvenly, ticks, times, type Length } from '../../core/length.js';
import { markOf, type BoardStock } from '../openings/opening-parts.js';
import { nominalFor } from '../parts/lumber.js';
import { squareEnds, type Part } from '../parts/part.js';

/** Gap between duckboard slats and distance of the bearers under them. Common practice, no source. */
export const duckboardPractice = { leastGap: inches(0, 3, 8), greatestGap: inches(0, 3, 4), bearerSpacing: inches(16) } as const;

export interface DuckboardInput {
    readonly name: string;
    /** Along the front: the slats run this way. */
    readonly width: Length;
    /** To the back: the bearers run this way. */
    readonly depth: Length;
    readonly slat: BoardStock;
}

export interface DuckboardBuild {
    readonly slats: number;
    /** Equal gaps; `leftOver` (fewer ticks than there are gaps, under a micrometre) is what equal whole-tick gaps do not use up. */
    readonly gap: Length;
    readonly leftOver: Length;
    readonly bearers: number;
    readonly parts: readonly Part[];
}

export type DuckboardProblem =
    | { readonly kind: 'duckboard-too-small'; readonly depth: Length; readonly slat: Length }
    /** No number of slats gives a gap in the usual limits; the nearest depths that do. */
    | { readonly kind: 'no-slat-gap'; readonly depth: Length; readonly nearest: readonly Length[] };

/** Slats with equal gaps, the first and last flush, on bearers of the same stock laid flat. The most slats whose gap is still wide enough are taken. */
export function duckboardBuild({ name, width, depth, slat }: DuckboardInput): { readonly build?: DuckboardBuild; readonly problem?: DuckboardProblem } {
    const { leastGap, greatestGap, bearerSpacing } = duckboardPractice;
    const board = slat.section.width;
    if (board <= 0 || depth < 2 * board || width <= board) return { problem: { kind: 'duckboard-too-small', depth, slat: board } };
    const slats = Math.floor((depth + leastGap) / (board + leastGap));
    const { share: gap, rest: leftOver } = splitEvenly(minus(depth, times(board, slats)), Math.max(1, slats - 1));
    if (slats < 2 || gap > greatestGap || (gap === greatestGap && leftOver > 0)) {
        const withGap = (count: number, each: Length): Length => ticks(count * board + (count - 1) * each);
        return { problem: { kind: 'no-slat-gap', depth, nearest: [withGap(slats, greatestGap), withGap(slats + 1, leastGap)].filter(length => length > 0) } };
    }
    const bearers = Math.max(2, 1 + Math.ceil((width - board) / bearerSpacing));
    const nominal = nominalFor(slat.section);
    const shared = { material: { stock: slat.stock }, section: slat.section, ends: squareEnds, notches: [], cut: 'shop', goesTo: `duckboard ${name}, loose on the floor`, ...(nominal && { nominal }) } as const;
    return {
        build: {
            slats, gap, leftOver, bearers,
            parts: [
                { mark: markOf(name, 'SLAT-1'), what: 'duckboard slat', count: slats, length: width, ...shared },
                { mark: markOf(name, 'BEARER-1'), what: 'duckboard bearer', count: bearers, length: depth, ...shared },
            ],
        },
    };
}
