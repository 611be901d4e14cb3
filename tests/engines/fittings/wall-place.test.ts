import fc from 'fast-check';
import { expect, test } from 'vitest';
import { box, interval, neighbours, walls } from '../../../language/src/core/geometry.js';
import { inches, mm, ticks } from '../../../language/src/core/length.js';
import { inRoom, onWall } from '../../../language/src/engines/fittings/wall-frame.js';
import { alongTheWall, distanceFrom, upTheWall } from '../../../language/src/engines/fittings/wall-place.js';
import { inside } from './demo-room.js';

const anyInterval = fc.tuple(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 0, max: 1e8 })).map(([from, size]) => interval(ticks(from), ticks(from + size)));

test('the frame of a wall and the room frame turn into each other', () => {
    fc.assert(fc.property(fc.constantFrom(...walls), anyInterval, anyInterval, anyInterval, (wall, x, y, z) => {
        const solid = box(x, y, z);
        expect(inRoom(wall, onWall(wall, solid, inside), inside)).toEqual(solid);
    }));
});

test('a distance from a neighbouring wall comes back as the same distance', () => {
    fc.assert(fc.property(fc.constantFrom(...walls), fc.boolean(), fc.integer({ min: 0, max: 1e8 }), fc.integer({ min: 0, max: 1e7 }), (wall, fromLeft, distance, size) => {
        const from = fromLeft ? neighbours[wall].left : neighbours[wall].right;
        const { stretch } = alongTheWall(wall, { from, distance: ticks(distance), to: 'near_edge' }, ticks(size), inside);
        expect(distanceFrom(wall, from, stretch!, inside)).toBe(distance);
    }));
});

test('on the right wall, from front is measured from the right-hand end as seen from inside', () => {
    const { stretch, problems } = alongTheWall('right', { from: 'front', distance: inches(12, 1, 2), to: 'near_edge' }, inches(10), inside);
    expect(problems).toEqual([]);
    expect(stretch).toEqual(interval(inches(42), inches(52)));
    expect(onWall('right', inRoom('right', { u: stretch!, v: interval(inches(0), inches(1)), w: interval(inches(0), inches(1)) }, inside), inside).u).toEqual(stretch);
    expect(inRoom('right', { u: stretch!, v: interval(inches(0), inches(1)), w: interval(inches(0), inches(1)) }, inside).y).toEqual(interval(inches(12, 1, 2), inches(22, 1, 2)));
});

test('the middle and the near edge name the same place', () => {
    const middle = alongTheWall('back', { from: 'right', distance: inches(20), to: 'middle' }, inches(10), inside);
    expect(middle).toEqual(alongTheWall('back', { from: 'right', distance: inches(15), to: 'near_edge' }, inches(10), inside));
});

test('inches and millimetres give the same place', () => {
    expect(alongTheWall('left', { from: 'front', distance: mm(254), to: 'near_edge' }, mm(203.2), inside))
        .toEqual(alongTheWall('left', { from: 'front', distance: inches(10), to: 'near_edge' }, inches(8), inside));
});

test('a thing that ends at the far lining is on the wall; one tick more runs off it', () => {
    const at = (distance: number) => alongTheWall('front', { from: 'left', distance: ticks(distance), to: 'near_edge' }, inches(10), inside).problems;
    expect(at(inches(66, 1, 2))).toEqual([]);
    expect(at(inches(66, 1, 2) + 1)).toEqual([{ kind: 'runs-off-the-wall', wall: 'front', past: 'right', over: 1 }]);
});

test('what cannot be placed says why', () => {
    expect(alongTheWall('front', undefined, inches(1), inside)).toEqual({ problems: [{ kind: 'place-missing', wall: 'front' }] });
    expect(alongTheWall('front', { from: 'back', distance: inches(1), to: 'near_edge' }, inches(1), inside).problems)
        .toEqual([{ kind: 'not-a-neighbour', wall: 'front', from: 'back', neighbours: ['right', 'left'] }]);
    expect(upTheWall('front', {}, inches(1), inside)).toEqual({ problems: [{ kind: 'height-missing', wall: 'front' }] });
    expect(upTheWall('front', { bottom: inches(78) }, inches(1), inside).problems).toEqual([{ kind: 'above-the-ceiling', wall: 'front', over: inches(1) }]);
    expect(upTheWall('front', { belowCeiling: inches(77) }, inches(2), inside).problems).toEqual([{ kind: 'below-the-floor', wall: 'front', over: inches(1) }]);
});
