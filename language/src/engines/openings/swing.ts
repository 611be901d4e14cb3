import { interval, intervalsOverlap, type Interval } from '../../core/geometry.js';
import { minus, negate, plus, rootUp, zero, type Length } from '../../core/length.js';

/**
 * What the leaf sweeps between shut and open at 90 degrees. u is the door wall's own u (seen from inside); `out` is measured at right angles from the
 * face it swings over: the outside of the wall for an outward leaf, the lining for an inward one. The hinge pin stands at the leaf's hinge edge, in the pull face.
 */
export interface LeafSwing {
    readonly side: 'outside' | 'inside';
    /** The hinge edge of the leaf. */
    readonly pivot: Length;
    /** Whether the latch edge lies at higher or lower u than the hinge edge when shut. */
    readonly latchAt: 'higher_u' | 'lower_u';
    /** How far from the face the leaf reaches: its width. */
    readonly reach: Length;
    /** Square of the radius the far corner of the push face runs on: width² + thickness². */
    readonly radiusSquared: bigint;
    /** The floor it needs along the wall, rounded up to a tick. */
    readonly u: Interval;
    /** Its underside and top over the finished floor. */
    readonly v: Interval;
}

export interface SwingInput {
    readonly side: LeafSwing['side'];
    readonly pivot: Length;
    readonly latchAt: LeafSwing['latchAt'];
    readonly leafWidth: Length;
    readonly leafThickness: Length;
    readonly v: Interval;
}

export function leafSwing({ side, pivot, latchAt, leafWidth, leafThickness, v }: SwingInput): LeafSwing {
    const radiusSquared = BigInt(leafWidth) ** 2n + BigInt(leafThickness) ** 2n;
    const radius = rootUp(radiusSquared);
    const u = latchAt === 'higher_u' ? interval(pivot, plus(pivot, radius)) : interval(minus(pivot, radius), pivot);
    return { side, pivot, latchAt, reach: leafWidth, radiusSquared, u, v };
}

/** Something the leaf could hit, in the swing's own u and `out`. */
export interface SwingObstacle {
    readonly u: Interval;
    readonly v: Interval;
    readonly out: Interval;
}

/**
 * Whether the leaf hits something on its way. Exact: the swept floor is the quarter of the disc of `radiusSquared` before the opening, cut off at `reach`,
 * because the far corner never gets further from the face than the width of the leaf. A thing that only touches it is not hit.
 */
export function swingHits(swing: LeafSwing, { u, v, out }: SwingObstacle): boolean {
    if (!intervalsOverlap(v, swing.v)) return false;
    const along = swing.latchAt === 'higher_u'
        ? interval(minus(u.from, swing.pivot), minus(u.to, swing.pivot))
        : interval(negate(minus(u.to, swing.pivot)), negate(minus(u.from, swing.pivot)));
    if (along.to <= 0 || out.to <= 0 || out.from >= swing.reach) return false;
    const nearestAlong = BigInt(Math.max(along.from, zero));
    const nearestOut = BigInt(Math.max(out.from, zero));
    return nearestAlong ** 2n + nearestOut ** 2n < swing.radiusSquared;
}
