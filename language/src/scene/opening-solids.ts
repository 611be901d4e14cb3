import type { AssembledDoor, AssembledWindow } from '../assembly/openings.js';
import type { Results } from '../assembly/results.js';
import { interval, type InsideSize, type Interval } from '../core/geometry.js';
import { half, minus, negate, plus, zero, type Length } from '../core/length.js';
import { inRoom, wallBox, type WallBox } from '../engines/fittings/wall-frame.js';
import type { Part } from '../engines/parts/part.js';
import { doorDefaults } from '../engines/openings/door.js';
import { idOf, type Solid } from './scene.js';

/** Door frames and leaves (shut), panes of glass, and the trim round them. */
export function openingSolids({ doors, windows, room }: Results, inside: InsideSize): readonly Solid[] {
    if (!room) return [];
    return [
        ...doors.flatMap(door => door.door ? doorSolids(door, room.thickness[door.door.wall], inside) : []),
        ...windows.flatMap(window => window.window ? windowSolids(window, room.thickness[window.window.wall], inside) : []),
    ];
}

/** The leaf lies in the face it is pulled from, and the frame round it in the same face, as thick as its stock. */
function doorSolids({ name, block, door, model, parts }: AssembledDoor, thickness: Length, inside: InsideSize): readonly Solid[] {
    if (!door) return [];
    const inFace = (depth: Length): Interval => door.swing.side === 'outside' ? interval(negate(thickness), minus(depth, thickness)) : interval(negate(depth), zero);
    const leafThickness = model.values.leaf_thickness?.value ?? doorDefaults.leafThickness;
    const part = (what: string): Part | undefined => parts.find(one => one.what === what);
    const jamb = part('door frame jamb');
    const head = part('door frame head');
    const frame = inFace(jamb?.section.thickness ?? leafThickness);
    const { u, v } = door.frameOpening;
    const { frameWidth } = door;
    const make = (id: string, kind: string, at: WallBox, mark?: string): Solid =>
        ({ id, kind, layer: 'openings', wall: door.wall, boxes: [inRoom(door.wall, at, inside)], span: block.head, ...(mark !== undefined && { mark }) });
    return [
        ...(frameWidth > 0 ? [
            make(idOf(jamb?.mark ?? `${name}-jamb`, 1), 'door frame jamb', wallBox(interval(minus(u.from, frameWidth), u.from), interval(zero, v.to), frame), jamb?.mark),
            make(idOf(jamb?.mark ?? `${name}-jamb`, 2), 'door frame jamb', wallBox(interval(u.to, plus(u.to, frameWidth)), interval(zero, v.to), frame), jamb?.mark),
            make(idOf(head?.mark ?? `${name}-head`), 'door frame head', wallBox(interval(minus(u.from, frameWidth), plus(u.to, frameWidth)), interval(v.to, plus(v.to, frameWidth)), frame), head?.mark),
        ] : []),
        make(idOf(name, 'leaf'), 'door leaf', wallBox(door.leaf.u, door.leaf.v, inFace(leafThickness))),
    ];
}

/** The pane stands in the middle of the wall; how thick it is nobody states, so it is drawn as a plane. */
function windowSolids({ name, block, window, parts }: AssembledWindow, thickness: Length, inside: InsideSize): readonly Solid[] {
    if (!window) return [];
    const { glass, trim, wall } = window;
    const middle = negate(half(thickness));
    const pane: Solid = { id: idOf(name, 'pane'), kind: 'pane of safety glass', layer: 'openings', wall, isOpen: true, boxes: [inRoom(wall, wallBox(glass.u, glass.v, interval(middle, middle)), inside)], span: block.head };
    if (!trim) return [pane];
    const { outer: { u, v }, thickness: depth } = trim;
    const w = interval(zero, depth);
    const [mark] = parts.map(part => part.mark);
    return [pane, {
        id: idOf(name, 'trim'), kind: 'window trim', layer: 'trim', wall, span: block.head, ...(mark !== undefined && { mark }),
        boxes: [
            wallBox(u, interval(v.from, glass.v.from), w), wallBox(u, interval(glass.v.to, v.to), w),
            wallBox(interval(u.from, glass.u.from), glass.v, w), wallBox(interval(glass.u.to, u.to), glass.v, w),
        ].map(piece => inRoom(wall, piece, inside)),
    }];
}
