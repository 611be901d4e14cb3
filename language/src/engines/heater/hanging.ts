import type { Citation } from '../../core/citation.js';
import { grow, interval, type Interval } from '../../core/geometry.js';
import { half, inches, minus, plus, sum, zero, type Length } from '../../core/length.js';
import type { LengthRange } from '../../vocabulary/values.js';
import { manualCitation, middleOf, type PlacedHeater } from './casing.js';
import type { Requirement } from './clearances.js';

/** Common practice, no source: how far the two upper screws stand proud, the penetration they need, and how near a joint or the edge of blocking may come. */
export const hangingPractice = { proud: inches(0, 1, 8), penetration: inches(1), beside: inches(2) } as const;
const practice = (text: string): Citation => ({ kind: 'practice', text });

/** A point on the heater's wall. */
export interface FasteningPoint { readonly u: Length; readonly v: Length }

export interface FasteningPoints {
    /** The two upper screws, left one first as seen from inside; absent when the manual does not say where they are. */
    readonly points?: readonly [FasteningPoint, FasteningPoint];
    readonly missing: readonly ('fastenHeight' | 'fastenWidth')[];
    readonly citation: Citation;
}

/** Where the two upper screws go: half the manual's distance to either side of the middle of the casing. */
export function fasteningPoints({ manual, onWall }: PlacedHeater): FasteningPoints {
    const { fastenHeight, fastenWidth } = manual;
    const citation = manualCitation(manual);
    if (fastenHeight === undefined || fastenWidth === undefined) {
        return { citation, missing: (['fastenHeight', 'fastenWidth'] as const).filter(figure => manual[figure] === undefined) };
    }
    const v = plus(onWall.v.from, fastenHeight);
    const left = minus(middleOf(onWall.u), half(fastenWidth));
    return { points: [{ u: left, v }, { u: plus(left, fastenWidth), v }], missing: [], citation };
}

/**
 * Where no panel joint should stand: between the two screws and a little beside them, or behind the whole casing when the manual does not say where they are.
 * In u of the heater's wall.
 */
export function fasteningZone(heater: PlacedHeater): Interval {
    const { points } = fasteningPoints(heater);
    return points ? grow(interval(points[0].u, points[1].u), hangingPractice.beside) : heater.onWall.u;
}

/** The blocking the screws must hit: the zone, and as far above and below the screws. Absent when the manual does not say where the screws are. */
export function blockingNeeded(heater: PlacedHeater): { readonly u: Interval; readonly v: Interval } | undefined {
    const { points } = fasteningPoints(heater);
    return points && { u: fasteningZone(heater), v: grow(interval(points[0].v, points[0].v), hangingPractice.beside) };
}

/** What a screw goes through, from the inside of the wall outward. */
export interface ScrewWall {
    readonly lining: Length;
    readonly airGap?: Length;
    /** Solid wood behind the lining and the air gap; absent when none is planned. */
    readonly backing?: Length;
    /** From the inside of the lining to the inner face of the facing, or to the outside where there is none. */
    readonly toFacing: Length;
}

export type ScrewProblem =
    | { readonly kind: 'no-backing' }
    | { readonly kind: 'screw-missing' }
    | { readonly kind: 'backing-deeper-than-wall'; readonly backing: Length; readonly room: Length }
    | { readonly kind: 'screw-too-short'; readonly measured: Length; readonly required: Requirement }
    | { readonly kind: 'screw-meets-facing'; readonly measured: Length; readonly required: Length };

export interface ScrewCheck {
    /** In the blocking. */
    readonly penetration?: Length;
    readonly required: Requirement;
    /** From the lining to the point of the screw. */
    readonly reach?: Length;
    /** Screw lengths that hold and stay inside the wall, both ends allowed; absent when there are none. */
    readonly lengths?: LengthRange;
    readonly problems: readonly ScrewProblem[];
}

/**
 * Whether a screw holds the heater: length under the head, less what stands proud, less lining and air gap, is what is left in the blocking. The point may reach
 * the inner face of the facing and not go into it.
 * @param screw absent when the manual names none
 */
export function checkScrew(screw: { readonly length: Length; readonly penetration?: Length } | undefined, wall: ScrewWall): ScrewCheck {
    const before = plus(wall.lining, wall.airGap ?? zero);
    const required: Requirement = screw?.penetration !== undefined
        ? { value: screw.penetration, citation: { kind: 'catalogue', text: 'the least penetration of the screw' } }
        : { value: hangingPractice.penetration, citation: practice('penetration of a screw in solid wood') };
    const problems: ScrewProblem[] = [];
    if (wall.backing === undefined || wall.backing <= 0) problems.push({ kind: 'no-backing' });
    else if (plus(before, wall.backing) > wall.toFacing) problems.push({ kind: 'backing-deeper-than-wall', backing: wall.backing, room: minus(wall.toFacing, before) });
    const shortest = sum(hangingPractice.proud, before, required.value);
    const longest = plus(hangingPractice.proud, wall.toFacing);
    const holds = wall.backing !== undefined && wall.backing >= required.value && shortest <= longest;
    const shared = { required, ...(holds && { lengths: { from: shortest, to: longest } }) };
    if (!screw) return { ...shared, problems: [{ kind: 'screw-missing' }, ...problems] };
    const reach = minus(screw.length, hangingPractice.proud);
    const inBacking = Math.max(zero, Math.min(reach - before, wall.backing ?? zero)) as Length;
    if (inBacking < required.value && wall.backing !== undefined) problems.push({ kind: 'screw-too-short', measured: inBacking, required });
    if (reach > wall.toFacing) problems.push({ kind: 'screw-meets-facing', measured: reach, required: wall.toFacing });
    return { ...shared, penetration: inBacking, reach, problems };
}
