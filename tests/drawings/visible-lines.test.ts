import fc from 'fast-check';
import { expect, test } from 'vitest';
import { box, interval, type Box } from '../../language/src/core/geometry.js';
import { ticks } from '../../language/src/core/length.js';
import { edgesOf, visibleLines, type Point3, type Sight } from '../../language/src/drawings/visible-lines.js';
import type { Solid } from '../../language/src/scene/scene.js';

const solid = (id: string, boxes: readonly Box[]): Solid => ({ id, kind: 'body', layer: 'walls', boxes });
const cube = (x: number, y: number, z: number, dx: number, dy: number, dz: number): Box => box(interval(ticks(x), ticks(x + dx)), interval(ticks(y), ticks(y + dy)), interval(ticks(z), ticks(z + dz)));
const length = (edges: readonly { readonly from: Point3; readonly to: Point3 }[]): number => edges.reduce((sum, { from, to }) => sum + Math.abs(to[0] - from[0]) + Math.abs(to[1] - from[1]) + Math.abs(to[2] - from[2]), 0);
const isometric: Sight = [1, -1, 1];

test('a cube shows nine of its twelve edges in an isometric view, four from above', () => {
    expect(visibleLines([solid('a', [cube(0, 0, 0, 10, 10, 10)])], isometric).visible).toHaveLength(9);
    expect(visibleLines([solid('a', [cube(0, 0, 0, 10, 10, 10)])], [0, 0, 1]).visible).toHaveLength(4);
});
test('a cube behind another shows what reaches past it, to the tick', () => {
    const near = solid('near', [cube(0, 0, 0, 10, 10, 10)]);
    const far = solid('far', [cube(4, 20, 5, 13, 10, 10)]);
    const { visible } = visibleLines([near, far], [0, -1, 0]);
    const own = visible.filter(edge => edge.solid.id === 'far');
    // 13 along the top, 10 up the right side, 5 of the left side over the near one, and 7 of the bottom beside it
    expect(length(own)).toBe(13 + 10 + 5 + 7);
});
test('a body of several boxes has no seams, and a notch has its edges', () => {
    expect(length(edgesOf(solid('whole', [cube(0, 0, 0, 5, 10, 10), cube(5, 0, 0, 5, 10, 10)])))).toBe(12 * 10);
    // an L of two boxes: 18 edges in place of 12
    expect(edgesOf(solid('l', [cube(0, 0, 0, 10, 10, 10), cube(10, 0, 0, 10, 10, 5)]))).toHaveLength(18);
});

/** Whether a point is behind a box, by the slab method on the line to the eye: another way than the product goes. */
function isBehind(at: readonly number[], { x, y, z }: Box, sight: Sight): boolean {
    let [first, last] = [0, Infinity];
    for (const [i, side] of [x, y, z].entries()) {
        const [p, v] = [at[i]!, sight[i]!];
        if (v === 0) { if (p <= side.from || p >= side.to) return false; continue; }
        const [a, b] = [(side.from - p) / v, (side.to - p) / v];
        first = Math.max(first, Math.min(a, b));
        last = Math.min(last, Math.max(a, b));
    }
    return first < last;
}

test('random bodies: what is drawn has nothing before it, and what is left out has', () => {
    const side = fc.integer({ min: 0, max: 12 });
    const size = fc.integer({ min: 1, max: 7 });
    const bodies = fc.array(fc.tuple(side, side, side, size, size, size), { minLength: 1, maxLength: 7 });
    const sights = fc.constantFrom<Sight>(isometric, [0, 0, 1], [0, 1, 0], [-1, 0, 0], [-1, 1, 1]);
    fc.assert(fc.property(bodies, sights, (given, sight) => {
        const solids = given.map((sizes, i) => solid(`s${i}`, [cube(...sizes)]));
        const { visible, hidden } = visibleLines(solids, sight, () => true);
        const boxes = solids.flatMap(one => one.boxes);
        // off the whole numbers, where one body's shadow may end and the next begin
        const middle = ({ from, to }: (typeof visible)[number]): readonly number[] => from.map((value, i) => value + (to[i]! - value) * Math.SQRT1_2 / 2);
        for (const edge of visible) expect(boxes.some(one => isBehind(middle(edge), one, sight))).toBe(false);
        for (const edge of hidden) expect(boxes.some(one => isBehind(middle(edge), one, sight))).toBe(true);
    }), { numRuns: 300 });
});
