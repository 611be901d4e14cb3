import { boxOnWall, insideRun, interval, neighbours, overlap, type Box, type InsideSize } from '../../core/geometry.js';
import { minus, negate, plus, zero, type Length } from '../../core/length.js';
import type { Thing, ThingKind } from '../fittings/things.js';
import type { BenchLayout } from './bench-result.js';

/** The floor a wheelchair needs: its longer side lies front to back of the bench, its shorter side along it. */
export interface FloorSpace { readonly shorter: Length; readonly longer: Length }

/** Floor beside one end of a bench. */
export interface EndFloor {
    /** As seen from inside, facing the wall of the run. */
    readonly end: 'left' | 'right';
    readonly box: Box;
    /** How much of it lies beyond the linings; zero when it lies in the room. */
    readonly beyond: Length;
    /** What stands in it. */
    readonly inTheWay: readonly Thing[];
}

const standing: ReadonlySet<ThingKind> = new Set(['bench', 'rest', 'heater', 'guard']);

/**
 * The floor beside each end of a bench, from its back edge (the lining, where it stands against the wall) into the room, and what stands in it. An end that meets
 * a run of the same bench is none.
 * @param bench its layout, in the inside room frame
 * @param things everything in the room; benches, rests, heaters and guards take floor, whatever their height
 */
export function endFloors(bench: BenchLayout, { shorter, longer }: FloorSpace, things: readonly Thing[], inside: InsideSize): readonly EndFloor[] {
    const others = things.filter(({ kind, name }) => standing.has(kind) && name !== bench.name && name !== `${bench.name} back rest`);
    return bench.runs.flatMap(run => (['left', 'right'] as const).filter(end => run.ends[end] !== 'own_run').map((end): EndFloor => {
        const length = insideRun(run.wall, inside);
        const across = insideRun(neighbours[run.wall].left, inside);
        const u = end === 'left' ? interval(minus(run.u.from, shorter), run.u.from) : interval(run.u.to, plus(run.u.to, shorter));
        const back = run.inFrontOf ? run.w.from : zero;
        const w = interval(back, plus(back, longer));
        const box = boxOnWall(run.wall, u, interval(zero, inside.height), w, inside);
        const beyond = Math.max(0, negate(u.from), u.to - length, w.to - across) as Length;
        return { end, box, beyond, inTheWay: others.filter(thing => overlap(thing.box, box)) };
    }));
}

export const isFree = ({ beyond, inTheWay }: EndFloor): boolean => beyond === 0 && inTheWay.length === 0;
