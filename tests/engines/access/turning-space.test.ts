import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { interval } from '../../../language/src/core/geometry.js';
import { inches, inMm, minus, mm, plus, ticks, times, type Length } from '../../../language/src/core/length.js';
import type { PlanBox } from '../../../language/src/engines/access/free-floor.js';
import { circleFits, largestCircle, placeCircle } from '../../../language/src/engines/access/turning-circle.js';
import { placeT, type PlacedT } from '../../../language/src/engines/access/turning-t.js';
import { findTurningSpace } from '../../../language/src/engines/access/turning-space.js';
import '../../support/seed.js';

const room = (width: number, depth: number) => ({ width: inches(width), depth: inches(depth), height: inches(84) });
const rect = (x0: number, x1: number, y0: number, y1: number): PlanBox => ({ x: interval(inches(x0), inches(x1)), y: interval(inches(y0), inches(y1)) });
const oneTick = ticks(1);

describe('a circle on the free floor', () => {
    test('in an empty room: exactly as wide is enough, a tick less is not', () => {
        expect(placeCircle(inches(60), [], room(60, 72))).toBeDefined();
        expect(placeCircle(inches(60), [], { ...room(60, 72), width: minus(inches(60), oneTick) })).toBeUndefined();
    });
    test('between a bench and a wall: exactly 60" is enough, two ticks less are not', () => {
        expect(placeCircle(inches(60), [rect(0, 80, 60, 80)], room(80, 80))).toMatchObject({ y: inches(30) });
        expect(placeCircle(inches(60), [{ ...rect(0, 80, 60, 80), y: interval(minus(inches(60), times(oneTick, 2)), inches(80)) }], room(80, 80))).toBeUndefined();
    });
    // In a square of side a with a square of side b in one corner it touches the two far walls and the corner: √2·(a − b − r) = r (plane geometry).
    test('beside a box in a corner: by plane geometry', () => {
        const [a, b] = [2000, 700];
        const taken = [{ x: interval(mm(0), mm(b)), y: interval(mm(0), mm(b)) }];
        const found = largestCircle(taken, { width: mm(a), depth: mm(a), height: mm(2000) });
        const radius = (a - b) * Math.SQRT2 / (1 + Math.SQRT2);
        expect(inMm(found?.diameter ?? ticks(0)) / 2).toBeCloseTo(radius, 4);
    });
    test('between the corners of four boxes: the diagonal of what they leave', () => {
        // Corners at (±s, ±s) round the middle: the circle through all four has radius s·√2.
        const s = 500;
        const [c, w] = [1000, 2000];
        const taken = [[0, 0], [0, 1], [1, 0], [1, 1]].map(([i = 0, j = 0]): PlanBox => ({
            x: i === 0 ? interval(mm(0), mm(c - s)) : interval(mm(c + s), mm(w)), y: j === 0 ? interval(mm(0), mm(c - s)) : interval(mm(c + s), mm(w)),
        }));
        const found = largestCircle(taken, { width: mm(w), depth: mm(w), height: mm(2000) });
        expect(inMm(found?.diameter ?? ticks(0))).toBeCloseTo(2 * s * Math.SQRT2, 4);
    });
    test('none where everything is taken', () => { expect(largestCircle([rect(0, 60, 0, 60)], room(60, 60))).toBeUndefined(); });
});

/** Rooms with a few boxes on the inch grid. */
const anyRoom = fc.record({
    width: fc.integer({ min: 40, max: 120 }), depth: fc.integer({ min: 40, max: 120 }),
    boxes: fc.array(fc.record({ x: fc.integer({ min: 0, max: 110 }), y: fc.integer({ min: 0, max: 110 }), w: fc.integer({ min: 1, max: 60 }), d: fc.integer({ min: 1, max: 60 }) }), { maxLength: 6 }),
}).map(({ width, depth, boxes }) => ({ inside: room(width, depth), taken: boxes.map(({ x, y, w, d }) => rect(x, x + w, y, y + d)) }));

/** Whether a centre on the inch grid has room: a search that knows nothing of limits and meetings. */
function gridFits(diameter: number, { inside, taken }: { readonly inside: ReturnType<typeof room>; readonly taken: readonly PlanBox[] }): boolean {
    const inch = inches(1);
    for (let x = 0; x * inch <= inside.width; x++) for (let y = 0; y * inch <= inside.depth; y++) {
        if (circleFits({ x: inches(x), y: inches(y), diameter: inches(diameter) }, taken, inside)) return true;
    }
    return false;
}

describe('over random rooms', () => {
    test('a circle that is found fits, and one that a plain grid finds is found', () => {
        fc.assert(fc.property(anyRoom, fc.integer({ min: 20, max: 80 }), (input, diameter) => {
            const found = placeCircle(inches(diameter), input.taken, input.inside);
            if (found) expect(circleFits(found, input.taken, input.inside)).toBe(true);
            else expect(gridFits(diameter, input)).toBe(false);
        }), { numRuns: 120 });
    });
    test('the largest circle fits, and nothing larger by an inch has room on the grid', () => {
        fc.assert(fc.property(anyRoom, input => {
            const found = largestCircle(input.taken, input.inside);
            if (found) expect(circleFits(found, input.taken, input.inside)).toBe(true);
            expect(gridFits(Math.floor((found?.diameter ?? 0) / inches(1)) + 1, input)).toBe(false);
        }), { numRuns: 25 });
    });
    test('taking more floor never widens the largest circle, and a deeper room never narrows it', () => {
        fc.assert(fc.property(anyRoom, fc.integer({ min: 1, max: 30 }), (input, more) => {
            const all = largestCircle(input.taken, input.inside)?.diameter ?? 0;
            expect(largestCircle(input.taken.slice(1), input.inside)?.diameter ?? 0).toBeGreaterThanOrEqual(all);
            expect(largestCircle(input.taken, { ...input.inside, depth: plus(input.inside.depth, inches(more)) })?.diameter ?? 0).toBeGreaterThanOrEqual(all);
        }), { numRuns: 25 });
    });
    test('a T that is found lies free, and one that a plain grid finds is found', () => {
        const t = { square: inches(60), arm: inches(36) };
        const isFree = ({ bar, base }: PlacedT, taken: readonly PlanBox[], width: Length, depth: Length): boolean => [bar, base].every(({ x, y }) =>
            x.from >= 0 && y.from >= 0 && x.to <= width && y.to <= depth && taken.every(box => !(x.from < box.x.to && box.x.from < x.to && y.from < box.y.to && box.y.from < y.to)));
        fc.assert(fc.property(anyRoom, ({ inside, taken }) => {
            const found = placeT(t, taken, inside);
            if (found) { expect(isFree(found, taken, inside.width, inside.depth)).toBe(true); return; }
            // All boxes lie on the inch grid, so if there is a place there is one on it.
            for (let x = 0; inches(x + 60) <= inside.width; x++) for (let y = 0; inches(y + 60) <= inside.depth; y++) {
                const shapes = [[rect(x, x + 60, y + 24, y + 60), rect(x + 12, x + 48, y, y + 60)], [rect(x, x + 60, y, y + 36), rect(x + 12, x + 48, y, y + 60)],
                    [rect(x + 24, x + 60, y, y + 60), rect(x, x + 60, y + 12, y + 48)], [rect(x, x + 36, y, y + 60), rect(x, x + 60, y + 12, y + 48)]] as const;
                for (const [bar, base] of shapes) expect(isFree({ stem: 'to_front', bar, base }, taken, inside.width, inside.depth)).toBe(false);
            }
        }), { numRuns: 60 });
    });
});

describe('a turning space', () => {
    const t = { square: inches(60), arm: inches(36) };
    test('is a T where boxes in two corners leave no circle', () => {
        const taken = [rect(0, 12, 0, 24), rect(48, 60, 0, 24)];
        const ask = { inside: room(60, 60), taken, swept: [], diameter: inches(60) };
        expect(findTurningSpace({ ...ask, t })).toMatchObject({ t: { stem: 'to_front' }, isSwept: false });
        expect(findTurningSpace(ask)).toEqual({ isSwept: false });
    });
    test('may be swept by a door only when there is no other', () => {
        const swept = [rect(0, 24, 0, 24)];
        expect(findTurningSpace({ inside: room(60, 60), taken: [], swept, diameter: inches(60), t })).toMatchObject({ isSwept: true });
        expect(findTurningSpace({ inside: room(60, 84), taken: [], swept, diameter: inches(60), t })).toMatchObject({ isSwept: false });
    });
});
