import type { InsideSize } from '../../core/geometry.js';
import type { Length } from '../../core/length.js';
import type { PlanBox } from './free-floor.js';
import { largestCircle, placeCircle, type Circle } from './turning-circle.js';
import { placeT, type PlacedT, type TShape } from './turning-t.js';

export interface TurningInput {
    readonly inside: InsideSize;
    /** Benches, rests, heaters and guards on plan. */
    readonly taken: readonly PlanBox[];
    /** What inward leaves sweep. */
    readonly swept: readonly PlanBox[];
}
export interface TurningSpace {
    /** Where the turning space is, as a circle or else as a T; absent when neither has room. */
    readonly circle?: Circle;
    readonly t?: PlacedT;
    /** Whether a place was found only by letting a door swing through it. */
    readonly isSwept: boolean;
}

/**
 * Looks for a turning space on the free floor: a circle, then a T, first clear of what doors sweep and then without regard to it.
 * Source of the shapes: ADA Standards 2010, 304.3; 304.4 lets a door swing through.
 */
export function findTurningSpace({ inside, taken, swept, diameter, t }: TurningInput & { readonly diameter: Length; readonly t?: TShape }): TurningSpace {
    const look = (boxes: readonly PlanBox[]): Omit<TurningSpace, 'isSwept'> | undefined => {
        const circle = placeCircle(diameter, boxes, inside);
        if (circle) return { circle };
        const placed = t && placeT(t, boxes, inside);
        return placed && { t: placed };
    };
    const clear = look([...taken, ...swept]);
    if (clear || swept.length === 0) return { ...clear, isSwept: false };
    return { ...look(taken), isSwept: true };
}

/** The largest circle that is free of everything, doors included: what the message measures. */
export const freeCircle = ({ inside, taken, swept }: TurningInput): Circle | undefined => largestCircle([...taken, ...swept], inside);
