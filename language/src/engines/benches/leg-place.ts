import { interval, intervalsOverlap, neighbours, type Interval, type Wall } from '../../core/geometry.js';
import { longest, minus, plus, zero, type Length } from '../../core/length.js';
import type { Notch, Section } from '../parts/part.js';
import { sectionsOf } from './bench-sections.js';
import type { BenchRun } from './bench-result.js';
import type { PlacedBench } from './run-plan.js';

/** A leg before it has its mark and its floor. */
export interface LegDraft {
    readonly run: number;
    readonly row: 'rear' | 'front';
    readonly isBoxLeg: boolean;
    readonly u: Interval;
    readonly w: Interval;
    /** Height of its head over the finished floor. */
    readonly head: Length;
    readonly notches: readonly Notch[];
    readonly column: Section;
    /** Run of the tier in front whose rear rail rests in its notch. */
    readonly carries: { readonly bench: string; readonly run: number } | undefined;
    /** Lower tier that passes through its notch. */
    readonly passes: string | undefined;
}

/** The run of a lower tier that stands before a run. */
export interface RunInFront {
    readonly placed: PlacedBench;
    readonly run: BenchRun;
    readonly index: number;
}

/** The notch for the tier in front leaves nothing of the leg. */
export interface NotchedAway {
    readonly inFront: RunInFront;
    readonly notch: Length;
}

/**
 * A leg under the front rail. Where a lower tier stands in front it is notched from the underside of that tier's rear rail up to its TOP, so
 * that rail, bearers and slats pass, and set so far forward that the lower rail rests in the notch over its full thickness and the upper
 * rail on the head over its full thickness; where the leg is too narrow for both it stands flush behind the front and the lower tier has
 * legs of its own.
 * @param u along the wall
 */
export function placeFrontLeg(placed: PlacedBench, runIndex: number, run: BenchRun, u: Interval, inFront: readonly RunInFront[], isBoxLeg: boolean): LegDraft | NotchedAway {
    const { leg, rail } = placed.bench.build;
    const sections = sectionsOf(placed, run);
    const { width, thickness } = leg.section;
    const head = isBoxLeg ? sections.ledgerHeights.from : sections.railHeights.from;
    const flush = interval(minus(sections.frontFace, width), sections.frontFace);
    const draft = { run: runIndex, row: 'front', isBoxLeg, u, head } as const;

    const lower = inFront.find(({ run: other }) => intervalsOverlap(other.u, u));
    if (!lower) return { ...draft, w: flush, notches: [], column: leg.section, carries: undefined, passes: undefined };

    const rearEdge = lower.run.w.from;
    const overlap = minus(run.w.to, rearEdge);
    const seat = longest(lower.placed.bench.build.rail.section.thickness, overlap);
    const forward = interval(minus(plus(rearEdge, seat), width), plus(rearEdge, seat));
    const isShared = !isBoxLeg && lower.run.w.from > 0 && forward.from <= minus(sections.frontFace, rail.section.thickness) && forward.to >= sections.frontFace;
    const w = isShared ? forward : flush;
    const depth = minus(w.to, rearEdge);
    if (depth >= width) return { inFront: lower, notch: depth };

    const notches: Notch[] = [];
    // Legs stand with their width front to back, so that a notch is cut into the edge that looks into the room.
    const cut = { side: 'front', end: 'head', toward: opposite(run.wall) } as const;
    const { fasciaHeights } = sections;
    if (fasciaHeights && fasciaHeights.from < head && w.to > sections.frontFace) {
        notches.push({ ...cut, from: zero, length: minus(head, fasciaHeights.from), depth: minus(w.to, sections.frontFace), clears: 'fascia' });
    }
    const top = lower.placed.bench.top;
    const isPassed = depth > 0 && top <= head;
    if (isPassed) {
        notches.push({ ...cut, from: minus(head, top), length: minus(top, lower.placed.heights.railUnderside), depth, clears: `rear rail, bearers and slats of ${lower.placed.bench.name}` });
    }
    const deepest = longest(zero, ...notches.map(notch => notch.depth));
    return {
        ...draft, w, notches, column: { thickness, width: minus(width, deepest) },
        carries: isShared ? { bench: lower.placed.bench.name, run: lower.index } : undefined,
        passes: isPassed ? lower.placed.bench.name : undefined,
    };
}

const opposite = (wall: Wall): Wall => neighbours[neighbours[wall].left].left;

/** A leg under the rear rail, flush with the bench's back edge. */
export function placeRearLeg(placed: PlacedBench, runIndex: number, run: BenchRun, u: Interval, isBoxLeg: boolean): LegDraft {
    const { section } = placed.bench.build.leg;
    const sections = sectionsOf(placed, run);
    return {
        run: runIndex, row: 'rear', isBoxLeg, u, w: interval(run.w.from, plus(run.w.from, section.width)),
        head: isBoxLeg ? sections.ledgerHeights.from : sections.railHeights.from, notches: [], column: section, carries: undefined, passes: undefined,
    };
}
