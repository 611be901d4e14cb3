import type { InsideSize, Wall } from '../../core/geometry.js';
import { minus, negate, plus, type Length } from '../../core/length.js';
import { onWall } from '../fittings/wall-frame.js';
import type { ShellThickness, Thing } from '../fittings/things.js';
import type { Door } from '../openings/door.js';
import { swingHits } from '../openings/swing.js';
import type { Obstruction } from './obstructions.js';

export interface DoorSite {
    readonly inside: InsideSize;
    readonly shell: ShellThickness;
    readonly isFree: Readonly<Record<Wall, boolean>>;
    /** Floor clear before a side, from the room's outside, where the site states it. */
    readonly clearFloor: Readonly<Partial<Record<Wall, Length>>>;
    /** Gap to the building on a closed side. */
    readonly gap: Readonly<Record<Wall, Length>>;
    /** Front-left outside corner of the room in the frame of the place; absent when it is not known, and obstructions are then not judged. */
    readonly corner?: { readonly left: Length; readonly front: Length };
    readonly obstructions: readonly Obstruction[];
}

export interface DoorOnSite {
    /** Floor the leaf needs before the side. */
    readonly needed: Length;
    /** Floor there is; absent when the site does not say. */
    readonly clear?: Length;
    readonly status: 'opens' | 'cannot_open' | 'not_stated';
    readonly obstructions: readonly Obstruction[];
    /** The place of the room is not known, so obstructions could not be held against the leaf. */
    readonly areObstructionsUnjudged: boolean;
}

/**
 * Whether an outward leaf can open to 90 degrees where the room stands: clear floor against the reach of the leaf, exactly enough being enough, and each obstruction against the
 * exact quarter circle. An inward leaf needs nothing outside.
 */
export function doorOnSite(door: Door, site: DoorSite): DoorOnSite {
    if (door.swing.side === 'inside') return { needed: 0 as Length, status: 'opens', obstructions: [], areObstructionsUnjudged: false };
    const needed = door.swing.reach;
    const clear = site.clearFloor[door.wall] ?? (site.isFree[door.wall] ? undefined : site.gap[door.wall]);
    const { corner } = site;
    const hit = corner ? site.obstructions.filter(({ box }) => {
        const seen = onWall(door.wall, {
            x: { from: fromInside(box.x.from, corner.left, site.shell.walls.left), to: fromInside(box.x.to, corner.left, site.shell.walls.left) },
            y: { from: fromInside(box.y.from, corner.front, site.shell.walls.front), to: fromInside(box.y.to, corner.front, site.shell.walls.front) },
            z: box.z,
        }, site.inside);
        // w runs into the room; the leaf swings the other way, from the outside of the wall.
        const face = negate(site.shell.walls[door.wall]);
        return swingHits(door.swing, { u: seen.u, v: seen.v, out: { from: minus(face, seen.w.to), to: minus(face, seen.w.from) } });
    }) : [];
    const status = hit.length > 0 || (clear !== undefined && clear < needed) ? 'cannot_open' : clear === undefined ? 'not_stated' : 'opens';
    return { needed, status, obstructions: hit, areObstructionsUnjudged: !corner && site.obstructions.length > 0, ...(clear !== undefined && { clear }) };
}

/** A coordinate of the place in the room's inside frame. */
const fromInside = (at: Length, corner: Length, thickness: Length): Length => minus(at, plus(corner, thickness));

/** Things an inward leaf hits on its way; the door itself and the surfaces are left out. */
export const insideSwingHits = (door: Door, things: readonly Thing[], inside: InsideSize): readonly Thing[] => door.swing.side === 'outside' ? [] : things.filter(thing => {
    if (thing.kind === 'wall' || thing.kind === 'ceiling' || thing.kind === 'floor' || thing.kind === 'door') return false;
    const { u, v, w } = onWall(door.wall, thing.box, inside);
    return swingHits(door.swing, { u, v, out: w });
});
