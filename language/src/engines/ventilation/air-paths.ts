import type { Citation } from '../../core/citation.js';
import { gapBetween, type InsideSize, type Interval, type Wall } from '../../core/geometry.js';
import { inches, rootUp, type Area, type Length } from '../../core/length.js';
import type { PlacedHeater } from '../heater/casing.js';
import type { Door } from '../openings/door.js';
import { ventToHeater, type Vent, type VentRole } from './vents.js';

/** Readings of words that no text puts a number to. Common practice, no source. */
export const ventPractice = {
    /** "Near the top of the door": the opening's nearest edge is no further from the head of the clear opening, up or down. */
    nearDoorTop: inches(12),
    /** Openings on one wall no further apart than this feed each other. */
    shortCircuit: inches(24),
} as const;

/** Where an opening is in relation to the heater. */
export interface VentPosition {
    readonly vent: Vent;
    readonly toHeater?: Length;
    readonly isBehindHeater: boolean;
    /** Lower edge of the opening under the top of the casing: the heater draws on air that comes in below its top. */
    readonly isBelowHeaterTop?: boolean;
}

export const ventPosition = (vent: Vent, heater: PlacedHeater | undefined): VentPosition => ({
    vent,
    isBehindHeater: heater !== undefined && vent.behind === heater.name,
    ...(heater && { toHeater: ventToHeater(vent, heater), isBelowHeaterTop: vent.lowerEdge < heater.onWall.v.to }),
});

/** The two places an exhaust can be wanted at. Both are shown, because one published text and good practice differ. */
export interface ExhaustPlace {
    readonly vent: Vent;
    readonly nearTopOfDoor: {
        readonly isOnDoorWall: boolean;
        /** From the head of the clear opening to the opening's nearest edge, up or down; zero when the head lies beside it. Absent on another wall. */
        readonly fromDoorTop?: Length;
        readonly isMet: boolean;
    };
    readonly acrossTheRoom: {
        /** On the heater's wall it never is. */
        readonly wall: Wall;
        /** Square of the shortest distance in plan from casing to opening; it is met at half the diagonal of the room or more. */
        readonly planDistanceSquared: bigint;
        /** Half the diagonal of the room in plan, rounded up to a tick: the least distance that counts as across it. */
        readonly leastPlanDistance: Length;
        readonly isAcross: boolean;
        /** Its middle is in the lower half of the room. */
        readonly isLow: boolean;
        readonly isMet: boolean;
    };
    readonly citation: Citation;
}

/** Measures an exhaust against both wants. @param doors the doors of the room; the one that suits best counts */
export function exhaustPlace(vent: Vent, heater: PlacedHeater, doors: readonly Door[], inside: InsideSize): ExhaustPlace {
    const sameWall = doors.filter(({ wall }) => wall === vent.wall);
    const offsets = sameWall.map(({ clear }) => gapBetween(vent.onWall.v, { from: clear.v.to, to: clear.v.to }));
    const fromDoorTop = offsets.length > 0 ? Math.min(...offsets) as Length : undefined;
    const planDistanceSquared = square(gapBetween(vent.box.x, heater.casing.x)) + square(gapBetween(vent.box.y, heater.casing.y));
    const isAcross = vent.wall !== heater.wall && 4n * planDistanceSquared >= square(inside.width) + square(inside.depth);
    const isLow = middleTwice(vent.onWall.v) <= inside.height;
    return {
        vent,
        nearTopOfDoor: {
            isOnDoorWall: sameWall.length > 0,
            isMet: fromDoorTop !== undefined && fromDoorTop <= ventPractice.nearDoorTop,
            ...(fromDoorTop !== undefined && { fromDoorTop }),
        },
        acrossTheRoom: { wall: vent.wall, planDistanceSquared, leastPlanDistance: halfDiagonal(inside), isAcross, isLow, isMet: isAcross && isLow },
        citation: { kind: 'practice', text: 'near the top of the door is within 12" of its head; across the room is half the diagonal or more from the heater, not on its wall, in the lower half' },
    };
}

const square = (length: Length): bigint => BigInt(length) ** 2n;
/** The root of a quarter of the sum, so that nothing is lost to halving a rounded root. */
const halfDiagonal = ({ width, depth }: InsideSize): Length => rootUp((square(width) + square(depth) + 3n) / 4n);
const middleTwice = ({ from, to }: Interval): number => from + to;

/** A way for the air from an intake to an exhaust that passes the room by. */
export interface ShortCircuit {
    readonly intake: Vent;
    readonly exhaust: Vent;
    /** Along the wall and up it, the larger of the two gaps. */
    readonly apart: Length;
    readonly why: 'too_near' | 'both_high' | 'both_low';
    readonly citation: Citation;
}

/**
 * Pairs whose air passes the room by: on one wall, and within `ventPractice.shortCircuit` of each other both ways, or both in the upper half, or both in the lower half of
 * the room. Openings on different walls are not counted: a low exhaust across the room is good practice. Common practice, no source.
 */
export function shortCircuits(vents: readonly Vent[], inside: InsideSize): readonly ShortCircuit[] {
    const citation: Citation = { kind: 'practice', text: 'intake and exhaust on one wall, near each other or both high or both low' };
    const exhausts = vents.filter(({ role }) => role === 'exhaust');
    return vents.filter(({ role }) => role === 'intake').flatMap(intake => exhausts.flatMap((exhaust): ShortCircuit[] => {
        if (intake.wall !== exhaust.wall) return [];
        const apart = Math.max(gapBetween(intake.onWall.u, exhaust.onWall.u), gapBetween(intake.onWall.v, exhaust.onWall.v)) as Length;
        const why = apart < ventPractice.shortCircuit ? 'too_near' : halfOf(intake, inside) === halfOf(exhaust, inside) ? `both_${halfOf(intake, inside)}` as const : undefined;
        return why ? [{ intake, exhaust, apart, why, citation }] : [];
    }));
}

const halfOf = ({ onWall }: Vent, inside: InsideSize): 'high' | 'low' => middleTwice(onWall.v) <= inside.height ? 'low' : 'high';

export interface AirPaths {
    readonly gross: Readonly<Record<VentRole, Area>>;
    readonly free: Readonly<Record<VentRole, Area>>;
    /** Under the leaves of the doors, by door; not part of the sums above, because it lets air in or out as the rest of the room has it. */
    readonly underDoors: readonly { readonly door: string; readonly area: Area }[];
    readonly underDoorsTotal: Area;
    /** Free exhaust no smaller than free intake; absent when the room lacks one of the two. */
    readonly isExhaustNoSmaller?: boolean;
    readonly lacks: readonly VentRole[];
    /** Intakes whose air is not known to come from somewhere clean. */
    readonly unknownSources: readonly Vent[];
}

/** Areas by role and what the openings of the room add up to. */
export function airPaths(vents: readonly Vent[], doors: readonly Door[]): AirPaths {
    const total = (role: VentRole, figure: 'gross' | 'free'): Area => vents.filter(vent => vent.role === role).reduce((sum, vent) => sum + vent[figure], 0n) as Area;
    const lacks = (['intake', 'exhaust'] as const).filter(role => !vents.some(vent => vent.role === role));
    const free = { intake: total('intake', 'free'), exhaust: total('exhaust', 'free') };
    const underDoors = doors.map(({ name, underLeaf }) => ({ door: name, area: underLeaf }));
    return {
        gross: { intake: total('intake', 'gross'), exhaust: total('exhaust', 'gross') },
        free, underDoors, lacks,
        underDoorsTotal: underDoors.reduce((sum, { area }) => sum + area, 0n) as Area,
        unknownSources: vents.filter(({ role, air }) => role === 'intake' && air === 'unknown'),
        ...(lacks.length === 0 && { isExhaustNoSmaller: free.exhaust >= free.intake }),
    };
}

/** The sides of an opening without their orientation, as published opening sizes are given. */
export const openingSides = ({ size }: Vent): { readonly shorter: Length; readonly longer: Length } => ({
    shorter: Math.min(size.width, size.height) as Length, longer: Math.max(size.width, size.height) as Length,
});
