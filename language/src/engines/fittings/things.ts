import { box, interval, intervalsOverlap, overlap, walls, type Box, type InsideSize, type Wall } from '../../core/geometry.js';
import { inches, minus, negate, plus, zero, type Length } from '../../core/length.js';
import type { Door, Opening } from '../openings/door.js';
import type { WindowInWall } from '../openings/window.js';
import { inRoom, onWall, wallBox } from './wall-frame.js';

export const thingKinds = [
    'wall', 'ceiling', 'floor', 'bench', 'rest', 'door', 'window', 'vent', 'sensor', 'light', 'thermometer', 'sign', 'control', 'receptacle',
    'duckboard', 'hook', 'cable_moulding', 'trim', 'shelf', 'holder', 'other', 'heater', 'guard',
] as const;
export type ThingKind = typeof thingKinds[number];

/**
 * Anything in the room that a clearance, a zone or another thing is measured to. Flush openings reach from the lining outward through the wall, so their inner
 * face is what is measured; a thing whose size is not known is a point on the lining.
 */
export interface Thing {
    readonly kind: ThingKind;
    /** The block's own name, or the wall's. */
    readonly name: string;
    /** In the room frame from the inside origin. */
    readonly box: Box;
    /** The heater it is a part of or serves (its sensor, its guard, its intake); that heater's clearances do not apply to it. */
    readonly belongsTo?: string;
}

/** Thickness of the shell, for the solids of walls and ceiling. */
export interface ShellThickness {
    readonly walls: Readonly<Record<Wall, Length>>;
    readonly ceiling: Length;
}

export interface RoomContents {
    readonly inside: InsideSize;
    readonly shell: ShellThickness;
    readonly doors: readonly Door[];
    readonly windows: readonly WindowInWall[];
    /** Benches, rests, vents, lights and all else that is already a thing, in the order of the job. */
    readonly placed: readonly Thing[];
}

/** Every thing of the room: its surfaces, its openings with leaf and trim, then what was placed, in that order. */
export function roomThings({ inside, shell, doors, windows, placed }: RoomContents): readonly Thing[] {
    return [
        ...roomSurfaces(inside, shell),
        ...doors.flatMap(door => doorThings(door, inside, shell)),
        ...windows.flatMap(window => windowThings(window, inside, shell)),
        ...placed,
    ];
}

/** The four walls, ceiling and floor as solids outside the linings; each reaches past the corners so that no diagonal slips between two. */
export function roomSurfaces(inside: InsideSize, shell: ShellThickness): readonly Thing[] {
    const x = interval(negate(shell.walls.left), plus(inside.width, shell.walls.right));
    const y = interval(negate(shell.walls.front), plus(inside.depth, shell.walls.back));
    const z = interval(zero, inside.height);
    const solids: Readonly<Record<Wall, Box>> = {
        front: box(x, interval(y.from, zero), z),
        left: box(interval(x.from, zero), y, z),
        back: box(x, interval(inside.depth, y.to), z),
        right: box(interval(inside.width, x.to), y, z),
    };
    return [
        ...walls.map((wall): Thing => ({ kind: 'wall', name: wall, box: solids[wall] })),
        { kind: 'ceiling', name: 'ceiling', box: box(x, y, interval(inside.height, plus(inside.height, shell.ceiling))) },
        { kind: 'floor', name: 'floor', box: box(x, y, interval(negate(inches(1)), zero)) },
    ];
}

/** The clear opening, and for an inward leaf the box round what it sweeps inside. */
function doorThings(door: Door, inside: InsideSize, shell: ShellThickness): readonly Thing[] {
    const through = interval(negate(shell.walls[door.wall]), zero);
    const opening: Thing = { kind: 'door', name: door.name, box: inRoom(door.wall, wallBox(door.clear.u, door.clear.v, through), inside) };
    if (door.swing.side === 'outside') return [opening];
    const sweep = wallBox(door.swing.u, door.swing.v, interval(zero, door.swing.reach));
    return [opening, { kind: 'door', name: `${door.name} leaf`, box: inRoom(door.wall, sweep, inside) }];
}

/** The clear glass, and its trim in four pieces round it so that the glass itself is not filled. */
function windowThings(window: WindowInWall, inside: InsideSize, shell: ShellThickness): readonly Thing[] {
    const { glass, trim, wall, name } = window;
    const through = interval(negate(shell.walls[wall]), zero);
    const things: Thing[] = [{ kind: 'window', name, box: inRoom(wall, wallBox(glass.u, glass.v, through), inside) }];
    if (!trim) return things;
    const { outer: { u, v }, thickness } = trim;
    const w = interval(zero, thickness);
    const pieces = [
        wallBox(u, interval(v.from, glass.v.from), w), wallBox(u, interval(glass.v.to, v.to), w),
        wallBox(interval(u.from, glass.u.from), glass.v, w), wallBox(interval(glass.u.to, u.to), glass.v, w),
    ];
    return [...things, ...pieces.map((piece): Thing => ({ kind: 'trim', name: `${name} trim`, box: inRoom(wall, piece, inside) }))];
}

/** Pairs of things that stand in the same place; surfaces are left out, as everything flush stands in one. Touching is not standing in the same place. */
export function overlappingThings(things: readonly Thing[]): readonly (readonly [Thing, Thing])[] {
    const solid = things.filter(({ kind }) => kind !== 'wall' && kind !== 'ceiling' && kind !== 'floor');
    return solid.flatMap((one, at) => solid.slice(at + 1).filter(other => belongApart(one, other) && overlap(one.box, other.box))
        .map(other => [one, other] as const));
}

/** A heater stands inside its own guard. */
const belongApart = (one: Thing, other: Thing): boolean => one.belongsTo !== other.name && other.belongsTo !== one.name;

/** A hole in a wall, in that wall's own u and v. */
export interface WallOpening { readonly name: string; readonly wall: Wall; readonly opening: Opening }

/** Things fixed to the lining where there is none, because an opening is there. Touching the opening's edge is beside it. */
export const fixedOnOpenings = (things: readonly Thing[], openings: readonly WallOpening[], inside: InsideSize): readonly { readonly thing: Thing; readonly opening: WallOpening }[] =>
    things.filter(({ kind }) => fixedKinds.has(kind)).flatMap(thing => openings.filter(({ wall, opening }) => {
        const seen = onWall(wall, thing.box, inside);
        return seen.w.from <= 0 && seen.w.to >= 0 && intervalsOverlap(seen.u, opening.u) && intervalsOverlap(seen.v, opening.v);
    }).map(opening => ({ thing, opening })));

const fixedKinds: ReadonlySet<ThingKind> = new Set(['sensor', 'light', 'thermometer', 'sign', 'control', 'receptacle', 'hook', 'cable_moulding', 'shelf', 'holder', 'other']);

/** How far a thing stands out of the room through a lining; nothing when it stays inside. Flush openings do not count. */
export function outsideRoom(thing: Thing, inside: InsideSize): Length {
    const { x, y, z } = thing.box;
    return Math.max(zero, negate(x.from), minus(x.to, inside.width), negate(y.from), minus(y.to, inside.depth), negate(z.from), minus(z.to, inside.height)) as Length;
}
