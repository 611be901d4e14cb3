import { showLength, type LengthUnit } from '../core/show.js';
import type { Interval } from '../core/geometry.js';
import { longest, shortest, type Length } from '../core/length.js';
import type { Zone, ZoneSolids } from '../engines/electrical/index.js';

/** The zones as a person sets them out, from the inside front-left corner of the linings; the cold side of the insulation lies behind those. */
export function inWallWords({ one, two, three }: ZoneSolids, unit: LengthUnit): readonly { readonly zone: Zone; readonly words: string }[] {
    const show = (length: Length): string => showLength(length, unit, 'drawing');
    const range = ({ from, to }: Interval): string => `${show(from)} to ${show(to)}`;
    const within = (outline: Interval, room: Interval): Interval => ({ from: longest(outline.from, room.from), to: shortest(outline.to, room.to) });
    return [
        { zone: 1, words: `${range(within(one.x, one.clip.x))} from the left lining, ${range(within(one.y, one.clip.y))} from the front lining, corners rounded with ${show(one.cornerRadius)}; from the floor to ${show(one.z.to)}` },
        { zone: 2, words: `outside zone 1, ${range(two.z)} over the floor` },
        { zone: 3, words: `outside zone 1, ${range(three.z)} over the floor, to the cold side of the ceiling's insulation` },
    ];
}
