import { distance, interval, type Box, type InsideSize, type Wall } from '../../core/geometry.js';
import { area, half, minus, negate, plus, zero, type Area, type Length } from '../../core/length.js';
import type { Size } from '../../vocabulary/values.js';
import type { Thing } from '../fittings/things.js';
import { inRoom, wallBox, type WallBox } from '../fittings/wall-frame.js';
import { alongTheWall, upTheWall, type PlaceProblem, type WallHeight, type WallPlace } from '../fittings/wall-place.js';
import { middleOf, type PlacedHeater } from '../heater/casing.js';

export type VentRole = 'intake' | 'exhaust';
export type AirSource = 'outdoors' | 'room' | 'unknown';

export interface VentInput {
    readonly name: string;
    readonly wall: Wall;
    /** Absent when neither a role is stated nor the name is one. */
    readonly role?: VentRole;
    readonly size: Size;
    /** Free part of the grille in per cent of the opening, 0 to 100; absent for an open hole. */
    readonly freePercent?: number;
    readonly place?: WallPlace;
    readonly height: WallHeight;
    /** The heater it opens behind, in its middle; used when no place is stated. */
    readonly behind?: PlacedHeater;
    readonly air: AirSource;
}

export type VentProblem =
    | PlaceProblem
    | { readonly kind: 'vent-role-missing' }
    | { readonly kind: 'vent-on-other-wall-than-its-heater'; readonly wall: Wall; readonly heaterWall: Wall };

export interface Vent {
    readonly name: string;
    readonly wall: Wall;
    readonly role?: VentRole;
    readonly air: AirSource;
    readonly onWall: WallBox;
    /** Through the wall; its inner face is on the lining. */
    readonly box: Box;
    readonly size: Size;
    readonly gross: Area;
    /** What the grille leaves open, rounded down. */
    readonly free: Area;
    readonly lowerEdge: Length;
    /** From the ceiling lining to its upper edge. */
    readonly belowCeiling: Length;
    /** The heater it opens behind. */
    readonly behind?: string;
}

/**
 * Places a vent and works out what it lets through.
 * @param thickness of its wall
 * @returns no vent when its place or its height is not stated
 */
export function placeVent(input: VentInput, inside: InsideSize, thickness: Length): { readonly vent?: Vent; readonly problems: readonly VentProblem[] } {
    const { wall, size, behind } = input;
    const sharesWall = behind?.wall === wall;
    const problems: VentProblem[] = [];
    if (behind && !sharesWall) problems.push({ kind: 'vent-on-other-wall-than-its-heater', wall, heaterWall: behind.wall });
    if (!input.role) problems.push({ kind: 'vent-role-missing' });
    const isPlacedByHeater = !input.place && behind !== undefined && sharesWall;
    const from = isPlacedByHeater ? minus(middleOf(behind.onWall.u), half(size.width)) : undefined;
    const along = from !== undefined ? { stretch: interval(from, plus(from, size.width)), problems: [] } : alongTheWall(wall, input.place, size.width, inside);
    const up = upTheWall(wall, input.height, size.height, inside);
    problems.push(...along.problems, ...up.problems);
    if (!along.stretch || !up.stretch) return { problems };

    const onWall = wallBox(along.stretch, up.stretch, interval(negate(thickness), zero));
    const gross = area(size.width, size.height);
    const vent: Vent = {
        name: input.name, wall, size, gross, onWall, air: input.air,
        free: freeArea(gross, input.freePercent ?? 100),
        box: inRoom(wall, onWall, inside),
        lowerEdge: up.stretch.from,
        belowCeiling: minus(inside.height, up.stretch.to),
        ...(input.role && { role: input.role }),
        ...(behind && sharesWall && { behind: behind.name }),
    };
    return { vent, problems };
}

/** Per cent to a millionth of one, so that the area stays a whole number; below 0 counts as 0 and above 100 as 100. */
export function freeArea(gross: Area, percent: number): Area {
    const millionths = BigInt(Math.round(Math.min(100, Math.max(0, Number.isFinite(percent) ? percent : 0)) * 1e6));
    return (gross * millionths / 100_000_000n) as Area;
}

/** The vent as a thing of the room. An opening behind the heater, or an intake in its wall, feeds it and belongs to it: the heater's clearances are not measured to the hole. */
export const ventThing = (vent: Vent, heater?: PlacedHeater): Thing => ({
    kind: 'vent', name: vent.name, box: vent.box,
    ...(heater && (vent.behind === heater.name || (vent.role === 'intake' && vent.wall === heater.wall)) && { belongsTo: heater.name }),
});

/** Box to box from the opening's inner face to the casing, rounded up to a tick. */
export const ventToHeater = (vent: Vent, heater: PlacedHeater): Length => distance(vent.box, heater.casing);
