import type { SolvedBeam, SolvedStretch } from './beam.js';

/** The greatest effects of one arrangement of loads, in the units of the beam. */
export interface BeamResponse {
    /** Greatest sagging and greatest hogging moment, both as sizes. */
    readonly sagging: number;
    readonly hogging: number;
    readonly shear: number;
    /** Greatest deflection down or up, as a size, and the greatest share of its span; an overhang counts twice its length. */
    readonly deflection: number;
    readonly deflectionShare: number;
    readonly reactions: readonly number[];
}

/** Finds the greatest moment, shear and deflection: moments and shears exactly, between the places where the load changes; the deflection by bisection of the slope. */
export function responseOf(beam: SolvedBeam): BeamResponse {
    let [sagging, hogging, shear, deflection, deflectionShare] = [0, 0, 0, 0, 0];
    for (const stretch of beam.stretches) {
        const places = breaks(stretch);
        const moments = (x: number): void => { const moment = momentAt(stretch, x); sagging = Math.max(sagging, moment); hogging = Math.max(hogging, -moment); };
        places.forEach((place, i) => {
            moments(place);
            const next = places[i + 1];
            if (next === undefined) return;
            const inset = (next - place) * 1e-9;
            const [atStart, atEnd] = [shearAt(stretch, place + inset), shearAt(stretch, next - inset)];
            shear = Math.max(shear, Math.abs(atStart), Math.abs(atEnd));
            // Between two breaks the shear is a straight line, so the moment turns where it is nothing.
            if (atStart * atEnd < 0) moments(place + (next - place) * atStart / (atStart - atEnd));
        });
        const most = deepest(stretch, beam.stiffness);
        deflection = Math.max(deflection, most);
        deflectionShare = Math.max(deflectionShare, most / (stretch.isOverhang ? 2 * stretch.length : stretch.length));
    }
    return { sagging, hogging, shear, deflection, deflectionShare, reactions: beam.reactions };
}

/** Places where the load changes, within the stretch, from its left end. */
const breaks = ({ from, length, loads }: SolvedStretch): readonly number[] =>
    [...new Set([0, length, ...loads.flatMap(load => [load.from - from, load.to - from])])].filter(x => x >= 0 && x <= length).sort((a, b) => a - b);

/** Moment at x from the left end of the stretch, sagging positive. */
export function momentAt({ from, moment, shear, loads }: SolvedStretch, x: number): number {
    let sum = moment + shear * x;
    for (const load of loads) {
        const [a, b] = [load.from - from, load.to - from];
        if (x <= a) continue;
        sum -= x >= b ? load.total * (x - (a + b) / 2) : load.total * (x - a) ** 2 / (2 * (b - a));
    }
    return sum;
}

function shearAt({ from, shear, loads }: SolvedStretch, x: number): number {
    let sum = shear;
    for (const load of loads) {
        const [a, b] = [load.from - from, load.to - from];
        if (x > a) sum -= x >= b ? load.total : load.total * (x - a) / (b - a);
    }
    return sum;
}

/** Deflection (order 0) or slope (order 1) at x, from the fourfold integral of the load. */
function lineAt({ from, deflection, slope, moment, shear, loads }: SolvedStretch, stiffness: number, x: number, order: 0 | 1): number {
    const after = (a: number, power: number): number => x > a ? (x - a) ** power : 0;
    let bent = order === 0 ? moment * x ** 2 / 2 + shear * x ** 3 / 6 : moment * x + shear * x ** 2 / 2;
    for (const load of loads) {
        const [a, b] = [load.from - from, load.to - from];
        if (b - a < 1e-9) bent -= load.total * (order === 0 ? after(a, 3) / 6 : after(a, 2) / 2);
        else bent -= load.total / (b - a) * (order === 0 ? (after(a, 4) - after(b, 4)) / 24 : (after(a, 3) - after(b, 3)) / 6);
    }
    return order === 0 ? deflection + slope * x - bent / stiffness : slope - bent / stiffness;
}

const samples = 12;
function deepest(stretch: SolvedStretch, stiffness: number): number {
    const size = (x: number): number => Math.abs(lineAt(stretch, stiffness, x, 0));
    const slope = (x: number): number => lineAt(stretch, stiffness, x, 1);
    let most = Math.max(size(0), size(stretch.length));
    for (let i = 0; i < samples; i++) {
        let [low, high] = [stretch.length * i / samples, stretch.length * (i + 1) / samples];
        const rising = slope(low) > 0;
        if (rising === slope(high) > 0) continue;
        for (let step = 0; step < 30; step++) {
            const middle = (low + high) / 2;
            if (slope(middle) > 0 === rising) low = middle; else high = middle;
        }
        most = Math.max(most, size(low));
    }
    return most;
}
