import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alongWall, box, boxOnWall, distance, interval, neighbours, overlap, placeFrom, walls, type InsideSize } from '../../language/src/core/geometry.js';
import { inches, ticks, type Length } from '../../language/src/core/length.js';

const inside: InsideSize = { width: inches(80), depth: inches(60), height: inches(78) };
const cube = (x: number, y: number, z: number, size: number): ReturnType<typeof box> =>
    box(interval(inches(x), inches(x + size)), interval(inches(y), inches(y + size)), interval(inches(z), inches(z + size)));

test('boxes that touch do not overlap; one tick more and they do', () => {
    expect(overlap(cube(0, 0, 0, 4), cube(4, 0, 0, 4))).toBe(false);
    const nearer = cube(4, 0, 0, 4);
    expect(overlap(cube(0, 0, 0, 4), { ...nearer, x: interval(ticks(nearer.x.from - 1), nearer.x.to) })).toBe(true);
});
test('the distance of boxes is Euclid\'s: 3, 4 and 12 make 13', () => {
    expect(distance(cube(0, 0, 0, 1), cube(4, 5, 13, 1))).toBe(inches(13));
});
test('the near edge lies where the neighbouring wall is, seen from inside', () => {
    expect(placeFrom('right', 'front', inches(12), inches(10), inside)).toEqual(interval(inches(38), inches(48)));
    expect(placeFrom('right', 'back', inches(12), inches(10), inside)).toEqual(interval(inches(12), inches(22)));
    expect(placeFrom('right', 'left', inches(12), inches(10), inside)).toBeUndefined();
});
test('on the right wall a thing 12" from the front stands at y = 12"', () => {
    const u = placeFrom('right', 'front', inches(12), inches(10), inside);
    if (!u) throw new Error('no place');
    expect(boxOnWall('right', u, interval(inches(0), inches(1)), interval(inches(0), inches(5)), inside)).toEqual(
        box(interval(inches(75), inches(80)), interval(inches(12), inches(22)), interval(inches(0), inches(1))));
});
test('a distance from either end of any wall is kept in the room frame', () => {
    fc.assert(fc.property(fc.constantFrom(...walls), fc.boolean(), fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 20 }), (wall, isLeft, near, size) => {
        const from = isLeft ? neighbours[wall].left : neighbours[wall].right;
        const u = placeFrom(wall, from, inches(near), inches(size), inside);
        if (!u) throw new Error('no place');
        const along = alongWall(wall, u, inside);
        const ends: Record<string, Length> = { left: along.from, front: along.from, right: ticks(inside.width - along.to), back: ticks(inside.depth - along.to) };
        expect(ends[from]).toBe(inches(near));
        expect(along.to - along.from).toBe(inches(size));
    }));
});
