import { boxOnWall, extent, insideRun, interval, neighbours, overlap, placeFrom, type Box, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { minus, plus, ticks, times, zero, type Length } from '../../core/length.js';
import type { BenchInput } from './bench-input.js';
import type { BenchProblem, BenchProblemDetail } from './bench-problem.js';
import type { BenchRun, RunEnd } from './bench-result.js';

/** A bench with its place in the room. */
export interface PlacedBench {
    readonly bench: BenchInput;
    readonly runs: readonly BenchRun[];
    /** The tier it stands in front of, and the tiers behind that one, nearest first. */
    readonly tiersBehind: readonly PlacedBench[];
    readonly heights: BenchHeights;
}

/** Heights over the finished floor. */
export interface BenchHeights {
    readonly buildUp: Length;
    readonly ledgerTop: Length;
    readonly railUnderside: Length;
}

/**
 * Ledger top = bench top less slat and cross-bearer, from the finished floor.
 * With a 3/4" slat and a 1 1/2" bearer, tops at 18" and 37" give 15 3/4" and 34 3/4". Common practice, no source.
 */
export function benchHeights(top: Length, slatThickness: Length, bearerThickness: Length, railWidth: Length): BenchHeights {
    const buildUp = plus(slatThickness, bearerThickness);
    const ledgerTop = minus(top, buildUp);
    return { buildUp, ledgerTop, railUnderside: minus(ledgerTop, railWidth) };
}

/** Mutable while the runs are being found. */
interface Ends { left: RunEnd; right: RunEnd }

/**
 * Finds where a bench stands.
 * @param tiersBehind placed already, nearest first
 * @returns `undefined` when the statements do not say where it stands; the problems then say what is missing
 */
export function placeBench(bench: BenchInput, tiersBehind: readonly PlacedBench[], inside: InsideSize, problems: BenchProblem[]): PlacedBench | undefined {
    const report = (detail: BenchProblemDetail): undefined => void problems.push({ bench: bench.name, ...detail });
    const wallProblem = wrongWalls(bench.walls);
    if (wallProblem) return report(wallProblem);

    const { build } = bench;
    const heights = benchHeights(bench.top, build.slat.section.thickness, build.bearer.section.thickness, build.rail.section.width);
    const v = interval(heights.railUnderside, bench.top);
    const runs: BenchRun[] = [];
    for (const [i, wall] of bench.walls.entries()) {
        const run = insideRun(wall, inside);
        const tier = tierOnWall(tiersBehind, wall);
        const back = tier ? minus(tier.run.w.to, bench.overlap) : build.wallGap;
        const w = interval(back, plus(back, bench.depth));
        const ends: Ends = { left: 'wall', right: 'wall' };
        let u: Interval;
        if (i === 0 && (bench.length !== undefined || bench.from)) {
            const stated = statedStretch(bench, inside);
            if ('kind' in stated) return report(stated);
            u = stated;
            if (u.from > build.wallGap) ends.left = 'free';
            if (minus(run, u.to) > build.wallGap) ends.right = 'free';
        } else {
            u = trim(wall, w, interval(build.wallGap, minus(run, build.wallGap)), ends, runs, tiersBehind, bench.overlap, inside);
            if (i > 0 && ends.left !== 'own_run' && ends.right !== 'own_run') {
                report({ kind: 'runs-do-not-meet', first: bench.walls[0], second: wall });
            }
        }
        const least = times(plus(build.bearer.section.width, build.ledger.section.thickness), 2);
        if (extent(u) < least) {
            report({ kind: 'run-too-short', wall, length: extent(u), least });
            continue;
        }
        runs.push({
            wall, u, w, box: boxOnWall(wall, u, v, w, inside), isThrough: i === 0, ends,
            inFrontOf: tier && { bench: tier.placed.bench.name, run: tier.index },
        });
    }
    const [first] = runs;
    if (!first) return undefined;
    for (const run of runs) reportOutside(run, bench, inside, report);
    return { bench, runs, tiersBehind, heights };
}

function wrongWalls(walls: readonly Wall[]): BenchProblemDetail | undefined {
    const twice = walls.find((wall, i) => walls.indexOf(wall) !== i);
    if (twice) return { kind: 'wall-named-twice', wall: twice };
    if (walls.length > 3) return { kind: 'too-many-walls', walls };
    const [first, second] = walls;
    if (walls.length === 2 && first && second && neighbours[first].left !== second && neighbours[first].right !== second) {
        return { kind: 'walls-not-adjacent', walls };
    }
    return undefined;
}

/** The nearest of the tiers behind that has a run on this wall. */
function tierOnWall(tiersBehind: readonly PlacedBench[], wall: Wall): { readonly placed: PlacedBench; readonly run: BenchRun; readonly index: number } | undefined {
    for (const placed of tiersBehind) {
        const index = placed.runs.findIndex(run => run.wall === wall);
        const run = placed.runs[index];
        if (run) return { placed, run, index };
    }
    return undefined;
}

/** The first run when the job states its length or its place. */
function statedStretch(bench: BenchInput, inside: InsideSize): Interval | BenchProblemDetail {
    const [wall, second] = bench.walls;
    const run = insideRun(wall, inside);
    const gap = bench.build.wallGap;
    const whole = minus(run, times(gap, 2));
    if (bench.from) {
        const size = bench.length ?? minus(run, plus(bench.from.distance, gap));
        return placeFrom(wall, bench.from.wall, bench.from.distance, size, inside)
            ?? { kind: 'place-not-neighbour', wall, from: bench.from.wall, neighbours: [neighbours[wall].left, neighbours[wall].right] };
    }
    const length = bench.length ?? whole;
    if (length === whole) return interval(gap, minus(run, gap));
    if (length === run) return interval(zero, run);
    // Without a place an L or U can only start in the corner it turns.
    const start = second === undefined ? undefined : placeFrom(wall, second, gap, length, inside);
    return start ?? { kind: 'place-missing', wall, length, free: minus(whole, length) };
}

/** Shortens a wall-to-wall stretch to what the own runs placed before and the tiers behind leave free. */
function trim(
    wall: Wall, w: Interval, whole: Interval, ends: Ends, own: readonly BenchRun[], tiersBehind: readonly PlacedBench[], reach: Length, inside: InsideSize,
): Interval {
    const anyHeight = interval(zero, ticks(1));
    const plan = boxOnWall(wall, whole, anyHeight, w, inside);
    const run = insideRun(wall, inside);
    const onPlan = (box: Box): Box => ({ ...box, z: anyHeight });
    let { from, to } = whole;
    const cut = (other: BenchRun, front: Length, kind: RunEnd): void => {
        if (!overlap(plan, onPlan(other.box))) return;
        if (other.wall === neighbours[wall].left && front > from) [from, ends.left] = [front, kind];
        if (other.wall === neighbours[wall].right && minus(run, front) < to) [to, ends.right] = [minus(run, front), kind];
    };
    for (const tier of tiersBehind) for (const other of tier.runs) cut(other, minus(other.w.to, reach), 'tier');
    for (const other of own) cut(other, other.w.to, 'own_run');
    return interval(from, to);
}

function reportOutside(run: BenchRun, bench: BenchInput, inside: InsideSize, report: (detail: BenchProblemDetail) => void): void {
    const { wall } = run;
    const sides: readonly (readonly [Wall, Length])[] = [
        ['left', minus(zero, run.box.x.from)], ['right', minus(run.box.x.to, inside.width)],
        ['front', minus(zero, run.box.y.from)], ['back', minus(run.box.y.to, inside.depth)],
    ];
    for (const [side, by] of sides) if (by > 0) report({ kind: 'outside-room', side, by, wall });
    if (!run.isThrough) return;
    const above = minus(bench.top, inside.height);
    if (above > 0) report({ kind: 'outside-room', side: 'ceiling', by: above, wall });
}

