import { extent, type Box, type InsideSize, type Interval } from '../../core/geometry.js';
import { inches, minus, zero, type Length } from '../../core/length.js';
import type { BenchComfort } from './bench-result.js';
import type { PlacedBench } from './run-plan.js';

/** Length of bench for one person sitting: 24" (600 mm). Common practice, no source. */
export const seatLength: Length = inches(24);
/** Length of bench for one person lying: 72". Common practice, no source. */
export const lyingLength: Length = inches(72);

/** What a bather finds on this bench among the others of the room. */
export function benchComfort(placed: PlacedBench, all: readonly PlacedBench[], inside: InsideSize): BenchComfort {
    const { bench, runs, heights } = placed;
    const step = stepBelow(placed, all);
    const stood = all.flatMap(other => other.runs
        .filter(run => run.inFrontOf?.bench === bench.name)
        .map(run => ({ top: other.bench.top, depth: minus(run.w.to, runs[run.inFrontOf?.run ?? 0]?.w.to ?? zero) })));
    return {
        headClearance: minus(inside.height, bench.top),
        rise: minus(bench.top, step?.bench.top ?? zero),
        climbFrom: step?.bench.name,
        seats: places(runs, seatLength),
        lyingPlaces: places(runs, lyingLength),
        footDepth: stood.length === 0 ? undefined : Math.min(...stood.map(({ depth }) => depth)) as Length,
        heelClearance: minus(heights.railUnderside, stood.reduce<Length>((top, tier) => tier.top > top ? tier.top : top, zero)),
    };
}

const places = (runs: PlacedBench['runs'], length: Length): number => runs.reduce((count, run) => count + Math.floor(extent(run.u) / length), 0);

/** The highest lower bench that touches this one on plan; of equally high ones the first written. */
function stepBelow(placed: PlacedBench, all: readonly PlacedBench[]): PlacedBench | undefined {
    let step: PlacedBench | undefined;
    for (const other of all) {
        if (other.bench.top >= placed.bench.top || (step && step.bench.top >= other.bench.top)) continue;
        if (other.runs.some(run => placed.runs.some(upper => meetOnPlan(run.box, upper.box)))) step = other;
    }
    return step;
}

/** Overlapping or touching along an edge; a corner alone is no step. */
function meetOnPlan(a: Box, b: Box): boolean {
    const shared = (one: Interval, two: Interval): number => Math.min(one.to, two.to) - Math.max(one.from, two.from);
    const [x, y] = [shared(a.x, b.x), shared(a.y, b.y)];
    return x >= 0 && y >= 0 && (x > 0 || y > 0);
}
