import fc from 'fast-check';
import { expect, test } from 'vitest';
import { interval, insideRun, neighbours, walls, type Wall } from '../../../language/src/core/geometry.js';
import { area, inches, mm, ticks } from '../../../language/src/core/length.js';
import { placeDoor, type DoorInput } from '../../../language/src/engines/openings/door.js';
import { frameParts, headerPart, windowTrimParts } from '../../../language/src/engines/openings/opening-parts.js';
import { placeWindow } from '../../../language/src/engines/openings/window.js';
import { doorOf, inside, leaf24, mirrorWall } from '../fittings/demo-room.js';

test('clear opening, section, frame and leaf of a door on the front wall', () => {
    const { door, problems } = placeDoor(leaf24, inside);
    expect(problems).toEqual([]);
    // From inside, the left wall is at the right-hand end: u = 76 1/2 - 23 1/4 - 22 1/2 = 30 3/4.
    expect(door!.clear.u).toEqual(interval(inches(30, 3, 4), inches(53, 1, 4)));
    expect(door!.section).toEqual(interval(inches(27), inches(57)));
    // 24" leaf and two gaps of 1/8" between jambs, flush with the latch jamb; hinges toward the left wall, at high u.
    expect(door!.frameOpening.u).toEqual(interval(inches(30, 3, 4), inches(55)));
    expect(door!.leaf.u).toEqual(interval(inches(30, 7, 8), inches(54, 7, 8)));
    expect(door!.frameOpening.v).toEqual(interval(inches(0), inches(74, 5, 8)));
    expect(door!.gaps).toEqual({ top: inches(0, 1, 8), sides: inches(0, 1, 8), bottom: inches(0, 1, 2) });
    expect(door!.underLeaf).toBe(area(inches(24), inches(0, 1, 2)));
    expect(door!.threshold).toEqual({ kind: 'cut_out' });
    expect(door!.overHead).toBe(inches(78) - inches(76, 1, 8));
});

test.each([
    ['front', 'left', 'outward', 'left-hand', 'outside'],
    ['front', 'right', 'outward', 'right-hand', 'outside'],
    ['front', 'left', 'inward', 'right-hand', 'inside'],
    ['back', 'left', 'outward', 'right-hand', 'outside'],
    ['right', 'front', 'outward', 'left-hand', 'outside'],
    ['left', 'front', 'outward', 'right-hand', 'outside'],
] as const)('a door on the %s wall, hinges %s, %s, is %s seen from the %s', (wall, hinge, swing, hand, seenFrom) => {
    expect(doorOf({ wall, hinge, swing, place: { from: neighbours[wall].left, distance: inches(10), to: 'near_edge' } }).hand).toEqual({ hand, seenFrom });
});

test('a raised threshold lifts opening, leaf and frame', () => {
    const door = doorOf({ threshold: inches(0, 1, 2) });
    expect(door.threshold).toEqual({ kind: 'raised', height: inches(0, 1, 2) });
    expect(door.clear.v.from).toBe(inches(0, 1, 2));
    expect(door.leaf.v).toEqual(interval(inches(1), inches(75)));
});

test('the clear width may be what the open leaf leaves, and one tick more is reported', () => {
    // 24 1/4" between jambs less 1 1/2" of leaf.
    const at = (width: number) => placeDoor({ ...leaf24, clear: { width: ticks(width), height: inches(74) } }, inside).problems;
    expect(at(inches(22, 3, 4))).toEqual([]);
    expect(at(inches(22, 3, 4) + 1)).toEqual([{ kind: 'clear-wider-than-leaf-leaves', stated: inches(22, 3, 4) + 1, atMost: inches(22, 3, 4) }]);
});

test('a frame as wide as its section passes; a wider one names the side', () => {
    // On the hinge side 1 3/4" + frame beside the clear opening; the section leaves (section - 22 1/2") / 2.
    const at = (section: number) => placeDoor({ ...leaf24, section: ticks(section) }, inside).problems;
    expect(at(inches(29))).toEqual([]);
    expect(at(inches(29) - 2)).toEqual([{ kind: 'frame-wider-than-section', toward: 'left', over: 1 }]);
});

test('a door as high as the room passes; a higher one is reported', () => {
    const at = (height: number) => placeDoor({ ...leaf24, leaf: { width: inches(24), height: ticks(height) } }, inside).problems;
    expect(at(inches(75, 7, 8))).toEqual([]);
    expect(at(inches(75, 7, 8) + 1)).toEqual([{ kind: 'door-higher-than-room', top: inches(78) + 1, room: inches(78) }]);
});

test('without a place or with hinges on no neighbouring wall there is no door and a reason', () => {
    const { place: _place, ...unplaced } = leaf24;
    expect(placeDoor(unplaced, inside)).toEqual({ problems: [{ kind: 'place-missing', wall: 'front' }] });
    expect(placeDoor({ ...leaf24, hinge: 'back' }, inside)).toEqual({ problems: [{ kind: 'hinge-not-on-a-neighbour', wall: 'front', hinge: 'back', neighbours: ['right', 'left'] }] });
});

test('the same door in millimetres is the same door', () => {
    const metric: Partial<DoorInput> = {
        place: { from: 'left', distance: mm(590.55), to: 'near_edge' }, leaf: { width: mm(609.6), height: mm(1879.6) },
        clear: { width: mm(571.5), height: mm(1879.6) }, section: mm(762), frameWidth: mm(38.1),
    };
    expect(doorOf(metric)).toEqual(doorOf());
});

test('mirroring the room mirrors the door: the other hand, the same figures', () => {
    fc.assert(fc.property(fc.constantFrom(...walls), fc.boolean(), fc.boolean(), fc.integer({ min: 0, max: 30 }), fc.constantFrom('inward' as const, 'outward' as const), (wall, nearLeft, hingeLeft, eighths, swing) => {
        const ends = neighbours[wall];
        const place = { from: nearLeft ? ends.left : ends.right, distance: inches(eighths, 1, 8), to: 'near_edge' as const };
        const door = doorOf({ wall, swing, place, hinge: hingeLeft ? ends.left : ends.right });
        const mirrored = doorOf({ wall: mirrorWall(wall), swing, place: { ...place, from: mirrorWall(place.from) }, hinge: mirrorWall(door.hinge) });
        const run = insideRun(wall, inside);
        const turn = (u: { readonly from: number; readonly to: number }) => ({ from: run - u.to, to: run - u.from });
        expect(mirrored.clear.u).toEqual(turn(door.clear.u));
        expect(mirrored.section).toEqual(turn(door.section));
        expect(mirrored.leaf.u).toEqual(turn(door.leaf.u));
        expect(mirrored.swing.u).toEqual(turn(door.swing.u));
        expect(mirrored.hand.hand).not.toBe(door.hand.hand);
        expect([mirrored.underLeaf, mirrored.overHead, mirrored.clearWidth]).toEqual([door.underLeaf, door.overHead, door.clearWidth]);
    }));
});

test('frame and header parts', () => {
    const frame = { stock: 'cedar_2x4', section: { thickness: inches(1, 1, 2), width: inches(3, 1, 2) } };
    const parts = [...frameParts(doorOf(), frame), headerPart(doorOf(), frame)];
    expect(parts.map(({ mark, count, length, nominal }) => [mark, count, length, nominal])).toEqual([
        ['ENTRY-JAMB-1', 2, inches(74, 5, 8), '2x4'],
        ['ENTRY-HEAD-1', 1, inches(27, 1, 4), '2x4'], // 24 1/4" and two jambs of 1 1/2"
        ['ENTRY-HEADER-1', 1, inches(30), '2x4'],
    ]);
});

const view = {
    name: 'view', wall: 'left' as Wall, place: { from: 'front' as Wall, distance: inches(20), to: 'near_edge' as const }, sill: inches(40),
    glass: { width: inches(20), height: inches(16) }, section: inches(24), trim: { stock: 'cedar', thickness: inches(0, 3, 4), width: inches(2, 1, 2) },
};

test('a window by its clear glass, with mitred trim long point to long point', () => {
    const { window, problems } = placeWindow(view, inside);
    expect(problems).toEqual([]);
    expect(window!.glass).toEqual({ u: interval(inches(20), inches(40)), v: interval(inches(40), inches(56)) });
    expect(window!.section).toEqual(interval(inches(18), inches(42)));
    expect(window!.glassArea).toBe(area(inches(20), inches(16)));
    expect(windowTrimParts(window!).map(({ count, length, ends }) => [count, length, ends])).toEqual([
        [2, inches(25), { left: 45, right: 45, across: 'face' }], [2, inches(21), { left: 45, right: 45, across: 'face' }],
    ]);
});

test('trim may touch the corner and the ceiling and not run past them', () => {
    const at = (distance: number, sill: number) => placeWindow({ ...view, place: { ...view.place, distance: ticks(distance) }, sill: ticks(sill) }, inside).problems;
    expect(at(inches(2, 1, 2), inches(59, 1, 2))).toEqual([]);
    expect(at(inches(2, 1, 2) - 1, inches(59, 1, 2) + 1)).toEqual([
        { kind: 'trim-does-not-fit', at: 'ceiling', over: 1 }, { kind: 'trim-does-not-fit', at: 'left', over: 1 },
    ]);
    expect(placeWindow({ ...view, section: inches(18) }, inside).problems).toEqual([{ kind: 'glass-wider-than-section', glass: inches(20), section: inches(18) }]);
});
