import { neighbours, type Wall } from '../core/geometry.js';
import { minus, type Length } from '../core/length.js';
import type { Part, PartPlace } from '../engines/parts/part.js';
import { showCut, type Scale } from './show-figures.js';

/** How running numbers count, said once a list. The engines number this way: walls and plates by u, benches run by run and row by row. */
export const numberingRule = 'Numbers in marks count left to right as seen from inside the room, facing the wall: on the front wall from the right wall to the left wall, ' +
    'on the left wall from front to back, on the back wall from left to right, on the right wall from back to front. A bench counts run by run in the order its walls are named, ' +
    'and in a run the rear row before the front row. Ceiling panels count from the left, or from the back when they span left to right.';

/** Stretches as a tape finds them: from which wall, and how far to the near edge of each piece. */
export interface MeasuredPlace {
    readonly from: Wall;
    readonly between: PartPlace['between'];
    readonly distances: readonly Length[];
}

/** A single piece is measured from the wall it is nearer to, several from the one their numbers count from. */
export function measuredPlace({ wall, stretches, run, between }: PartPlace): MeasuredPlace {
    const ends = neighbours[wall];
    const [first] = stretches;
    const toRight = first && minus(run, first.to);
    return stretches.length === 1 && first && toRight !== undefined && toRight < first.from
        ? { from: ends.right, between, distances: [toRight] }
        : { from: ends.left, between, distances: stretches.map(({ from }) => from) };
}

/** `near edge 12 1/2" from the right wall`, `near edges 0", 18 5/8" from the left wall`, with the heights to mark where there are any. */
export function showPartPlace(place: PartPlace, unit: Scale): string {
    const { from, distances } = measuredPlace(place);
    const [only] = place.stretches;
    const isWhole = place.stretches.length === 1 && only?.from === 0 && only.to === place.run;
    const figures = distances.map(distance => showCut(distance, unit)).join(', ');
    const along = isWhole ? place.between === 'linings' ? 'wall to wall' : 'over the whole side'
        : `near ${distances.length > 1 ? 'edges' : 'edge'} ${figures} from ${place.between === 'linings' ? `the ${from} wall` : `the outside of the ${from} wall`}`;
    if (!place.heights) return along;
    return `${along}, bottom ${showCut(place.heights.from, unit)}, top ${showCut(place.heights.to, unit)} over the finished floor`;
}

/** What a part belongs to, and where along its wall. */
export const showGoesTo = ({ goesTo, place }: Pick<Part, 'goesTo' | 'place'>, unit: Scale): string =>
    place ? `${goesTo}: ${showPartPlace(place, unit)}` : goesTo;
