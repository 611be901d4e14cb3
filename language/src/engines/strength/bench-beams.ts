import { extent, interval, intervalsOverlap, type Box, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { inInches, minus, TICKS_PER_INCH, type Length } from '../../core/length.js';
import type { BenchLayout, BenchLeg, BenchPiece, BenchRun } from '../benches/bench-result.js';
import type { Carried } from './arrangements.js';

/** The stretch of a box along the wall of its run; its direction does not matter. */
export const along = ({ x, y }: Box, wall: Wall): Interval => wall === 'back' || wall === 'front' ? x : y;

/** The stretch of a box from the wall of its run into the room. */
export function across({ x, y }: Box, wall: Wall, inside: InsideSize): Interval {
    switch (wall) {
        case 'front': return y;
        case 'left': return x;
        case 'back': return interval(minus(inside.depth, y.to), minus(inside.depth, y.from));
        case 'right': return interval(minus(inside.width, x.to), minus(inside.width, x.from));
    }
}

/** Inches from `from` to the middle of a stretch. */
export const middleFrom = (from: Length, { from: a, to: b }: Interval): number => ((a + b) / 2 - from) / TICKS_PER_INCH;

/** The slats of a run as one beam on its cross-bearers. `undefined` when it has fewer than two. */
export function slatLine(run: BenchRun, bearers: readonly BenchPiece[]): Carried | undefined {
    const whole = along(run.box, run.wall);
    const supports = bearers.map(({ box }) => middleFrom(whole.from, along(box, run.wall))).sort((a, b) => a - b);
    const [first] = bearers;
    return !first || supports.length < 2 ? undefined : { length: inInches(extent(whole)), supports, face: inInches(extent(along(first.box, run.wall))) / 2 };
}

/** A rail with what stands under it, from its end nearest the origin of the room. */
export interface RailBeam {
    readonly mark: string;
    readonly run: number;
    readonly row: 'rear' | 'front';
    readonly piece: BenchPiece;
    readonly member: Carried;
    /** In the order of the supports: the leg, or the mark of the ledger or box leg head that holds an end. */
    readonly on: readonly ({ readonly leg: BenchLeg } | { readonly held: string })[];
    /** Middles of the cross-bearers that rest on it: one that lies over the ledger at an end rests on that. */
    readonly bearers: readonly number[];
}

/** Every rail of a bench on the supports of the load path: ledgers and box legs that hold its ends, its own legs, and legs of the tier behind it rests on. */
export function railBeams(bench: BenchLayout, all: readonly BenchLayout[]): readonly RailBeam[] {
    const holders = bench.pieces.filter(({ kind }) => kind === 'ledger' || kind === 'box leg head');
    const legs = all.flatMap(other => other.legs.filter(leg => leg.line !== 'box' && (other === bench ? true : leg.alsoCarries.length > 0)));
    return bench.pieces.filter(({ kind }) => kind === 'front rail' || kind === 'rear rail').flatMap((piece): RailBeam[] => {
        const run = bench.runs[piece.run];
        if (!run) return [];
        const whole = along(piece.box, run.wall);
        const ends = ([whole.from, whole.to] as const).flatMap(end => {
            const holder = holders.find(({ box, run: of }) => of === piece.run && touches(box, piece.box) && (along(box, run.wall).to === end || along(box, run.wall).from === end));
            return holder ? [{ at: inInches(minus(end, whole.from)), on: { held: holder.mark } }] : [];
        });
        const standing = legs.filter(({ under, alsoCarries }) => under === piece.mark || alsoCarries.includes(piece.mark))
            .map(leg => ({ at: middleFrom(whole.from, overlapOf(along(leg.box, run.wall), whole)), on: { leg } }));
        const supports = [...ends, ...standing].sort((a, b) => a.at - b.at);
        if (supports.length < 2) return [];
        const ledgers = holders.filter(({ kind, run: of, mark }) => kind === 'ledger' && of === piece.run && ends.some(({ on }) => on.held === mark)).map(({ box }) => along(box, run.wall));
        const bearers = bench.pieces.filter(({ kind, run: of }) => kind === 'bearer' && of === piece.run).map(({ box }) => along(box, run.wall))
            .filter(at => intervalsOverlap(at, whole) && !ledgers.some(ledger => intervalsOverlap(ledger, at))).map(at => middleFrom(whole.from, at));
        return [{
            mark: piece.mark, run: piece.run, row: piece.kind === 'rear rail' ? 'rear' : 'front', piece,
            member: { length: inInches(extent(whole)), supports: supports.map(({ at }) => at) }, on: supports.map(({ on }) => on), bearers,
        }];
    });
}

/** Whether two boxes meet face to face or overlap in plan. */
const touches = (a: Box, b: Box): boolean =>
    a.x.from <= b.x.to && b.x.from <= a.x.to && a.y.from <= b.y.to && b.y.from <= a.y.to && (intervalsOverlap(a.x, b.x) || intervalsOverlap(a.y, b.y));

/** What two stretches share; the first where they share nothing. */
export const overlapOf = (a: Interval, b: Interval): Interval =>
    intervalsOverlap(a, b) ? interval(Math.max(a.from, b.from) as Length, Math.min(a.to, b.to) as Length) : a;

/** A cross-bearer on what carries it at the back and at the front, from its back end. */
export interface BearerBeam {
    readonly member: Carried;
    /** Bearing along the bearer on the rear and the front support, inches. */
    readonly bearings: readonly [number, number];
}
export function bearerBeam(bench: BenchLayout, index: number, bearer: BenchPiece, inside: InsideSize): BearerBeam | undefined {
    const run = bench.runs[index];
    if (!run) return undefined;
    const whole = across(bearer.box, run.wall, inside);
    const carriers = bench.pieces.filter(({ run: of, kind }) => of === index && (kind === 'front rail' || kind === 'rear rail' || kind === 'ledger'))
        .map(({ kind, box }) => ({ kind, at: across(box, run.wall, inside) }))
        // A ledger on an end wall lies along the bearer and is none of its two supports.
        .filter(({ kind, at }) => (kind !== 'ledger' || bench.loadPath === 'back_ledger_and_legs') && intervalsOverlap(at, whole));
    const front = carriers.find(({ kind }) => kind === 'front rail');
    const rear = carriers.find(({ kind }) => kind !== 'front rail');
    if (!front || !rear) return undefined;
    const [a, b] = [overlapOf(rear.at, whole), overlapOf(front.at, whole)];
    const supports = [middleFrom(whole.from, a), middleFrom(whole.from, b)];
    if (!((supports[1] ?? 0) > (supports[0] ?? 0))) return undefined;
    const bearings = [inInches(extent(a)), inInches(extent(b))] as const;
    return { member: { length: inInches(extent(whole)), supports, face: Math.min(...bearings) / 2 }, bearings };
}
