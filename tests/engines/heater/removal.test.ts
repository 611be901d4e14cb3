import { expect, test } from 'vitest';
import { box, distance, interval, overlap } from '../../../language/src/core/geometry.js';
import { inches, ticks } from '../../../language/src/core/length.js';
import type { Thing } from '../../../language/src/engines/fittings/things.js';
import { removalPath } from '../../../language/src/engines/heater/removal.js';
import { doorOf, heaterAt, inside, tarn } from '../fittings/demo-room.js';

const w = inches;
const bench = (x: [number, number], y: [number, number], z: [number, number] = [0, w(18)]): Thing => ({
    kind: 'bench', name: 'lower', box: box(interval(ticks(x[0]), ticks(x[1])), interval(ticks(y[0]), ticks(y[1])), interval(ticks(z[0]), ticks(z[1]))),
});
const stove = heaterAt('right', 'front', w(20));
const door = doorOf(); // clear opening x 23 1/4..45 3/4

test('in an empty room it comes off its wall and goes out', () => {
    const found = removalPath(stove, door, [], inside);
    expect(found).toMatchObject({ smallerTwo: [w(10), w(16)], passesDoor: true, inTheWay: [] });
    const end = found.path!.at(-1)!;
    expect(end.y.from).toBe(0);
    expect(end.x.from >= w(23, 1, 4) && end.x.to <= w(45, 3, 4)).toBe(true);
    expect(found.path![0]!.z.from).toBe(w(9)); // lifted an inch off its screws
});

test('it goes round a bench, and every place on the way is free', () => {
    const across = bench([w(30), w(60)], [w(19), w(40)], [0, w(76)]);
    const found = removalPath(stove, door, [across], inside);
    expect(found.path).toBeDefined();
    expect(found.path!.some(({ x, y, z }) => overlap(across.box, { x, y, z }))).toBe(false);
    // Each move is along one axis.
    found.path!.slice(1).forEach((next, at) => expect(next.x.from === found.path![at]!.x.from || next.y.from === found.path![at]!.y.from).toBe(true));
});

test('a bench to the ceiling from wall to wall blocks the way; a low one is carried over', () => {
    const wall = bench([w(50), w(60)], [0, w(64, 1, 2)], [0, w(78)]);
    expect(removalPath(stove, door, [wall], inside)).toMatchObject({ noPath: 'things_in_the_way', inTheWay: [wall] });
    const low = bench([w(50), w(60)], [0, w(64, 1, 2)], [0, w(37)]);
    expect(removalPath(stove, door, [low], inside).path![0]!.z.from).toBe(w(37));
});

test('a passage as wide as the casing lets it through, one tick less does not', () => {
    // Two walls of benches leave a passage from the heater to the left, as deep as the casing is wide.
    const passage = (gap: number) => [bench([w(50), w(60)], [0, w(20)], [0, w(78)]), bench([w(50), w(60)], [w(20) + gap, w(64, 1, 2)], [0, w(78)])];
    expect(removalPath(stove, door, passage(w(16)), inside).path).toBeDefined();
    expect(removalPath(stove, door, passage(w(16) - 1), inside).path).toBeUndefined();
});

test('a thing it would have to be lifted through blocks that height', () => {
    const low = bench([w(50), w(60)], [0, w(64, 1, 2)], [0, w(37)]);
    const shelf: Thing = { ...bench([w(64), w(76)], [w(20), w(30)], [w(40), w(42)]), kind: 'shelf', name: 'shelf' };
    expect(removalPath(stove, door, [low, shelf], inside).noPath).toBe('things_in_the_way');
});

test('the opening: upright, tilted, not at all', () => {
    const with_ = (body: { width: number; height: number }, depth: number) =>
        removalPath(heaterAt('right', 'front', w(20), { ...tarn, body: { width: w(body.width), height: w(body.height) }, depth: w(depth) }), door, [], inside);
    expect(with_({ width: 40, height: 30 }, 22)).toMatchObject({ passesDoor: true, smallerTwo: [w(22), w(30)] });
    expect(with_({ width: 40, height: 30 }, 22).path).toBeDefined();
    expect(with_({ width: 20, height: 30 }, 23)).toMatchObject({ passesDoor: true, noPath: 'opening_too_small_upright' });
    expect(with_({ width: 24, height: 30 }, 23)).toMatchObject({ passesDoor: false });
});

test('exactly as wide as the opening passes', () => {
    const found = removalPath(heaterAt('right', 'front', w(20), { ...tarn, depth: w(22, 1, 2) }), door, [], inside);
    expect(found.passesDoor).toBe(true);
    expect(found.path!.at(-1)!.x).toEqual(interval(w(23, 1, 4), w(45, 3, 4)));
});

test('mirrored, it goes the mirrored way', () => {
    const across = bench([w(30), w(60)], [w(19), w(40)], [0, w(76)]);
    const mirrored = bench([inside.width - w(60), inside.width - w(30)], [w(19), w(40)], [0, w(76)]);
    const here = removalPath(stove, door, [across], inside).path!;
    const there = removalPath(heaterAt('left', 'front', w(20)), doorOf({ hinge: 'right', place: { from: 'right', distance: w(23, 1, 4), to: 'near_edge' } }), [mirrored], inside).path!;
    const long = (path: typeof here) => path.slice(1).reduce((sum, next, at) => sum + distance({ ...next, x: interval(next.x.from, next.x.from), y: interval(next.y.from, next.y.from) }, { ...path[at]!, x: interval(path[at]!.x.from, path[at]!.x.from), y: interval(path[at]!.y.from, path[at]!.y.from) }), 0);
    expect(there.length).toBe(here.length);
    expect(long(there)).toBe(long(here));
});
