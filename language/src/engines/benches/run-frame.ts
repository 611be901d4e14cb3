import { interval, type InsideSize, type Interval } from '../../core/geometry.js';
import { minus, plus, type Length } from '../../core/length.js';
import type { WallOpening } from './bench-input.js';
import type { BenchProblemDetail } from './bench-problem.js';
import { sectionsOf } from './bench-sections.js';
import { longestClear } from './slats.js';
import { equalCentres } from './even-places.js';
import { legsInLine, legsUnderRail, longestBay, type RailLegs, type RailLine } from './leg-lines.js';
import { placeFrontLeg, placeRearLeg, type LegDraft, type NotchedAway, type RunInFront } from './leg-place.js';
import { placeBackLedger, placeEndLedger, type LedgerDraft } from './ledger-place.js';
import type { BenchRun, RunSpans } from './bench-result.js';
import type { PlacedBench } from './run-plan.js';

export interface RailDraft {
    readonly run: number;
    readonly row: 'rear' | 'front';
    readonly u: Interval;
}

/** What carries one run: ledgers, rails and legs, before marks. */
export interface RunFrame {
    readonly ledgers: readonly LedgerDraft[];
    readonly rails: readonly RailDraft[];
    readonly legs: readonly LegDraft[];
    /** Near edges of the cross-bearers along the wall. */
    readonly bearers: readonly Length[];
    readonly spans: RunSpans;
    readonly problems: readonly BenchProblemDetail[];
}

/**
 * Builds the load path of a run and keeps to it: with end ledgers, rails span between ledgers (or legs, where an end is not a wall); with a
 * back ledger, the front rail stands on legs at its ends too. Where a run stands off the wall a rear rail on legs takes the back ledger's place.
 * @param inFront runs of lower tiers that stand before this one
 * @param tierLegs legs of the tier behind that a rear rail can rest on, along the wall
 */
export function frameRun(
    placed: PlacedBench, index: number, run: BenchRun, inFront: readonly RunInFront[], tierLegs: readonly Interval[], openings: readonly WallOpening[], inside: InsideSize,
): RunFrame {
    const { build } = placed.bench;
    const sections = sectionsOf(placed, run);
    const problems: BenchProblemDetail[] = [];
    const ledgers: LedgerDraft[] = [];
    let rail = run.u;
    const isHeld = { left: false, right: false };
    if (sections.hasEndLedgers) {
        if (run.ends.left === 'wall') {
            const ledger = placeEndLedger(placed, index, run, 'left', openings, inside);
            ledgers.push(ledger);
            isHeld.left = true;
            rail = interval(ledger.innerFace, rail.to);
        }
        if (run.ends.right === 'wall') {
            const ledger = placeEndLedger(placed, index, run, 'right', openings, inside);
            ledgers.push(ledger);
            isHeld.right = true;
            rail = interval(rail.from, ledger.innerFace);
        }
    }
    const line: RailLine = { rail, isHeld, shared: [], legThickness: build.leg.section.thickness, spacing: sections.legSpacing };
    const rearLines: RailLine[] = [];
    if (sections.hasBackLedger) {
        const back = placeBackLedger(placed, index, run, openings, inside);
        ledgers.push(...back.ledgers);
        rearLines.push(...back.bridged.map(stretch => ({ ...line, rail: stretch, isHeld: { left: false, right: false } })));
    } else {
        rearLines.push({ ...line, shared: tierLegs });
    }
    const rear = rearLines.map((rearLine): readonly [RailLine, RailLegs] => [rearLine, legsUnderRail(rearLine)]);
    const front = legsInLine(line, sections.hasBackLedger ? [] : rear.flatMap(([, legs]) => legs.centres));

    const legs: LegDraft[] = rear.flatMap(([, { own }]) => own.map(u => placeRearLeg(placed, index, run, u, false)));
    const frontPlaced = front.own.map(u => placeFrontLeg(placed, index, run, u, inFront, false));
    legs.push(...frontPlaced.filter(isLeg));
    legs.push(...ledgers.filter(ledger => ledger.isBoxLeg).flatMap(ledger => boxLegPosts(placed, index, run, ledger, inFront, inside)));

    const frontSpan = longestBay(line, frontPlaced.filter(isLeg).map(leg => leg.u));
    const away = frontPlaced.find(isNotchedAway);
    if (away) {
        problems.push({
            kind: 'span-without-leg', wall: run.wall, span: frontSpan, limit: sections.legSpacing,
            notchFor: away.inFront.placed.bench.name, notch: away.notch, legWidth: build.leg.section.width,
        });
    }
    const bearerWidth = build.bearer.section.width;
    const bearers = equalCentres(minus(run.u.to, run.u.from), bearerWidth, build.bearerSpacing).map(place => plus(run.u.from, place));
    const rearFace = sections.hasBackLedger ? build.ledger.section.thickness : sections.rearRail.to;
    return {
        ledgers, legs, bearers, problems,
        rails: [...rearLines.map(({ rail: u }): RailDraft => ({ run: index, row: 'rear', u })), { run: index, row: 'front', u: rail }],
        spans: {
            slat: longestClear(bearers, bearerWidth),
            bearer: minus(sections.frontRail.from, rearFace),
            frontRail: frontSpan,
            rearRail: rear.length === 0 ? undefined : Math.max(...rear.map(([rearLine, { own }]) => longestBay(rearLine, [...own, ...rearLine.shared]))) as Length,
        },
    };
}

const isNotchedAway = (leg: LegDraft | NotchedAway): leg is NotchedAway => 'inFront' in leg;
const isLeg = (leg: LegDraft | NotchedAway): leg is LegDraft => !isNotchedAway(leg);

/** The two posts of a box leg, under the ends of its head. */
function boxLegPosts(placed: PlacedBench, index: number, run: BenchRun, ledger: LedgerDraft, inFront: readonly RunInFront[], inside: InsideSize): readonly LegDraft[] {
    const { thickness } = placed.bench.build.leg.section;
    const outer = alongRun(run, ledger, inside);
    const u = ledger.holds === 'left end' ? interval(outer.from, plus(outer.from, thickness)) : interval(minus(outer.to, thickness), outer.to);
    const front = placeFrontLeg(placed, index, run, u, inFront, true);
    return [placeRearLeg(placed, index, run, u, true), ...isLeg(front) ? [front] : []];
}

/** The stretch a box leg's head takes along the wall of its run. */
function alongRun(run: BenchRun, { box }: LedgerDraft, inside: InsideSize): Interval {
    switch (run.wall) {
        case 'back': return box.x;
        case 'front': return interval(minus(inside.width, box.x.to), minus(inside.width, box.x.from));
        case 'left': return box.y;
        case 'right': return interval(minus(inside.depth, box.y.to), minus(inside.depth, box.y.from));
    }
}
