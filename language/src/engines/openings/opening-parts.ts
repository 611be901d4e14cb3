import { extent, interval, type Interval } from '../../core/geometry.js';
import { minus, plus, times } from '../../core/length.js';
import { nominalFor } from '../parts/lumber.js';
import { squareEnds, type EndCuts, type Part, type Section } from '../parts/part.js';
import type { Door } from './door.js';
import type { WindowInWall } from './window.js';

/** A board of the catalogue, dressed. */
export interface BoardStock {
    readonly stock: string;
    readonly section: Section;
}

/** `VIEW-TRIM`: the block's name as a mark has it, and what the part is. */
export const markOf = (name: string, what: string): string => `${name.replaceAll(/[^A-Za-z0-9]+/g, '-').toUpperCase()}-${what}`;

const mitred: EndCuts = { left: 45, right: 45, across: 'face' };

/**
 * Jambs and head of a door frame. The jambs stand on the floor, a raised threshold runs between them; the head lies on both jambs.
 * @param frame the stock of the frame; its face width is the door's `frameWidth`
 */
export function frameParts(door: Door, frame: BoardStock): readonly Part[] {
    const part = partOf(frame);
    const { u, v } = door.frameOpening;
    const wide = door.frameWidth;
    return [
        part({
            mark: markOf(door.name, 'JAMB-1'), what: 'door frame jamb', count: 2, length: v.to, goesTo: `one at each side of ${placeOf('door', door)}`,
            ...along(door, interval(minus(u.from, wide), u.from), interval(u.to, plus(u.to, wide))),
        }),
        part({
            mark: markOf(door.name, 'HEAD-1'), what: 'door frame head', count: 1, length: plus(extent(u), times(wide, 2)), goesTo: `on both jambs of ${placeOf('door', door)}`,
            ...along(door, interval(minus(u.from, wide), plus(u.to, wide))),
        }),
    ];
}

/** The header over the door: it closes the section over the frame and is as long as the section is wide. */
export function headerPart(door: Door, header: BoardStock): Part {
    return partOf(header)({
        mark: markOf(door.name, 'HEADER-1'), what: 'header over the door', count: 1, length: extent(door.section),
        goesTo: `over the frame of ${placeOf('door', door)}, as wide as its section`, ...along(door, door.section),
    });
}

/** Inside trim round a window, mitred at the four corners; lengths are long point to long point. No trim, no parts. */
export function windowTrimParts(window: WindowInWall): readonly Part[] {
    if (!window.trim) return [];
    const { outer, stock, thickness, width } = window.trim;
    const part = partOf({ stock, section: { thickness, width } });
    const { u } = outer;
    return [
        part({ mark: markOf(window.name, 'TRIM-1'), what: 'window trim, top and bottom', count: 2, length: extent(u), ends: mitred, goesTo: `top and bottom of ${placeOf('window', window)}`, ...along(window, u) }),
        part({
            mark: markOf(window.name, 'TRIM-2'), what: 'window trim, sides', count: 2, length: extent(outer.v), ends: mitred, goesTo: `sides of ${placeOf('window', window)}`,
            ...along(window, interval(u.from, plus(u.from, width)), interval(minus(u.to, width), u.to)),
        }),
    ];
}

const placeOf = (kind: 'door' | 'window', { name, wall }: Pick<Door, 'name' | 'wall'>): string => `${kind} ${name} in the ${wall} wall`;
const along = ({ wall, wallRun }: Pick<Door, 'wall' | 'wallRun'>, ...stretches: readonly Interval[]): Pick<Part, 'place'> =>
    ({ place: { wall, stretches, run: wallRun, between: 'linings' } });

interface PartFacts extends Pick<Part, 'mark' | 'what' | 'count' | 'length' | 'goesTo' | 'place'> { readonly ends?: EndCuts }

function partOf({ stock, section }: BoardStock): (facts: PartFacts) => Part {
    const nominal = nominalFor(section);
    return ({ ends = squareEnds, ...facts }) => ({
        ...facts, ends, section, notches: [], cut: 'shop', material: { stock }, ...(nominal && { nominal }),
    });
}

