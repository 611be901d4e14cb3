import { extent } from '../../core/geometry.js';
import { inches, type Length } from '../../core/length.js';
import type { BenchBuild, BenchInput } from './bench-input.js';
import type { BenchFastening, BenchRun, SlatLayout, WallFastening } from './bench-result.js';
import type { NumberedBench } from './number-pieces.js';
import type { RunFrame } from './run-frame.js';

/** Greatest distance of ledger screws where the build states none: 16". Common practice, no source. */
const commonScrewSpacing: Length = inches(16);
/** Places along a ledger that take screws, the first and last near its ends. */
export const ledgerScrewPlaces = ({ ledgerScrewSpacing = commonScrewSpacing }: Pick<BenchBuild, 'ledgerScrewSpacing'>, length: Length): number => Math.max(2, Math.ceil(length / ledgerScrewSpacing) + 1);
/** Slats this wide or wider take two screws at each bearer: 3". Common practice, no source. */
const twoScrewWidth: Length = inches(3);

/** Screws that hold ledgers and slats, counted from the layout. */
export function benchFastenings(bench: BenchInput, numbered: NumberedBench, frames: readonly RunFrame[], slats: SlatLayout | undefined): readonly BenchFastening[] {
    const { build } = bench;
    const list: BenchFastening[] = [];
    for (const ledger of numbered.ledgers) {
        list.push({
            joint: 'ledger to wall', marks: [ledger.mark], ...(build.ledgerScrew && { screw: build.ledgerScrew.name, screwLength: build.ledgerScrew.length }),
            count: ledgerScrewPlaces(build, extent(ledger.u)) * (build.ledgerScrewRows ?? 1), sideMember: build.ledger.section.thickness,
        });
    }
    if (!slats) return list;
    const perCrossing = build.slat.section.width >= twoScrewWidth ? 2 : 1;
    for (const [index, frame] of frames.entries()) {
        const marks = [...new Set(numbered.pieces.filter(piece => piece.run === index && (piece.kind === 'slat' || piece.kind === 'bearer')).map(piece => piece.mark))];
        list.push({
            joint: 'slat to bearer', marks, ...(build.slatScrew && { screw: build.slatScrew.name, screwLength: build.slatScrew.length }),
            count: slats.count * frame.bearers.length * perCrossing, sideMember: build.bearer.section.thickness,
        });
    }
    return list;
}

/** What is screwed to the walls, where blocking has to stand behind the lining. */
export function wallFastenings(bench: BenchInput, runs: readonly BenchRun[], numbered: NumberedBench): readonly WallFastening[] {
    const list: WallFastening[] = numbered.ledgers.map(({ mark, wall, u, v }) => ({ mark, what: 'ledger', wall, u, v }));
    for (const leg of numbered.legs) {
        const run = runs[leg.run];
        // A rear leg against its wall is screwed to it; one that stands off the wall has nothing to be screwed to.
        if (!run || leg.line !== 'rear' || run.w.from > bench.build.wallGap) continue;
        list.push({ mark: leg.mark, what: 'rear leg', wall: run.wall, u: leg.u, v: leg.box.z });
    }
    for (const piece of numbered.pieces) {
        const run = runs[piece.run];
        if (run && piece.kind === 'back rest') list.push({ mark: piece.mark, what: 'back rest', wall: run.wall, u: run.u, v: piece.box.z });
    }
    return list;
}

