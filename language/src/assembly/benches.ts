import { half, minus, plus, zero, type Length } from '../core/length.js';
import type { InsideSize } from '../core/geometry.js';
import { computeBenches } from '../engines/benches/compute-benches.js';
import type { BenchBuild, BenchInput, BenchesInput, FloorShape, WallOpening } from '../engines/benches/bench-input.js';
import type { BenchLayout, BenchesResult } from '../engines/benches/bench-result.js';
import type { Thing } from '../engines/fittings/things.js';
import type { WallFastening } from '../engines/shell/shell-input.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import type { AssembledDoor, AssembledWindow } from './openings.js';
import { given, stockOf } from './catalogue-values.js';
import { nameBlocks } from './naming.js';
import { remembered } from './remember.js';

const benchesOf = remembered('benches', computeBenches);

export interface AssembledBenches {
    readonly input: BenchesInput;
    readonly result: BenchesResult;
    /** The block of a bench the engine speaks of by name. */
    readonly blocks: ReadonlyMap<string, Block<'bench'>>;
}

export interface BenchSurroundings {
    readonly inside: InsideSize;
    readonly openings: readonly WallOpening[];
    readonly keepClear: BenchesInput['keepClear'];
    readonly floor: FloorShape;
    readonly drain?: BenchesInput['floorObstacles'][number];
}

export function assembleBenches(job: Job, { inside, openings, keepClear, floor, drain }: BenchSurroundings): AssembledBenches {
    const named = nameBlocks(job.benches);
    const benches = named.flatMap(({ name, block }): BenchInput[] => {
        const build = buildOf(block.values.build?.value.block);
        const [first, ...more] = block.walls.map(wall => wall.value);
        const { top, depth, length, from, in_front_of: inFrontOf, overlap, load_path: loadPath, fascia, back_rest: backRest, head_rest: headRest, is_accessible: isAccessible } = block.values;
        if (!build || !first || !top || !depth) return [];
        return [{
            name, walls: [first, ...more], top: top.value, depth: depth.value, overlap: overlap?.value ?? zero,
            loadPath: loadPath?.value ?? block.values.build?.value.block?.values.load_path?.value ?? 'end_ledgers',
            hasFascia: fascia?.value ?? false, hasHeadRest: headRest?.value ?? false, isAccessible: isAccessible?.value ?? false, build,
            ...given({ length: length?.value, from: from && { wall: from.value.wall, distance: from.value.distance }, inFrontOf: inFrontOf?.value.name, backRestTop: backRest?.value }),
        }];
    });
    const input: BenchesInput = { inside, benches, openings, keepClear, floorObstacles: drain ? [drain] : [], floor };
    return { input, result: benchesOf(input), blocks: new Map(named.map(({ name, block }) => [name, block])) };
}

function buildOf(block: Block<'bench_build'> | undefined): BenchBuild | undefined {
    if (!block) return undefined;
    const { values } = block;
    const stock = { slat: stockOf(values.slat?.value), bearer: stockOf(values.bearer?.value), rail: stockOf(values.rail?.value), ledger: stockOf(values.ledger?.value), leg: stockOf(values.leg?.value) };
    if (!stock.slat || !stock.bearer || !stock.rail || !stock.ledger || !stock.leg || !values.slat_gap || !values.bearer_spacing) return undefined;
    const screw = (given: typeof values.ledger_screw): { name: string; length: Length } | undefined => {
        const length = given?.value.block?.values.length?.value;
        return given && length !== undefined ? { name: given.value.name, length } : undefined;
    };
    return {
        name: block.name?.value ?? '', slat: stock.slat, bearer: stock.bearer, rail: stock.rail, ledger: stock.ledger, leg: stock.leg,
        slatGap: values.slat_gap.value, bearerSpacing: values.bearer_spacing.value, wallGap: values.wall_gap?.value ?? zero,
        ...given({
            legSpacing: values.leg_spacing?.value, fascia: stockOf(values.fascia?.value), backRest: stockOf(values.back_rest?.value),
            ledgerScrew: screw(values.ledger_screw), ledgerScrewSpacing: values.ledger_screw_spacing?.value, ledgerScrewRows: values.ledger_screw_rows?.value, slatScrew: screw(values.slat_screw),
        }),
    };
}

/** Openings benches must not stand across, in the frames of their walls. */
export const benchOpenings = (doors: readonly AssembledDoor[], windows: readonly AssembledWindow[], vents: readonly WallOpening[]): readonly WallOpening[] => [
    ...doors.flatMap(({ name, door }): WallOpening[] => door ? [{ name, kind: 'door', wall: door.wall, ...door.clear }] : []),
    ...windows.flatMap(({ name, window }): WallOpening[] => window ? [{ name, kind: 'window', wall: window.wall, ...window.glass }] : []),
    ...vents,
];

/** Benches as things a heater has to keep off: every run with its legs, and back rests. */
export function benchThings(benches: readonly BenchLayout[]): readonly Thing[] {
    return benches.flatMap(bench => [
        ...bench.runs.map((run): Thing => ({ kind: 'bench', name: bench.name, box: run.box })),
        ...bench.legs.map((leg): Thing => ({ kind: 'bench', name: bench.name, box: leg.box })),
        ...bench.pieces.filter(piece => piece.kind === 'back rest').map((piece): Thing => ({ kind: 'rest', name: `${bench.name} back rest`, box: piece.box })),
    ]);
}

/** Places on the walls that panel joints should keep off because benches are fastened there. */
export function benchFastenings(benches: readonly BenchLayout[]): readonly WallFastening[] {
    return benches.flatMap(bench => bench.wallFastenings.flatMap(({ mark, what, wall, u }): WallFastening[] => {
        switch (what) {
            case 'ledger': return [{ kind: 'ledger-end', name: mark, wall, at: u.from }, { kind: 'ledger-end', name: mark, wall, at: u.to }];
            case 'rear leg': return [{ kind: 'leg-fastening', name: mark, wall, at: plus(u.from, half(minus(u.to, u.from))) }];
            case 'back rest': return [];
        }
    }));
}
