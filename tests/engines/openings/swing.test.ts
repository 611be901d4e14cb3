import fc from 'fast-check';
import { expect, test } from 'vitest';
import { interval } from '../../../language/src/core/geometry.js';
import { inches, ticks } from '../../../language/src/core/length.js';
import { hinges, usualHinges } from '../../../language/src/engines/openings/hinges.js';
import { leafSwing, swingHits } from '../../../language/src/engines/openings/swing.js';

const inch = 2_032_000;
const tall = interval(ticks(0), inches(70));
const at = (latchAt: 'higher_u' | 'lower_u', leafWidth = inches(24), leafThickness = inches(1, 1, 2)) =>
    leafSwing({ side: 'outside', pivot: inches(50), latchAt, leafWidth, leafThickness, v: tall });

test('the floor a leaf needs: its width from the wall, the arc of its far corner along it', () => {
    const swing = at('higher_u');
    expect(swing.reach).toBe(inches(24));
    expect(swing.u.from).toBe(inches(50));
    // sqrt(24² + 1.5²) = 24.04683 in
    expect((swing.u.to - swing.u.from) / inch).toBeCloseTo(24.04683, 5);
    expect(at('lower_u').u).toEqual(interval(ticks(2 * inches(50) - swing.u.to), inches(50)));
});

test.each([
    // A 3-4-5 triangle: a leaf of 4" that is 3" thick reaches a radius of exactly 5".
    ['a corner on the arc is not hit', inches(53), 0, inches(4) - 1, true],
    ['a corner beyond the reach is not hit', inches(50), 0, inches(4), false],
    ['a corner exactly on the arc is not hit', inches(54), 0, inches(3), false],
    ['a corner one tick inside the arc is hit', inches(54) - 1, 0, inches(3), true],
    ['behind the hinge is not hit', inches(40), inches(10), inches(0), false],
])('%s', (_name, from, size, out, isHit) => {
    const swing = at('higher_u', inches(4), inches(3));
    const u = interval(ticks(from), ticks(from + (size || inches(20))));
    expect(swingHits(swing, { u, v: tall, out: interval(ticks(out), ticks(out + inches(10))) })).toBe(isHit);
});

test('what hangs over the leaf is not hit', () => {
    const over = { u: interval(inches(50), inches(60)), out: interval(ticks(0), inches(5)) };
    expect(swingHits(at('higher_u'), { ...over, v: interval(inches(70), inches(80)) })).toBe(false);
    expect(swingHits(at('higher_u'), { ...over, v: interval(ticks(inches(70) - 1), inches(80)) })).toBe(true);
});

test('a leaf of the other hand hits the mirror image', () => {
    const coordinate = fc.integer({ min: -40 * inch, max: 40 * inch });
    fc.assert(fc.property(coordinate, fc.integer({ min: 1, max: 20 * inch }), coordinate, fc.integer({ min: 1, max: 20 * inch }), (from, size, out, deep) => {
        const right = { u: interval(ticks(inches(50) + from), ticks(inches(50) + from + size)), v: tall, out: interval(ticks(out), ticks(out + deep)) };
        const left = { ...right, u: interval(ticks(inches(50) - from - size), ticks(inches(50) - from)) };
        expect(swingHits(at('lower_u'), left)).toBe(swingHits(at('higher_u'), right));
    }));
});

test('the exact quarter agrees with a sweep of the leaf in small steps', () => {
    // The leaf's push face and latch edge as points, turned about the pin; independent of the disc in the function.
    const swing = at('higher_u', inches(24), inches(2));
    const points: [number, number][] = [];
    for (let degrees = 0; degrees <= 90; degrees += 0.25) {
        const [c, s] = [Math.cos(degrees * Math.PI / 180), Math.sin(degrees * Math.PI / 180)];
        for (let x = 0; x <= 24; x += 0.5) for (const y of [0, 1, 2]) points.push([x * c + y * s, x * s - y * c]);
    }
    fc.assert(fc.property(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 }), (u, out) => {
        const isTouched = points.some(([x, y]) => x > u + 0.001 && x < u + 5 - 0.001 && y > out + 0.001 && y < out + 5 - 0.001);
        if (isTouched) expect(swingHits(swing, { u: interval(inches(50 + u), inches(55 + u)), v: tall, out: interval(inches(out), inches(out + 5)) })).toBe(true);
    }), { numRuns: 200 });
    expect(points.every(([x, y]) => x * x + y * y <= 24 * 24 + 4 + 1e-9 && y <= 24 + 1e-9)).toBe(true);
});

// Common practice, no source.
test.each([[20, 2], [25, 2], [25.1, 3], [40, 3], [41, 4], [60, 4], [60.1, 5], [80, 5], [81, 6]])('a leaf of %s kg usually has %i hinges', (leafMassKg, needed) => {
    expect(hinges({ leafMassKg }).needed).toBe(needed);
    expect(hinges({ leafMassKg }).citation.kind).toBe('practice');
});
test('the table of usual hinges rises', () => {
    expect(usualHinges.map(({ hinges: count }) => count)).toEqual([2, 3, 4]);
});
test.each([
    [5, 20, 1, false], [20, 20, 2, true], [20.1, 20, 2, false], [30, 20, 3, true], [45 * 0.45359237 * 1.5, 45 * 0.45359237, 3, true],
])('a leaf of %s kg on pairs that carry %s kg with %i hinges: %s', (leafMassKg, pairCarriesKg, stated, isEnough) => {
    expect(hinges({ leafMassKg, pairCarriesKg, stated })).toMatchObject({ isEnough, citation: { kind: 'catalogue' } });
});
test('an unknown mass is not judged', () => {
    expect(hinges({ stated: 2 })).toMatchObject({ stated: 2 });
    expect(hinges({ stated: 2 }).isEnough).toBeUndefined();
});
