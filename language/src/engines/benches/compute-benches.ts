import { intervalsOverlap } from '../../core/geometry.js';
import { zero, type Length } from '../../core/length.js';
import type { BenchBuild, BenchesInput, BenchInput } from './bench-input.js';
import { checkBenches } from './bench-checks.js';
import { benchFastenings, wallFastenings } from './bench-fastenings.js';
import { benchParts } from './bench-parts.js';
import type { BenchProblem, BenchProblemDetail } from './bench-problem.js';
import type { BenchesResult, BenchLayout } from './bench-result.js';
import { benchComfort } from './comfort.js';
import type { RunInFront } from './leg-place.js';
import { numberPieces, type NumberedBench } from './number-pieces.js';
import { frameRun, type RunFrame } from './run-frame.js';
import { placeBench, type PlacedBench } from './run-plan.js';
import { sectionsOf } from './bench-sections.js';
import { layOutSlats, nearestDepths } from './slats.js';
import { resolveTiers } from './tier-order.js';

/**
 * Lays out every bench of a room: where it stands, what carries it, every piece of it, and what is wrong with it. Each bench is laid out on
 * its own: one that cannot be placed is left out, its problems say why, and the others stand as if it were not there.
 * @param input lengths in ticks in the inside room frame (x right along the front, y to the back, z up from the finished floor)
 * @returns layouts, parts and problems in the order the benches are written; equal inputs give equal results
 */
export function computeBenches(input: BenchesInput): BenchesResult {
    const problems: BenchProblem[] = [];
    const sound = input.benches.filter(bench => {
        const wrong = wrongFigure(bench);
        if (wrong) problems.push({ bench: bench.name, ...wrong });
        return !wrong;
    });
    const placed = placeAll(sound, input, problems);
    const framed = frameAll(placed, input, problems);
    const layouts = placed.flatMap((bench): readonly BenchLayout[] => {
        const frame = framed.get(bench.bench.name);
        return frame ? [layOut(bench, frame, placed, framed, input)] : [];
    });
    problems.push(...checkBenches(placed, layouts, input));
    return {
        benches: layouts, parts: layouts.flatMap(layout => layout.parts),
        // A stable sort: within a bench the problems keep the order they were found in.
        problems: problems.sort((a, b) => written(a.bench) - written(b.bench)),
    };

    function written(name: string): number {
        return input.benches.findIndex(bench => bench.name === name);
    }
}

/** A figure that is no dimension of anything. Such a bench has no layout at all. */
function wrongFigure({ depth, top, length, build }: BenchInput): BenchProblemDetail | undefined {
    const figures: readonly (readonly [string, Length | undefined])[] = [
        ['depth', depth], ['top', top], ['length', length], ['bearer spacing', build.bearerSpacing], ['leg spacing', build.legSpacing],
        ['ledger screw spacing', build.ledgerScrewSpacing], ...sectionFigures(build),
    ];
    for (const [what, value] of figures) if (value !== undefined && !(value > 0)) return { kind: 'figure-not-above-zero', what, value };
    const bearerWidth = build.bearer.section.width;
    return build.bearerSpacing < bearerWidth ? { kind: 'bearers-closer-than-wide', spacing: build.bearerSpacing, bearerWidth } : undefined;
}

function sectionFigures(build: BenchBuild): readonly (readonly [string, Length | undefined])[] {
    return (['slat', 'bearer', 'rail', 'ledger', 'leg', 'fascia', 'backRest'] as const).flatMap(member => {
        const name = member === 'backRest' ? 'back rest' : member;
        return [[`${name} thickness`, build[member]?.section.thickness], [`${name} width`, build[member]?.section.width]] as const;
    });
}

/** Higher tiers first, since a tier stands in front of a higher one; in the end in the order written. */
function placeAll(benches: readonly BenchInput[], { inside }: BenchesInput, problems: BenchProblem[]): readonly PlacedBench[] {
    const order = resolveTiers(benches, inside);
    problems.push(...order.problems);
    const placed = new Map<string, PlacedBench>();
    for (const bench of [...benches].sort((a, b) => b.top - a.top)) {
        const tier = placed.get(order.behind.get(bench.name) ?? '');
        const place = placeBench(bench, tier ? [tier, ...tier.tiersBehind] : [], inside, problems);
        if (place) placed.set(bench.name, place);
    }
    return benches.flatMap(bench => placed.get(bench.name) ?? []);
}

interface FramedBench {
    readonly frames: readonly RunFrame[];
    readonly numbered: NumberedBench;
    readonly slats: ReturnType<typeof layOutSlats>;
}

/** Frames higher tiers first: the rear rail of a lower tier rests on the front legs of the tier behind it. */
function frameAll(placed: readonly PlacedBench[], input: BenchesInput, problems: BenchProblem[]): ReadonlyMap<string, FramedBench> {
    const framed = new Map<string, FramedBench>();
    for (const bench of [...placed].sort((a, b) => b.bench.top - a.bench.top)) {
        const { name, depth, build } = bench.bench;
        const report = (detail: BenchProblemDetail): void => void problems.push({ bench: name, ...detail });
        const limits = build.slatGap;
        const slats = layOutSlats(depth, build.slat.section.width, limits);
        if (!slats) report({ kind: 'slats-do-not-fit', depth, ...nearestDepths(depth, build.slat.section.width, limits) });
        if (!canBeFramed(bench, report)) continue;
        const frames = bench.runs.map((run, index) => {
            const inFront: RunInFront[] = placed.flatMap(other => other.runs.flatMap((one, k) =>
                one.inFrontOf?.bench === name && one.inFrontOf.run === index && other.heights.railUnderside >= 0 ? [{ placed: other, run: one, index: k }] : []));
            const tier = run.inFrontOf && framed.get(run.inFrontOf.bench);
            const tierLegs = tier?.frames[run.inFrontOf?.run ?? 0]?.legs
                .filter(leg => leg.carries?.bench === name && leg.carries.run === index).map(leg => leg.u) ?? [];
            return frameRun(bench, index, run, inFront, tierLegs, input.openings, input.inside);
        });
        for (const frame of frames) frame.problems.forEach(report);
        framed.set(name, { frames, slats, numbered: numberPieces(bench, frames, slats, input.floor, input.inside) });
    }
    return framed;
}

/** Reports what the section of a bench cannot do; whether its frame makes sense at all. */
function canBeFramed(placed: PlacedBench, report: (detail: BenchProblemDetail) => void): boolean {
    const { bench, heights, runs } = placed;
    const { build } = bench;
    const buildUp = (heights.buildUp + build.rail.section.width) as Length;
    if (bench.top < buildUp) report({ kind: 'top-below-build-up', top: bench.top, buildUp });
    const fascia = bench.hasFascia ? build.fascia?.section.thickness ?? zero : zero;
    const least = (2 * Math.max(build.leg.section.width, build.rail.section.thickness) + fascia) as Length;
    if (bench.depth < least) report({ kind: 'too-shallow', depth: bench.depth, least });
    if (bench.hasFascia && !build.fascia) report({ kind: 'no-stock-for', what: 'fascia' });
    if (bench.backRestTop !== undefined && !build.backRest) report({ kind: 'no-stock-for', what: 'back rest' });

    let meetsLedger = false;
    for (const run of runs) {
        const { standsOff, hasBackLedger, hasEndLedgers } = sectionsOf(placed, run);
        if (standsOff && !hasEndLedgers) report({ kind: 'no-wall-behind', what: 'back ledger', wall: run.wall, off: run.w.from });
        if (standsOff && bench.backRestTop !== undefined) report({ kind: 'no-wall-behind', what: 'back rest', wall: run.wall, off: run.w.from });
        meetsLedger ||= hasBackLedger || (hasEndLedgers && (run.ends.left === 'wall' || run.ends.right === 'wall'));
    }
    const ledgerThickness = build.ledger.section.thickness;
    if (meetsLedger && build.wallGap >= ledgerThickness) report({ kind: 'ledger-missed', wallGap: build.wallGap, ledgerThickness });
    return bench.top >= buildUp && bench.depth >= least;
}

function layOut(placed: PlacedBench, { frames, numbered, slats }: FramedBench, all: readonly PlacedBench[], framed: ReadonlyMap<string, FramedBench>, input: BenchesInput): BenchLayout {
    const { bench, runs, heights } = placed;
    const legs = numbered.legs.map(leg => {
        const carries = numbered.carries.get(leg.mark);
        const lower = carries && framed.get(carries.bench)?.numbered;
        const rail = lower?.pieces.find(piece => piece.mark === lower.rearRails[carries?.run ?? 0]);
        const rests = rail && intervalsOverlap(rail.box.x, leg.box.x) && intervalsOverlap(rail.box.y, leg.box.y);
        return rests ? { ...leg, alsoCarries: [rail.mark] } : leg;
    });
    return {
        name: bench.name, top: bench.top, depth: bench.depth, isHighest: all.every(other => other.bench.top <= bench.top), isAccessible: bench.isAccessible,
        inFrontOf: placed.tiersBehind[0]?.bench.name, loadPath: bench.loadPath, ...heights, runs, slats, ledgers: numbered.ledgers, legs, pieces: numbered.pieces,
        spans: frames.map(frame => frame.spans), fastenings: benchFastenings(bench, numbered, frames, slats), wallFastenings: wallFastenings(bench, runs, numbered),
        comfort: benchComfort(placed, all, input.inside), parts: benchParts(bench, runs, numbered, input.inside),
    };
}
