import type { BeamLoad } from './beam.js';

/** Where loads may stand on a member: its length and its supports, ascending. */
export interface Carried {
    readonly length: number;
    readonly supports: readonly number[];
    /** From the middle of a support to its face; the shear counts from there. 0 when absent. */
    readonly face?: number;
}

/** Stretches of a member: from its left end over every support to its right end; what has no length is left out. */
export function stretchesOf({ length, supports }: Carried): readonly { readonly from: number; readonly to: number }[] {
    const places = [0, ...supports, length];
    return places.slice(1).flatMap((to, i) => { const from = places[i] ?? 0; return to - from > 1e-9 ? [{ from, to }] : []; });
}

/**
 * The patterns of loaded stretches that give the greatest effects in a continuous beam: all; every other one, both ways; each two neighbours with every
 * other one beyond them. Source: the usual pattern loading of continuous beams.
 */
export function patternsOf(stretches: number): readonly (readonly boolean[])[] {
    const patterns: boolean[][] = [Array.from({ length: stretches }, () => true)];
    if (stretches === 1) return patterns;
    for (const odd of [0, 1]) patterns.push(Array.from({ length: stretches }, (_, i) => i % 2 === odd));
    for (let pair = 0; pair + 1 < stretches; pair++) {
        patterns.push(Array.from({ length: stretches }, (_, i) => i <= pair ? (pair - i) % 2 === 0 : (i - pair - 1) % 2 === 0));
    }
    return patterns;
}

/** An even load over the loaded stretches of each pattern. */
export function evenLoads(member: Carried, perLength: number): readonly (readonly BeamLoad[])[] {
    const stretches = stretchesOf(member);
    return patternsOf(stretches.length).map(pattern => stretches.filter((_, i) => pattern[i]).map(({ from, to }) => ({ from, to, total: perLength * (to - from) })));
}

/** Places a single load is moved to within each stretch, as shares of it; the greatest moment of a continuous beam comes at two fifths of its end span or near a middle. */
const placesInStretch = [0, 0.25, 0.42, 0.5, 0.58, 0.75, 1];

/** One load moved along the member; it never reaches over an end, and a load longer than the member lies over all of it. Beside a support it stands with its edge there, for the shear. */
export function movingLoad(member: Carried, total: number, footprint: number): readonly (readonly BeamLoad[])[] {
    const long = Math.min(footprint, member.length);
    const within = (middle: number): number => Math.min(member.length - long / 2, Math.max(long / 2, middle));
    const middles = stretchesOf(member).flatMap(({ from, to }) => [
        ...placesInStretch.map(share => within(from + share * (to - from))), ...to - from > long ? [within(from + long / 2), within(to - long / 2)] : [],
    ]);
    return [...new Set(middles)].map(middle => [{ from: middle - long / 2, to: middle + long / 2, total }]);
}

/** One load of 1 on each of some places in turn; it never reaches over an end. */
export const placedLoads = ({ length }: Carried, places: readonly number[], footprint: number): readonly (readonly BeamLoad[])[] => {
    const long = Math.min(footprint, length);
    return places.map(place => { const middle = Math.min(length - long / 2, Math.max(long / 2, place)); return [{ from: middle - long / 2, to: middle + long / 2, total: 1 }]; });
};

/** A row of equal loads at a pitch, as many as the member has room for (one that moves where there is room for no more), in the middle and to either end, in every pattern of loaded stretches. */
export function rowsOfLoads(member: Carried, total: number, footprint: number, pitch: number): readonly (readonly BeamLoad[])[] {
    if (pitch >= member.length) return movingLoad(member, total, footprint);
    const count = Math.max(1, Math.floor(member.length / pitch + 1e-9));
    const long = Math.min(footprint, member.length);
    const spare = Math.max(0, member.length - count * pitch);
    const stretches = stretchesOf(member);
    return [spare / 2, 0, spare].flatMap(start => {
        const middles = Array.from({ length: count }, (_, i) => start + i * pitch + pitch / 2);
        return patternsOf(stretches.length).map(pattern => middles
            .filter(middle => stretches.some(({ from, to }, i) => pattern[i] === true && middle >= from - 1e-9 && middle <= to + 1e-9))
            .map(middle => ({ from: middle - long / 2, to: middle + long / 2, total })));
    }).filter(loads => loads.length > 0);
}
