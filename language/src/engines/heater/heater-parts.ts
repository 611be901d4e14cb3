import { extent, type Interval } from '../../core/geometry.js';
import { inches, minus, times, type Length } from '../../core/length.js';
import { markOf, type BoardStock } from '../openings/opening-parts.js';
import { nominalFor } from '../parts/lumber.js';
import { squareEnds, type Part } from '../parts/part.js';
import type { Guard, PlacedHeater } from './casing.js';

/** Greatest gap between the rails of a guard. Common practice, no source: a hand does not pass between them without meaning to. */
export const greatestGuardGap: Length = inches(3);

/** How a guard is built: rails lie flat against posts, their width upright, the lowest and the highest flush. */
export interface GuardBuild {
    /** Rows of rails, one over the other; at least two. */
    readonly rows: number;
    readonly parts: readonly Part[];
}

/**
 * The wood of a guard. Front rails run the whole width of the guard; side rails run from the lining to the inside of the front rails; two posts stand
 * in the front corners and two at the wall, as high as the guard.
 * @param guard in the frame of the heater's wall, from the underside of the casing to the top of the stones
 * @param stock its width is the height of a rail
 * @param wallRun inside length of the heater's wall
 * @returns nothing when the guard is lower than two rails or shallower than a rail is thick
 */
export function guardBuild(heater: Pick<PlacedHeater, 'name' | 'wall'>, guard: Pick<Guard, 'onWall'>, stock: BoardStock, wallRun: Length): GuardBuild | undefined {
    const { u, v, w } = guard.onWall;
    const height = extent(v);
    const { thickness, width } = stock.section;
    const side = minus(extent(w), thickness);
    if (height < times(width, 2) || side <= 0) return undefined;
    // Smallest number of rows whose equal gaps are no wider than the limit: n rails and n - 1 gaps fill the height.
    const rows = Math.max(2, Math.ceil((height + greatestGuardGap) / (width + greatestGuardGap)));
    const nominal = nominalFor(stock.section);
    const shared = { material: { stock: stock.stock }, section: stock.section, ends: squareEnds, notches: [], cut: 'shop', ...(nominal && { nominal }) } as const;
    const at = `of the guard of ${heater.name}, ${heater.wall} wall`;
    const place = { wall: heater.wall, stretches: [u], run: wallRun, between: 'linings' } as const;
    return {
        rows,
        parts: [
            { mark: markOf(heater.name, 'GUARD-RAIL-1'), what: 'guard rail, front', count: rows, length: extent(u), goesTo: `front ${at}, one a row`, place, ...shared },
            { mark: markOf(heater.name, 'GUARD-RAIL-2'), what: 'guard rail, side', count: 2 * rows, length: side, goesTo: `sides ${at}, two a row`, ...shared },
            { mark: markOf(heater.name, 'GUARD-POST-1'), what: 'guard post', count: 4, length: height, goesTo: `corners ${at}, two at the wall and two in front`, ...shared },
        ],
    };
}

/**
 * The blocking the heater hangs on, boards side by side between the studs behind the lining.
 * @param needed the stretch and the height it has to cover, in the frame of the heater's wall
 * @param wallRun inside length of that wall
 */
export function blockingParts(heater: Pick<PlacedHeater, 'name' | 'wall'>, needed: { readonly u: Interval; readonly v: Interval }, stock: BoardStock, wallRun: Length): readonly Part[] {
    const nominal = nominalFor(stock.section);
    return [{
        mark: markOf(heater.name, 'BLOCKING-1'), what: 'heater blocking', count: Math.max(1, Math.ceil(extent(needed.v) / stock.section.width)), length: extent(needed.u),
        material: { stock: stock.stock }, section: stock.section, ends: squareEnds, notches: [], cut: 'shop', goesTo: `in the panels of the ${heater.wall} wall, behind the lining, for ${heater.name}`,
        place: { wall: heater.wall, stretches: [needed.u], run: wallRun, between: 'linings', heights: needed.v }, ...(nominal && { nominal }),
    }];
}
