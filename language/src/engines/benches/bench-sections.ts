import { interval, type Interval } from '../../core/geometry.js';
import { minus, plus, zero, type Length } from '../../core/length.js';
import { commonLegSpacing } from './bench-input.js';
import type { PlacedBench } from './run-plan.js';
import type { BenchRun } from './bench-result.js';

/** The members of a bench in the section across it: front to back in w (from the lining into the room) and heights over the finished floor. */
export interface BenchSections {
    /** Whether the run stands off its wall, so that nothing can be screwed to the wall behind it. */
    readonly standsOff: boolean;
    /** Whether a back ledger carries it; else a rear rail does. */
    readonly hasBackLedger: boolean;
    readonly hasEndLedgers: boolean;
    /** Front of the front rail: the bench's front edge, or the back of its fascia. */
    readonly frontFace: Length;
    readonly frontRail: Interval;
    readonly rearRail: Interval;
    readonly railHeights: Interval;
    readonly ledgerHeights: Interval;
    readonly bearerHeights: Interval;
    readonly slatHeights: Interval;
    readonly fasciaHeights: Interval | undefined;
    readonly legSpacing: Length;
}

export function sectionsOf({ bench, heights }: PlacedBench, run: BenchRun): BenchSections {
    const { build } = bench;
    const standsOff = run.w.from > build.wallGap;
    const fascia = bench.hasFascia ? build.fascia?.section : undefined;
    const frontFace = minus(run.w.to, fascia?.thickness ?? zero);
    const railThickness = build.rail.section.thickness;
    const slatUnderside = minus(bench.top, build.slat.section.thickness);
    return {
        standsOff,
        hasBackLedger: bench.loadPath === 'back_ledger_and_legs' && !standsOff,
        hasEndLedgers: bench.loadPath === 'end_ledgers',
        frontFace,
        frontRail: interval(minus(frontFace, railThickness), frontFace),
        rearRail: interval(run.w.from, plus(run.w.from, railThickness)),
        railHeights: interval(heights.railUnderside, heights.ledgerTop),
        ledgerHeights: interval(minus(heights.ledgerTop, build.ledger.section.width), heights.ledgerTop),
        bearerHeights: interval(heights.ledgerTop, slatUnderside),
        slatHeights: interval(slatUnderside, bench.top),
        fasciaHeights: fascia && interval(minus(slatUnderside, fascia.width), slatUnderside),
        legSpacing: build.legSpacing ?? commonLegSpacing,
    };
}
