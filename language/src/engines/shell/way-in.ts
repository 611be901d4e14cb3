import { area, rootUp, shortest, ticks, type Length } from '../../core/length.js';

/** Overall width, height and thickness of a panel, in any order. */
export type PanelDimensions = readonly [Length, Length, Length];

/** The way in, each part absent when nobody measured it. */
export interface WayIn {
    readonly doorway?: { readonly width: Length; readonly height: Length };
    /** Widths of the corridor before and after its tightest right-angled turn. */
    readonly turn?: { readonly before: Length; readonly after: Length; readonly height?: Length };
    /** Clear width and head height of a straight flight; a landing turn counts as a corridor turn. */
    readonly stairs?: { readonly width: Length; readonly headHeight: Length };
    readonly liftCar?: { readonly width: Length; readonly depth: Length; readonly height: Length };
}

export type WayInPart = keyof WayIn;
/** Parts of the way in that a panel does not pass; empty when it passes all that were measured. */
export function blockedWayIn(panel: PanelDimensions, way: WayIn): readonly WayInPart[] {
    const blocked: WayInPart[] = [];
    if (way.doorway && !passesDoorway(panel, way.doorway)) blocked.push('doorway');
    if (way.turn && !passesTurn(panel, way.turn)) blocked.push('turn');
    if (way.stairs && !passesStairs(panel, way.stairs)) blocked.push('stairs');
    if (way.liftCar && !entersLiftCar(panel, way.liftCar)) blocked.push('liftCar');
    return blocked;
}

/** A panel passes a doorway when its two smaller dimensions fit, either way up; equal passes. It is not tilted across the opening's diagonal. */
export function passesDoorway(panel: PanelDimensions, doorway: { readonly width: Length; readonly height: Length }): boolean {
    const [thin, middle] = sorted(panel);
    return thin <= Math.min(doorway.width, doorway.height) && middle <= Math.max(doorway.width, doorway.height);
}

/** A panel takes a right-angled turn when it can be carried with some dimension upright and the other two round the corner in plan. */
export function passesTurn(panel: PanelDimensions, turn: NonNullable<WayIn['turn']>): boolean {
    const [a, b, c] = panel;
    return ([[a, b, c], [b, a, c], [c, a, b]] as const).some(([upright, one, other]) => {
        if (turn.height !== undefined && upright > turn.height) return false;
        return Math.max(one, other) <= longestRoundCorner(turn.before, turn.after, shortest(one, other));
    });
}

/**
 * Longest rectangle of a given thickness that can be carried level round a right-angled corner between two corridors: the least, over the angle
 * t it makes with the second corridor, of (a cos t + b sin t - thickness) / (sin t cos t). With no thickness this is (a^(2/3) + b^(2/3))^(3/2).
 * @returns rounded down to a tick; zero when the thickness does not pass one of the corridors. Found in floating point to about 1e-9.
 */
export function longestRoundCorner(before: Length, after: Length, thickness: Length): Length {
    if (thickness > Math.min(before, after) || Math.min(before, after) <= 0) return ticks(0);
    const lengthAt = (angle: number): number => (before * Math.cos(angle) + after * Math.sin(angle) - thickness) / (Math.sin(angle) * Math.cos(angle));
    // The function falls and then rises; golden-section search narrows the angle to a few parts in 1e15, its error enters squared.
    const shrink = (Math.sqrt(5) - 1) / 2;
    let [low, high] = [1e-6, Math.PI / 2 - 1e-6];
    for (let step = 0; step < 80; step++) {
        const [left, right] = [high - shrink * (high - low), low + shrink * (high - low)];
        if (lengthAt(left) <= lengthAt(right)) high = right;
        else low = left;
    }
    // A piece no longer than a corridor is wide need not turn at all: it goes on sideways.
    return ticks(Math.max(before, after, Math.floor(lengthAt((low + high) / 2) * (1 - 1e-12))));
}

/** Up a straight flight the two smaller dimensions pass its width and head height; the long one lies along the flight. */
export const passesStairs = (panel: PanelDimensions, stairs: NonNullable<WayIn['stairs']>): boolean =>
    passesDoorway(panel, { width: stairs.width, height: stairs.headHeight });

/** A lift car takes a panel when it fits standing, or leaning in the plane of the car's height and one plan side. */
export function entersLiftCar(panel: PanelDimensions, car: NonNullable<WayIn['liftCar']>): boolean {
    const [thin, middle, long] = sorted(panel);
    return ([[car.width, car.depth], [car.depth, car.width]] as const).some(([across, along]) =>
        (middle <= across && fitsLeaning(thin, long, along, car.height)) || (middle <= car.height && fitsLeaning(thin, long, along, across)));
}

/**
 * Whether a rectangle `thin` x `long` fits into a rectangle at some angle. Upright or flat when its sides fit; leaning when
 * height >= (2 thin long width + (long^2 - thin^2) sqrt(long^2 + thin^2 - width^2)) / (long^2 + thin^2), width the larger side
 * (the condition for one rectangle inside another).
 */
function fitsLeaning(thin: Length, long: Length, one: Length, other: Length): boolean {
    const [least, most] = one <= other ? [one, other] : [other, one];
    if (thin > least) return false;
    if (long <= most) return true;
    const square = area(long, long) + area(thin, thin);
    const wide = area(most, most);
    // Root rounded up: when in doubt by a tick the panel stays outside.
    const root = BigInt(rootUp(square - wide));
    const [p, q] = [BigInt(long), BigInt(thin)];
    return BigInt(least) * square >= 2n * p * q * BigInt(most) + (p * p - q * q) * root;
}

function sorted(panel: PanelDimensions): PanelDimensions {
    const [a = panel[0], b = panel[1], c = panel[2]] = [...panel].sort((x, y) => x - y);
    return [a, b, c];
}
