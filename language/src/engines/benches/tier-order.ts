import { interval, intervalsOverlap, insideRun, placeFrom, type InsideSize, type Interval } from '../../core/geometry.js';
import { minus, zero } from '../../core/length.js';
import type { BenchInput } from './bench-input.js';
import type { BenchProblem } from './bench-problem.js';

/** Which tier each bench stands in front of, by name. Always to a higher bench, so there is no cycle in it. */
export interface TierOrder {
    readonly behind: ReadonlyMap<string, string>;
    readonly problems: readonly BenchProblem[];
}

/**
 * Resolves `in_front_of`. A statement that cannot be followed is a problem, and the bench then stands where it would without it: in front of
 * the next higher bench on the same wall, so that one wrong word does not bring a second finding about overlapping benches.
 */
export function resolveTiers(benches: readonly BenchInput[], inside: InsideSize): TierOrder {
    const byName = new Map(benches.map(bench => [bench.name, bench]));
    const behind = new Map<string, string>();
    const problems: BenchProblem[] = [];
    const cycles = findCycles(benches);
    for (const chain of cycles) problems.push({ bench: chain[0] ?? '', kind: 'in-front-of-cycle', chain });
    const inCycle = new Set(cycles.flat());

    for (const bench of benches) {
        const stated = inCycle.has(bench.name) ? undefined : statedTier(bench, byName, benches, problems);
        const tier = stated ?? nextHigher(bench, benches, inside);
        if (tier) behind.set(bench.name, tier.name);
    }
    return { behind, problems };
}

function statedTier(bench: BenchInput, byName: ReadonlyMap<string, BenchInput>, benches: readonly BenchInput[], problems: BenchProblem[]): BenchInput | undefined {
    if (bench.inFrontOf === undefined) return undefined;
    const tier = byName.get(bench.inFrontOf);
    if (!tier) {
        problems.push({ bench: bench.name, kind: 'in-front-of-unknown', named: bench.inFrontOf, known: benches.filter(other => other !== bench).map(other => other.name) });
        return undefined;
    }
    if (tier.top <= bench.top) {
        problems.push({ bench: bench.name, kind: 'in-front-of-not-higher', behind: tier.name, top: bench.top, topBehind: tier.top });
        return undefined;
    }
    if (!tier.walls.some(wall => bench.walls.includes(wall))) {
        problems.push({ bench: bench.name, kind: 'in-front-of-other-wall', behind: tier.name, walls: bench.walls, wallsBehind: tier.walls });
        return undefined;
    }
    return tier;
}

/** The lowest of the higher benches that share a stretch of a wall with this one; of equally low ones the first written. */
function nextHigher(bench: BenchInput, benches: readonly BenchInput[], inside: InsideSize): BenchInput | undefined {
    let next: BenchInput | undefined;
    for (const other of benches) {
        if (other.top <= bench.top || (next && next.top <= other.top)) continue;
        if (bench.walls.some(wall => other.walls.includes(wall) && intervalsOverlap(stretch(bench, wall, inside), stretch(other, wall, inside)))) next = other;
    }
    return next;
}

/** The stretch of a wall a bench takes at most. */
function stretch(bench: BenchInput, wall: BenchInput['walls'][number], inside: InsideSize): Interval {
    const run = insideRun(wall, inside);
    const whole = interval(zero, run);
    if (wall !== bench.walls[0] || !bench.from) return whole;
    return placeFrom(wall, bench.from.wall, bench.from.distance, bench.length ?? minus(run, bench.from.distance), inside) ?? whole;
}

/** Cycles of the stated order, each starting at the bench written first. */
function findCycles(benches: readonly BenchInput[]): readonly (readonly string[])[] {
    const next = new Map(benches.map(bench => [bench.name, bench.inFrontOf]));
    const found: string[][] = [];
    for (const { name } of benches) {
        if (found.some(chain => chain.includes(name))) continue;
        const chain: string[] = [];
        let at: string | undefined = name;
        while (at !== undefined && !chain.includes(at)) {
            chain.push(at);
            at = next.get(at);
        }
        if (at === name) found.push(chain);
    }
    return found;
}
