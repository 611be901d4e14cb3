import fc from 'fast-check';
import { expect, test } from 'vitest';
import { box, interval, type Wall } from '../../../language/src/core/geometry.js';
import { inches, mm, ticks, zero, type Length } from '../../../language/src/core/length.js';
import { doorOnSite, insideSwingHits, type DoorSite } from '../../../language/src/engines/site/door-opens.js';
import { dropAt, floorFacts, floorMaterials, floorSlope, levellingAt, onDrain } from '../../../language/src/engines/site/floor.js';
import { obstructionGaps, placeObstruction, standRoom } from '../../../language/src/engines/site/obstructions.js';
import { doorOf, inside, mirrorWall, shell } from '../fittings/demo-room.js';

const w = inches;
const every = <T>(value: T): Readonly<Record<Wall, T>> => ({ front: value, left: value, back: value, right: value });
const site: DoorSite = { inside, shell, isFree: { ...every(false), front: true }, clearFloor: {}, gap: every(w(1)), obstructions: [] };

test('clear floor before the door: the width of the leaf is enough, a tick less is not', () => {
    const with_ = (front: number) => doorOnSite(doorOf(), { ...site, clearFloor: { front: ticks(front) } });
    expect(with_(w(24))).toMatchObject({ needed: w(24), clear: w(24), status: 'opens' });
    expect(with_(w(24) - 1)).toMatchObject({ status: 'cannot_open' });
});

test('a free side without a figure is not judged; a closed side has only its gap', () => {
    expect(doorOnSite(doorOf(), site)).toMatchObject({ status: 'not_stated' });
    expect(doorOnSite(doorOf(), { ...site, isFree: every(false) })).toMatchObject({ status: 'cannot_open', clear: w(1) });
    expect(doorOnSite(doorOf({ swing: 'inward' }), { ...site, isFree: every(false) })).toMatchObject({ status: 'opens', needed: 0 });
});

// The room's outside corner is 12" from the left and 40" from the front of the place. The door's clear opening is x 23 1/4..45 3/4 inside;
// its leaf is hinged at the left edge of the frame: inside x 21 5/8, in the place 21 5/8 + 12 + 3 3/4 = 37 3/8.
const corner = { left: w(12), front: w(40) };
const post = (fromLeft: number, fromFront: number, more: { bottom?: Length; top?: Length } = {}) =>
    placeObstruction({ name: 'post', fromLeft: ticks(fromLeft), fromFront: ticks(fromFront), width: w(4), depth: w(4), ...more }, w(96));
const opens = (...obstructions: ReturnType<typeof post>[]) => doorOnSite(doorOf(), { ...site, clearFloor: { front: w(40) }, corner, obstructions });

test('an obstruction in the quarter circle stops the leaf; beside or beyond it, it does not', () => {
    expect(opens(post(w(45), w(30)))).toMatchObject({ status: 'cannot_open', obstructions: [{ name: 'post' }] });
    expect(opens(post(w(36), w(12)))).toMatchObject({ status: 'opens' }); // before the hinge, its back at 16", exactly the reach from the front at 40"
    expect(opens(post(w(36), w(12) + 1))).toMatchObject({ status: 'cannot_open' });
    expect(opens(post(w(33, 3, 8), w(30)))).toMatchObject({ status: 'opens' }); // it ends at the hinge
    expect(opens(post(w(33, 3, 8) + 1, w(30)))).toMatchObject({ status: 'cannot_open' });
    expect(opens(post(w(57), w(18)))).toMatchObject({ status: 'opens' }); // in the box round the sweep, outside the arc
    expect(opens(post(w(45), w(30), { bottom: w(74, 1, 2) }))).toMatchObject({ status: 'opens' }); // over the leaf
    expect(opens(post(w(45), w(30), { bottom: ticks(w(74, 1, 2) - 1) }))).toMatchObject({ status: 'cannot_open' });
});

test('obstructions are not judged while nobody knows where the room stands', () => {
    expect(doorOnSite(doorOf(), { ...site, clearFloor: { front: w(40) }, obstructions: [post(w(45), w(30))] })).toMatchObject({ status: 'opens', areObstructionsUnjudged: true });
});

test('mirrored place, mirrored door: the same answer on every wall', () => {
    const place = w(200);
    fc.assert(fc.property(fc.integer({ min: 0, max: 190 }), fc.integer({ min: 0, max: 190 }), fc.constantFrom<Wall[]>('front', 'left', 'back', 'right'), fc.boolean(), (x, y, wall, hingesAtStart) => {
        const [start, end]: [Wall, Wall] = wall === 'front' || wall === 'back' ? ['left', 'right'] : ['front', 'back'];
        const read = (turn: (one: Wall) => Wall, fromLeft: Length, left: Length) => doorOnSite(
            doorOf({ wall: turn(wall), hinge: turn(hingesAtStart ? start : end), place: { from: turn(start), distance: w(15), to: 'near_edge' } }),
            { ...site, isFree: every(true), clearFloor: every(w(60)), corner: { left, front: w(60) }, obstructions: [placeObstruction({ name: 'post', fromLeft, fromFront: w(y), width: w(4), depth: w(4) }, w(96))] },
        ).status;
        const outside = inside.width + shell.walls.left + shell.walls.right;
        expect(read(mirrorWall, ticks(place - w(x) - w(4)), ticks(place - w(60) - outside))).toBe(read(one => one, w(x), w(60)));
    }));
});

test('an inward leaf hits what stands in its quarter circle', () => {
    const bench = { kind: 'bench', name: 'lower', box: box(interval(w(30), w(60)), interval(w(20), w(40)), interval(zero, w(18))) } as const;
    expect(insideSwingHits(doorOf({ swing: 'inward' }), [bench], inside)).toEqual([bench]);
    expect(insideSwingHits(doorOf({ swing: 'inward' }), [{ ...bench, box: { ...bench.box, y: interval(w(24), w(44)) } }], inside)).toEqual([]);
    expect(insideSwingHits(doorOf(), [bench], inside)).toEqual([]);
});

test('where the room stands: its gap from a closed side, in the middle between two, unknown between free ones', () => {
    const stand = (isFree: Partial<Record<Wall, boolean>>) => standRoom({
        site: { width: w(96), depth: w(108) }, room: { width: w(84), depth: w(72), height: w(84) }, isFree: { ...every(false), ...isFree }, gap: { ...every(w(1)), back: w(2) },
    });
    expect(stand({ front: true, right: true })).toMatchObject({ left: w(1), front: w(34), box: { x: interval(w(1), w(85)), y: interval(w(34), w(106)) } });
    expect(stand({ left: true })).toMatchObject({ left: w(11), front: w(18) });
    expect(stand({})).toMatchObject({ left: w(6), front: w(18) });
    expect(stand({ left: true, right: true })).toEqual({ front: w(18) });
});

test('obstructions against the room: touching is beside it', () => {
    const room = box(interval(w(10), w(90)), interval(w(10), w(80)), interval(zero, w(84)));
    const [beside, inIt, over] = obstructionGaps(room, [post(w(6), w(20)), post(w(6) + 1, w(20)), post(w(20), w(20), { bottom: w(84) })]);
    expect([beside!.isInRoom, beside!.gap, inIt!.isInRoom, over!.isInRoom]).toEqual([false, 0, true, false]);
    expect(obstructionGaps(room, [post(w(3), w(20))])[0]!.gap).toBe(w(3));
});

test('which floors keep water out and which burn', () => {
    expect(floorMaterials.filter(material => !floorFacts(material).isWaterproof)).toEqual(['wood', 'carpet']);
    expect(floorMaterials.filter(material => !floorFacts(material).isCombustible)).toEqual(['tile', 'concrete', 'stone']);
});

test('a floor falls evenly to its side', () => {
    const slope = floorSlope({ width: w(96), depth: w(108), fall: w(1), fallsTo: 'right' });
    expect([dropAt(slope, zero, zero), dropAt(slope, w(48), w(50)), dropAt(slope, w(96), zero)]).toEqual([0, w(0, 1, 2), w(1)]);
    const back = floorSlope({ width: mm(2400), depth: mm(2700), fall: mm(27), fallsTo: 'front' });
    expect([dropAt(back, zero, zero), dropAt(back, zero, mm(1000)), dropAt(back, zero, mm(2700))]).toEqual([mm(27), mm(17), 0]);
    expect(levellingAt(slope, [{ x: w(24), y: zero }, { x: w(72), y: zero }])).toEqual([0, w(0, 1, 2)]);
    expect(levellingAt(slope, [])).toEqual([]);
});

test('half a fall counts as level and says what is missing', () => {
    expect(floorSlope({ width: w(96), depth: w(96), fall: w(1) }).problems).toEqual([{ kind: 'fall-direction-missing' }]);
    expect(floorSlope({ width: w(96), depth: w(96), fallsTo: 'left' }).problems).toEqual([{ kind: 'fall-missing' }]);
    expect(dropAt(floorSlope({ width: w(96), depth: w(96), fall: w(1) }), w(50), w(50))).toBe(0);
    expect(floorSlope({ width: w(96), depth: w(96) }).problems).toEqual([]);
});

test('plates and legs miss the drain; touching its edge misses it', () => {
    const plate = (from: number) => ({ name: 'BASE-LEFT', x: interval(ticks(from), ticks(from + w(3, 1, 2))), y: interval(zero, w(80)) });
    const drain = { x: w(50), y: w(40) }; // 4" wide: 48..52
    expect(onDrain(drain, [plate(w(52))])).toEqual([]);
    expect(onDrain(drain, [plate(w(52) - 1)])).toHaveLength(1);
    expect(onDrain({ ...drain, size: w(2) }, [plate(w(51))])).toEqual([]);
});
