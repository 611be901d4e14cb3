import { boxOnWall, interval, intervalsOverlap, overlap, type Box, type InsideSize, type Interval } from '../../core/geometry.js';
import { minus, plus, ticks, zero, type Length } from '../../core/length.js';
import { commonClimb, type BenchesInput } from './bench-input.js';
import type { BenchProblem } from './bench-problem.js';
import type { BenchLayout } from './bench-result.js';
import type { PlacedBench } from './run-plan.js';

/** What is wrong between benches, openings, kept-clear spaces and the floor once every bench has its place. */
export function checkBenches(placed: readonly PlacedBench[], layouts: readonly BenchLayout[], input: BenchesInput): readonly BenchProblem[] {
    return [
        ...overlaps(placed),
        ...placed.flatMap(bench => [...acrossOpenings(bench, input), ...inKeepClear(bench, input)]),
        ...layouts.flatMap(layout => [...legs(layout, placed, input), ...climb(layout, input.climbLimit ?? commonClimb)]),
    ];
}

const shared = (a: Box, b: Box): Box => {
    const common = (one: Interval, two: Interval): Interval => interval(Math.max(one.from, two.from) as Length, Math.min(one.to, two.to) as Length);
    return { x: common(a.x, b.x), y: common(a.y, b.y), z: common(a.z, b.z) };
};

/** One problem for each pair of benches, on the lower one, which is the one that gives way. */
function overlaps(placed: readonly PlacedBench[]): readonly BenchProblem[] {
    const problems: BenchProblem[] = [];
    for (const [i, a] of placed.entries()) {
        for (const b of placed.slice(i)) {
            const pair = a.runs.flatMap((one, k) => (a === b ? a.runs.slice(k + 1) : b.runs).filter(two => overlap(one.box, two.box)).map(two => shared(one.box, two.box)))[0];
            if (!pair) continue;
            const [lower, upper] = a.bench.top < b.bench.top ? [a, b] : [b, a];
            problems.push({ bench: lower.bench.name, kind: 'tiers-overlap', other: upper.bench.name, shared: pair });
        }
    }
    return problems;
}

/**
 * A bench crosses a window or vent that its slats, bearers or rails stand before or end at; a door it crosses even when only air and legs are
 * in the doorway, since no one gets past.
 */
function acrossOpenings({ bench, runs }: PlacedBench, { openings, inside }: BenchesInput): readonly BenchProblem[] {
    const reach = interval(zero, plus(bench.build.wallGap, ticks(1)));
    return openings.flatMap((opening): readonly BenchProblem[] => {
        const hole = boxOnWall(opening.wall, opening.u, opening.v, reach, inside);
        for (const run of runs) {
            const body: Box = opening.kind === 'door' ? { ...run.box, z: interval(zero, run.box.z.to) } : run.box;
            if (!overlap(body, hole)) continue;
            const { u, v } = inWallFrame(shared(body, hole), opening.wall, inside);
            return [{ bench: bench.name, kind: 'across-opening', opening: opening.name, openingKind: opening.kind, wall: opening.wall, u, v }];
        }
        return [];
    });
}

function inWallFrame(box: Box, wall: BenchesInput['openings'][number]['wall'], inside: InsideSize): { readonly u: Interval; readonly v: Interval } {
    switch (wall) {
        case 'back': return { u: box.x, v: box.z };
        case 'left': return { u: box.y, v: box.z };
        case 'front': return { u: interval(minus(inside.width, box.x.to), minus(inside.width, box.x.from)), v: box.z };
        case 'right': return { u: interval(minus(inside.depth, box.y.to), minus(inside.depth, box.y.from)), v: box.z };
    }
}

function inKeepClear({ bench, runs }: PlacedBench, { keepClear }: BenchesInput): readonly BenchProblem[] {
    return keepClear.flatMap((zone): readonly BenchProblem[] => {
        const run = runs.find(({ box }) => overlap(box, zone.box));
        return run ? [{ bench: bench.name, kind: 'in-keep-clear', zone: zone.name, shared: shared(run.box, zone.box) }] : [];
    });
}

function legs(layout: BenchLayout, placed: readonly PlacedBench[], { floorObstacles }: BenchesInput): readonly BenchProblem[] {
    return layout.legs.flatMap((leg): readonly BenchProblem[] => {
        const problems: BenchProblem[] = [];
        for (const obstacle of floorObstacles) {
            if (!intervalsOverlap(leg.box.x, obstacle.x) || !intervalsOverlap(leg.box.y, obstacle.y)) continue;
            problems.push({ bench: layout.name, kind: 'leg-on-obstacle', mark: leg.mark, obstacle: obstacle.name, x: leg.box.x, y: leg.box.y });
        }
        for (const other of placed) {
            if (other.bench.name === layout.name || other.bench.name === leg.passes) continue;
            if (other.bench.top <= layout.railUnderside && other.runs.some(run => overlap(run.box, leg.box))) {
                problems.push({ bench: layout.name, kind: 'leg-through-bench', mark: leg.mark, other: other.bench.name });
            }
        }
        return problems;
    });
}

function climb({ name, comfort }: BenchLayout, limit: Length): readonly BenchProblem[] {
    return comfort.rise > limit ? [{ bench: name, kind: 'climb-too-high', from: comfort.climbFrom, rise: comfort.rise, limit }] : [];
}
