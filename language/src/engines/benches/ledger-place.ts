import { boxOnWall, extent, insideRun, interval, intervalsOverlap, neighbours, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { half, inches, longest, minus, plus, shortest, times, zero, type Length } from '../../core/length.js';
import type { WallOpening } from './bench-input.js';
import { sectionsOf } from './bench-sections.js';
import type { BenchLedger, BenchRun } from './bench-result.js';
import type { PlacedBench } from './run-plan.js';

/** Shortest piece of back ledger worth fixing beside an opening: 6". Common practice, no source. */
export const shortestLedger: Length = inches(6);

export interface LedgerDraft extends Omit<BenchLedger, 'mark'> {
    /** A ledger an opening takes is built as a box leg: the same piece, standing on two posts. */
    readonly isBoxLeg: boolean;
    /** Where rails begin, along the wall of the run. */
    readonly innerFace: Length;
}

/** Whether an opening takes the place of a ledger on its wall. */
const isTaken = (openings: readonly WallOpening[], wall: Wall, u: Interval, v: Interval): boolean =>
    openings.some(opening => opening.wall === wall && intervalsOverlap(opening.u, u) && intervalsOverlap(opening.v, v));

/** The ledger on the wall a run ends at, or the box leg in its place. */
export function placeEndLedger(placed: PlacedBench, runIndex: number, run: BenchRun, side: 'left' | 'right', openings: readonly WallOpening[], inside: InsideSize): LedgerDraft {
    const { thickness } = placed.bench.build.ledger.section;
    const { ledgerHeights: v, frontFace } = sectionsOf(placed, run);
    const wall = neighbours[run.wall][side];
    const length = insideRun(wall, inside);
    const w = interval(run.w.from, frontFace);
    // Seen from inside, the wall left of a run ends at the run's wall with its right end.
    const u = side === 'left' ? interval(minus(length, w.to), minus(length, w.from)) : w;
    const isBoxLeg = isTaken(openings, wall, u, v);
    const end = side === 'left' ? run.u.from : minus(insideRun(run.wall, inside), run.u.to);
    const off = isBoxLeg ? longest(zero, end) : zero;
    const reach = interval(off, plus(off, thickness));
    const inner = longest(reach.to, end);
    return {
        run: runIndex, holds: side === 'left' ? 'left end' : 'right end', wall, u, v, box: boxOnWall(wall, u, v, reach, inside), isBoxLeg,
        innerFace: side === 'left' ? inner : minus(insideRun(run.wall, inside), inner),
    };
}

/**
 * The back ledger of a run in the pieces the openings leave, and the stretches between that need a rear rail on legs.
 */
export function placeBackLedger(
    placed: PlacedBench, runIndex: number, run: BenchRun, openings: readonly WallOpening[], inside: InsideSize,
): { readonly ledgers: readonly LedgerDraft[]; readonly bridged: readonly Interval[] } {
    const { thickness } = placed.bench.build.ledger.section;
    const { ledgerHeights: v } = sectionsOf(placed, run);
    const taken = openings
        .filter(opening => isTaken([opening], run.wall, run.u, v))
        .map(opening => roomForLegs(interval(longest(opening.u.from, run.u.from), shortest(opening.u.to, run.u.to)), run.u, times(placed.bench.build.leg.section.thickness, 2)))
        .sort((a, b) => a.from - b.from);
    const free: Interval[] = [];
    let from = run.u.from;
    for (const opening of [...taken, interval(run.u.to, run.u.to)]) {
        if (minus(opening.from, from) >= shortestLedger) free.push(interval(from, opening.from));
        from = longest(from, opening.to);
    }
    const bridged: Interval[] = [];
    from = run.u.from;
    for (const piece of [...free, interval(run.u.to, run.u.to)]) {
        if (piece.from > from) bridged.push(interval(from, piece.from));
        from = piece.to;
    }
    const ledgers = free.map((u): LedgerDraft => ({
        run: runIndex, holds: 'back', wall: run.wall, u, v, box: boxOnWall(run.wall, u, v, interval(zero, thickness), inside), isBoxLeg: false, innerFace: u.from,
    }));
    return { ledgers, bridged };
}

/** Widens a stretch so that a leg stands under each end of the rail that bridges it, within the run. */
function roomForLegs(stretch: Interval, run: Interval, least: Length): Interval {
    const missing = minus(least, extent(stretch));
    if (missing <= 0) return stretch;
    const from = minus(stretch.from, half(missing));
    if (from < run.from) return interval(run.from, plus(run.from, least));
    return plus(from, least) > run.to ? interval(minus(run.to, least), run.to) : interval(from, plus(from, least));
}
