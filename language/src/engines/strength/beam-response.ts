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

/**
 * Finds the greatest moment, shear and deflection: moments and shears exactly, between the places where the load changes; the deflection by bisection of the slope.
 * @param face from the middle of a support to its face: between them the load goes straight into the support, and the shear is not looked at
 * @param hasDeflection whether the deflection is wanted, which is most of the work; it is 0 otherwise
 */
export function responseOf(beam: SolvedBeam, face = 0, hasDeflection = true): BeamResponse {
    let [sagging, hogging, shear, deflection, deflectionShare] = [0, 0, 0, 0, 0];
    for (const stretch of beam.stretches) {
        const places = breaks(stretch);
        for (let i = 0; i < places.length; i++) {
            const place = places[i] ?? 0;
            const moment = momentAt(stretch, place);
            if (moment > sagging) sagging = moment;
            if (-moment > hogging) hogging = -moment;
            const next = places[i + 1];
            if (next === undefined) continue;
            const inset = (next - place) * 1e-9;
            const [atStart, atEnd] = [shearAt(stretch, place + inset), shearAt(stretch, next - inset)];
            const [clearFrom, clearTo] = [Math.max(place + inset, face), Math.min(next - inset, stretch.length - face)];
            if (clearTo > clearFrom) shear = Math.max(shear, Math.abs(shearAt(stretch, clearFrom)), Math.abs(shearAt(stretch, clearTo)));
            if (atStart * atEnd >= 0) continue;
            // Between two breaks the shear is a straight line, so the moment turns where it is nothing.
            const turning = momentAt(stretch, place + (next - place) * atStart / (atStart - atEnd));
            if (turning > sagging) sagging = turning;
            if (-turning > hogging) hogging = -turning;
        }
        if (!hasDeflection) continue;
        const most = deepest(stretch, beam.stiffness);
        deflection = Math.max(deflection, most);
        deflectionShare = Math.max(deflectionShare, most / (stretch.isOverhang ? 2 * stretch.length : stretch.length));
    }
    return { sagging, hogging, shear, deflection, deflectionShare, reactions: beam.reactions };
}

/** Places where the load changes, within the stretch, from its left end. */
function breaks({ from, length, loads }: SolvedStretch): readonly number[] {
    const places = [0, length];
    for (const load of loads) for (const x of [load.from - from, load.to - from]) if (x > 0 && x < length && !places.includes(x)) places.push(x);
    return places.sort((a, b) => a - b);
}

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

const samples = 8;
function deepest(stretch: SolvedStretch, stiffness: number): number {
    const size = (x: number): number => Math.abs(lineAt(stretch, stiffness, x, 0));
    const slope = (x: number): number => lineAt(stretch, stiffness, x, 1);
    let most = Math.max(size(0), size(stretch.length));
    for (let i = 0; i < samples; i++) {
        let [low, high] = [stretch.length * i / samples, stretch.length * (i + 1) / samples];
        const rising = slope(low) > 0;
        if (rising === slope(high) > 0) continue;
        for (let step = 0; step < 24; step++) {
            const middle = (low + high) / 2;
            if (slope(middle) > 0 === rising) low = middle; else high = middle;
        }
        most = Math.max(most, size(low));
    }
    return most;
}
