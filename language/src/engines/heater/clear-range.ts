import { extent, insideRun, neighbours, type InsideSize, type Wall } from '../../core/geometry.js';
import { minus, ticks, zero, type Length } from '../../core/length.js';
import type { LengthRange } from '../../vocabulary/values.js';
import type { Thing } from '../fittings/things.js';
import { onWall } from '../fittings/wall-frame.js';
import type { PlacedHeater } from './casing.js';
import { figureFor, separations, type ClearanceFigures } from './clearances.js';

export interface ClearRange {
    /** The neighbouring wall the distances are measured from, lining to the near side of the casing. */
    readonly from: Wall;
    /** Every stretch of positions that keeps all clearances which a move along the wall can keep, nearest the named wall first; both ends count. */
    readonly ranges: readonly LengthRange[];
    /** The position in `ranges` nearest to where the heater is now; on a tie the one nearer the named wall. */
    readonly nearest?: Length;
    /** Things no position along this wall clears, such as a ceiling that is too low. */
    readonly never: readonly Thing[];
    /** Things a figure is missing for, so that they do not limit the range. */
    readonly notJudged: readonly Thing[];
}

/** Positions of the low-u side of the casing that are forbidden; both ends are allowed, as equal passes. */
interface Forbidden { readonly above: number; readonly below: number }

/**
 * Where along its wall the heater keeps its clearances to things that stay where they are. Exact: every thing that is not already clear in front, above or below
 * forbids one open stretch, its own extent grown by the side figure and the width of the casing; what is left over is the answer.
 * @param from a neighbouring wall of the heater's wall
 * @returns `undefined` when `from` is not one
 */
export function rangeThatClears(heater: PlacedHeater, from: Wall, things: readonly Thing[], figures: ClearanceFigures, inside: InsideSize): ClearRange | undefined {
    const ends = neighbours[heater.wall];
    if (from !== ends.left && from !== ends.right) return undefined;
    const width = extent(heater.onWall.u);
    const last = minus(insideRun(heater.wall, inside), width);
    const forbidden: Forbidden[] = [];
    const never: Thing[] = [];
    const notJudged: Thing[] = [];
    for (const thing of things) {
        const isOwnWall = thing.kind === 'wall' && thing.name === heater.wall;
        // Whether a floor burns is not a matter of where along the wall the heater hangs.
        if (isOwnWall || thing.kind === 'floor' || thing.kind === 'heater' || thing.belongsTo === heater.name) continue;
        const solid = onWall(heater.wall, thing.box, inside);
        const others = separations(heater.onWall, solid).filter(({ direction }) => direction !== 'side')
            .map(({ direction, measured }) => ({ measured, required: figures[figureFor(direction, thing, figures)] }));
        if (others.some(({ measured, required }) => required && measured >= required.value)) continue;
        if (others.some(({ required }) => !required)) { notJudged.push(thing); continue; }
        const side = figures[figureFor('side', thing, figures)];
        if (!side) notJudged.push(thing);
        const reach = side?.value ?? zero;
        const stretch: Forbidden = { above: solid.u.from - width - reach, below: solid.u.to + reach };
        if (stretch.above < 0 && stretch.below > last) never.push(thing); else forbidden.push(stretch);
    }
    const free = last < 0 ? [] : leftOver(forbidden, last);
    const ranges = from === ends.left ? free : free.map(range => ({ from: minus(last, range.to), to: minus(last, range.from) })).reverse();
    const now = from === ends.left ? heater.onWall.u.from : minus(last, heater.onWall.u.from);
    const nearest = nearestIn(ranges, now);
    return { from, ranges, never, notJudged, ...(nearest !== undefined && { nearest }) };
}

/** What the forbidden open stretches leave of `[0, last]`, as closed stretches; a single position left between two of them counts. */
function leftOver(forbidden: readonly Forbidden[], last: Length): LengthRange[] {
    const ranges: LengthRange[] = [];
    let start: number = 0;
    for (const { above, below } of [...forbidden].sort((a, b) => a.above - b.above || a.below - b.below)) {
        if (below <= above || below <= start) continue;
        if (above >= start) ranges.push({ from: ticks(start), to: ticks(Math.min(above, last)) });
        start = below;
        if (start > last) return ranges.filter(range => range.from <= range.to);
    }
    ranges.push({ from: ticks(start), to: last });
    return ranges.filter(range => range.from <= range.to);
}

function nearestIn(ranges: readonly LengthRange[], now: Length): Length | undefined {
    let best: Length | undefined;
    for (const { from, to } of ranges) {
        const candidate = now < from ? from : now > to ? to : now;
        if (best === undefined || Math.abs(candidate - now) < Math.abs(best - now)) best = candidate;
    }
    return best;
}
