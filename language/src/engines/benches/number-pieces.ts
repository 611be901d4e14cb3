import { boxOnWall, interval, type Box, type InsideSize, type Interval } from '../../core/geometry.js';
import { minus, plus, sum, zero, type Length } from '../../core/length.js';
import { legAllowance, type FloorShape } from './bench-input.js';
import { sectionsOf } from './bench-sections.js';
import type { BenchLedger, BenchLeg, BenchPiece, BenchRun, PieceKind, SlatLayout } from './bench-result.js';
import type { LegDraft } from './leg-place.js';
import type { RunFrame } from './run-frame.js';
import type { PlacedBench } from './run-plan.js';

/** The pieces of one bench with their marks: per kind, run after run, rear before front, left to right as seen from inside. */
export interface NumberedBench {
    readonly pieces: readonly BenchPiece[];
    readonly ledgers: readonly BenchLedger[];
    readonly legs: readonly BenchLeg[];
    /** Runs of lower tiers that rest on a leg, by the leg's mark. */
    readonly carries: ReadonlyMap<string, { readonly bench: string; readonly run: number }>;
    /** Mark of the rear rail of each run; absent where a back ledger takes its place. */
    readonly rearRails: readonly (string | undefined)[];
}

export const markStem = (bench: string): string => bench.toUpperCase();

/** Marks every piece, finds the floor under every leg and puts all boxes in the room frame. */
export function numberPieces(
    placed: PlacedBench, frames: readonly RunFrame[], slats: SlatLayout | undefined, floor: FloorShape, inside: InsideSize,
): NumberedBench {
    const { bench } = placed;
    const { build } = bench;
    const stem = markStem(bench.name);
    const counts = new Map<string, number>();
    const nextMark = (word: string): string => {
        const count = (counts.get(word) ?? 0) + 1;
        counts.set(word, count);
        return `${stem}-${word}-${count}`;
    };
    const pieces: BenchPiece[] = [];
    const ledgers: BenchLedger[] = [];
    const legs: BenchLeg[] = [];
    const rearRails: (string | undefined)[] = [];
    const carries = new Map<string, { readonly bench: string; readonly run: number }>();

    for (const [index, frame] of frames.entries()) {
        const run = placed.runs[index];
        if (!run) continue;
        const sections = sectionsOf(placed, run);
        const add = (kind: PieceKind, mark: string, u: Interval, v: Interval, w: Interval): void =>
            void pieces.push({ mark, kind, run: index, box: boxOnWall(run.wall, u, v, w, inside) });

        const heads = new Map<'left' | 'right', string>();
        for (const { isBoxLeg, holds, wall, u, v, box } of frame.ledgers) {
            const mark = nextMark(isBoxLeg ? 'BOX-HEAD' : 'LEDGER');
            if (isBoxLeg) heads.set(holds === 'left end' ? 'left' : 'right', mark);
            else ledgers.push({ mark, run: index, holds, wall, u, v, box });
            pieces.push({ mark, kind: isBoxLeg ? 'box leg head' : 'ledger', run: index, box });
        }
        const rails = frame.rails.map(rail => ({ ...rail, mark: nextMark('RAIL') }));
        for (const { mark, row, u } of rails) {
            add(row === 'rear' ? 'rear rail' : 'front rail', mark, u, sections.railHeights, row === 'rear' ? sections.rearRail : sections.frontRail);
        }
        rearRails.push(rails.find(rail => rail.row === 'rear')?.mark);

        const middle = minus(run.u.to, run.u.from) / 2 + run.u.from;
        const drafts = [...frame.legs].sort((a, b) => rowOrder(a) - rowOrder(b) || a.u.from - b.u.from);
        for (const draft of drafts) {
            const under = draft.isBoxLeg
                ? heads.get(draft.u.from < middle ? 'left' : 'right')
                : rails.find(rail => rail.row === draft.row && rail.u.from < draft.u.to && draft.u.from < rail.u.to)?.mark;
            const leg = finishLeg(draft, nextMark, under ?? '', run, floor, inside);
            if (!leg) continue;
            legs.push(leg);
            if (draft.carries) carries.set(leg.mark, draft.carries);
            pieces.push({ mark: leg.mark, kind: draft.isBoxLeg ? 'box leg post' : draft.row === 'rear' ? 'rear leg' : 'front leg', run: index, box: leg.box });
        }

        const bearers = nextMark('BEARER');
        const bearerWidth = build.bearer.section.width;
        for (const from of frame.bearers) {
            add('bearer', bearers, interval(from, plus(from, bearerWidth)), sections.bearerHeights, interval(run.w.from, sections.frontFace));
        }
        if (slats) {
            const mark = nextMark('SLAT');
            for (const start of slats.starts) {
                const from = plus(run.w.from, start);
                add('slat', mark, run.u, sections.slatHeights, interval(from, plus(from, build.slat.section.width)));
            }
        }
        if (sections.fasciaHeights) add('fascia', nextMark('FASCIA'), run.u, sections.fasciaHeights, interval(sections.frontFace, run.w.to));
        if (bench.backRestTop !== undefined && build.backRest && !sections.standsOff) {
            const top = plus(bench.top, bench.backRestTop);
            const { width, thickness } = build.backRest.section;
            add('back rest', nextMark('BACK-REST'), run.u, interval(minus(top, width), top), interval(zero, thickness));
        }
    }
    return { pieces, ledgers, legs, carries, rearRails };
}

const rowOrder = (leg: LegDraft): number => leg.row === 'rear' ? 0 : 1;

/** Gives a leg its mark and its floor; a leg whose head is at or below the floor is not needed. */
function finishLeg(draft: LegDraft, nextMark: (word: string) => string, under: string, run: BenchRun, floor: FloorShape, inside: InsideSize): BenchLeg | undefined {
    const plan = boxOnWall(run.wall, draft.u, interval(zero, draft.head), draft.w, inside);
    if (draft.head <= 0) return undefined;
    const mark = nextMark('LEG');
    const foot = floorHeight(floor, plan, mark, inside);
    const finishedLength = minus(draft.head, foot);
    if (finishedLength <= 0) return undefined;
    return {
        mark, run: draft.run, line: draft.isBoxLeg ? 'box' : draft.row, box: { ...plan, z: interval(foot, draft.head) }, u: draft.u,
        finishedLength, shippedLength: sum(finishedLength, legAllowance), under, alsoCarries: [], passes: draft.passes, notches: draft.notches, column: draft.column,
    };
}

/** Height of the floor under a foot, at its lowest corner, rounded down to a tick so that no leg comes out short. */
function floorHeight(floor: FloorShape, foot: Box, mark: string, inside: InsideSize): Length {
    switch (floor.kind) {
        case 'level': return zero;
        case 'measured': return floor.heights[mark] ?? zero;
        case 'falls': {
            const [reach, run] = ((): readonly [Length, Length] => {
                switch (floor.toward) {
                    case 'front': return [minus(inside.depth, foot.y.from), inside.depth];
                    case 'back': return [foot.y.to, inside.depth];
                    case 'left': return [minus(inside.width, foot.x.from), inside.width];
                    case 'right': return [foot.x.to, inside.width];
                }
            })();
            const drop = (BigInt(floor.fall) * BigInt(reach) + BigInt(run) - 1n) / BigInt(run);
            return minus(zero, Number(drop) as Length);
        }
    }
}
