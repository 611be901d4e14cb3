import { contains, grow, insideRun, interval, intervalsOverlap, overlap, type Box, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import type { Citation } from '../../core/citation.js';
import { inches, minus, plus, zero, type Length } from '../../core/length.js';
import type { LengthRange, Size } from '../../vocabulary/values.js';
import type { Thing } from '../fittings/things.js';
import { inRoom, wallBox, type WallBox } from '../fittings/wall-frame.js';
import { alongTheWall, type PlaceProblem, type WallPlace } from '../fittings/wall-place.js';

/** What the heater's own manual states, lengths exact. What it does not state is absent and is never made up here. */
export interface HeaterManual {
    /** Title and edition, for messages. */
    readonly title: string;
    readonly body: Size;
    /** Front to back, from its own rear face. */
    readonly depth: Length;
    readonly offWall?: Length;
    readonly offFloor?: Length;
    readonly clearSide?: Length;
    readonly clearFront?: Length;
    readonly clearAbove?: Length;
    readonly clearBelow?: Length;
    readonly clearBench?: Length;
    readonly roomHeight?: Length;
    readonly fastenHeight?: Length;
    readonly fastenWidth?: Length;
    readonly stoneTop?: Length;
    readonly guard?: 'required' | 'recommended' | 'not_needed';
    readonly guardOffset?: Length;
    readonly sensor?: 'built_in' | 'on_wall_over_heater' | 'on_side_wall';
    readonly sensorBelowCeiling?: LengthRange;
    readonly sensorFromSide?: Length;
    readonly sensorCable?: Length;
    readonly control?: 'outside' | 'on_heater' | 'either';
    readonly limiter?: 'manual_reset' | 'none';
    readonly timerMinutes?: number;
}
/** The figures of a manual that are lengths and may be missing. */
export type ManualLength = { [K in keyof HeaterManual]-?: HeaterManual[K] extends Length | undefined ? (undefined extends HeaterManual[K] ? K : never) : never }[keyof HeaterManual];

export const manualCitation = ({ title }: HeaterManual): Citation => ({ kind: 'manual', text: title });

export interface HeaterInput {
    readonly name: string;
    readonly wall: Wall;
    /** Of the casing. */
    readonly place?: WallPlace;
    readonly manual: HeaterManual;
}

export interface PlacedHeater {
    readonly name: string;
    readonly wall: Wall;
    readonly manual: HeaterManual;
    /** In the wall's own frame. */
    readonly onWall: WallBox;
    readonly casing: Box;
    /** Over the finished floor. */
    readonly stoneTop: Length;
    /** Figures its place depends on and the manual does not give; the casing is then drawn against the wall, or standing on the floor. */
    readonly missing: readonly ManualLength[];
}

/** Places the casing. @returns no heater when nothing says where it is */
export function placeHeater(input: HeaterInput, inside: InsideSize): { readonly heater?: PlacedHeater; readonly problems: readonly PlaceProblem[] } {
    const { name, wall, manual } = input;
    const along = alongTheWall(wall, input.place, manual.body.width, inside);
    if (!along.stretch) return { problems: along.problems };
    const bottom = manual.offFloor ?? zero;
    const rear = manual.offWall ?? zero;
    const v = interval(bottom, plus(bottom, manual.body.height));
    const onWall = wallBox(along.stretch, v, interval(rear, plus(rear, manual.depth)));
    const missing = (['offWall', 'offFloor'] as const).filter(figure => manual[figure] === undefined);
    const above: PlaceProblem[] = v.to > inside.height ? [{ kind: 'above-the-ceiling', wall, over: minus(v.to, inside.height) }] : [];
    return {
        heater: { name, wall, manual, onWall, casing: inRoom(wall, onWall, inside), stoneTop: plus(bottom, manual.stoneTop ?? manual.body.height), missing },
        problems: [...along.problems, ...above],
    };
}

export const heaterThings = (heater: PlacedHeater, guard?: Guard): readonly Thing[] => [
    { kind: 'heater', name: heater.name, box: heater.casing, belongsTo: heater.name },
    ...(guard ? [{ kind: 'guard', name: `${heater.name} guard`, box: guard.box, belongsTo: heater.name } as const] : []),
];

/** A guard round sides and front, from the wall's lining to the offset before the casing, as high as the stones. */
export interface Guard {
    readonly offset: Length;
    readonly onWall: WallBox;
    readonly box: Box;
}
export type GuardProblem =
    | { readonly kind: 'guard-required-and-not-built' }
    | { readonly kind: 'guard-recommended-and-not-built' }
    | { readonly kind: 'guard-offset-missing' }
    | { readonly kind: 'guard-meets'; readonly thing: Thing }
    | { readonly kind: 'guard-leaves-the-wall'; readonly over: Length };

export interface GuardOptions {
    readonly isBuilt: boolean;
    readonly inside: InsideSize;
    /** What it may not stand in; surfaces and what belongs to the heater are left out. */
    readonly things: readonly Thing[];
}

/** The guard and what is wrong with it. */
export function heaterGuard(heater: PlacedHeater, { isBuilt, inside, things }: GuardOptions): { readonly guard?: Guard; readonly problems: readonly GuardProblem[] } {
    const { manual, onWall, name } = heater;
    if (!isBuilt) {
        if (manual.guard === 'required') return { problems: [{ kind: 'guard-required-and-not-built' }] };
        return { problems: manual.guard === 'recommended' ? [{ kind: 'guard-recommended-and-not-built' }] : [] };
    }
    if (manual.guardOffset === undefined) return { problems: [{ kind: 'guard-offset-missing' }] };
    const u = grow(onWall.u, manual.guardOffset);
    const outer = wallBox(u, interval(onWall.v.from, heater.stoneTop), interval(zero, plus(onWall.w.to, manual.guardOffset)));
    const guard: Guard = { offset: manual.guardOffset, onWall: outer, box: inRoom(heater.wall, outer, inside) };
    const run = insideRun(heater.wall, inside);
    const problems: GuardProblem[] = contains(interval(zero, run), u) ? [] : [{ kind: 'guard-leaves-the-wall', over: Math.max(0 - u.from, u.to - run) as Length }];
    for (const thing of things) {
        const isSurface = thing.kind === 'wall' || thing.kind === 'ceiling' || thing.kind === 'floor';
        if (!isSurface && thing.belongsTo !== name && thing.name !== name && overlap(guard.box, thing.box)) problems.push({ kind: 'guard-meets', thing });
    }
    return { guard, problems };
}

/** How far before a heater a falling stone is reckoned with when its manual gives no front clearance. Common practice, no source. */
export const usualStoneFall = inches(12);

/** Where a stone that falls off lands: under the casing and, across its width, before it as far as its front clearance, or `usualStoneFall`. */
export function stoneFallZone(heater: PlacedHeater, inside: InsideSize): Box {
    const reach = plus(heater.onWall.w.to, heater.manual.clearFront ?? usualStoneFall);
    return inRoom(heater.wall, wallBox(heater.onWall.u, interval(zero, heater.stoneTop), interval(zero, reach)), inside);
}

/** Duckboards a stone could fall on; only their place on the floor counts. */
export function duckboardsUnderStones(heater: PlacedHeater, things: readonly Thing[], inside: InsideSize): readonly Thing[] {
    const zone = stoneFallZone(heater, inside);
    return things.filter(({ kind, box }) => kind === 'duckboard' && intervalsOverlap(box.x, zone.x) && intervalsOverlap(box.y, zone.y));
}

/** Middle of the casing along its wall, rounded down to a tick. */
export const middleOf = ({ from, to }: Interval): Length => Math.floor((from + to) / 2) as Length;
