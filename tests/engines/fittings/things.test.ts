import { expect, test } from 'vitest';
import { interval, overlap, type Wall } from '../../../language/src/core/geometry.js';
import { inches, ticks } from '../../../language/src/core/length.js';
import { duckboardBuild } from '../../../language/src/engines/fittings/duckboard.js';
import { ceilingMouldings } from '../../../language/src/engines/fittings/ceiling-moulding.js';
import { duckboardThing, placeFitting } from '../../../language/src/engines/fittings/placed-fitting.js';
import { fixedOnOpenings, outsideRoom, overlappingThings, roomThings } from '../../../language/src/engines/fittings/things.js';
import { placeWindow } from '../../../language/src/engines/openings/window.js';
import { doorOf, inside, shell } from './demo-room.js';

const hook = (fromLeft: number, bottom = inches(60)) => placeFitting({
    kind: 'hook', name: 'hook', wall: 'front', place: { from: 'left', distance: ticks(fromLeft), to: 'near_edge' },
    height: { bottom }, size: { width: inches(1), height: inches(4) }, depth: inches(2),
}, inside).thing!;

test('a room without contents is six surfaces that do not reach inside', () => {
    const things = roomThings({ inside, shell, doors: [], windows: [], placed: [] });
    expect(things.map(({ kind, name }) => `${kind} ${name}`)).toEqual(['wall front', 'wall left', 'wall back', 'wall right', 'ceiling ceiling', 'floor floor']);
    const room = { x: interval(ticks(0), inside.width), y: interval(ticks(0), inside.depth), z: interval(ticks(0), inside.height) };
    expect(things.filter(({ box }) => overlap(box, room))).toEqual([]);
});

test('an inward leaf stands in the room, an outward one does not', () => {
    const names = (swing: 'inward' | 'outward') => roomThings({ inside, shell, doors: [doorOf({ swing })], windows: [], placed: [] }).slice(6).map(({ name }) => name);
    expect(names('outward')).toEqual(['entry']);
    expect(names('inward')).toEqual(['entry', 'entry leaf']);
});

test('window trim is a ring: the glass is not filled', () => {
    const { window } = placeWindow({
        name: 'view', wall: 'left', place: { from: 'front', distance: inches(20), to: 'near_edge' }, sill: inches(40), glass: { width: inches(20), height: inches(16) },
        section: inches(24), trim: { stock: 'cedar', thickness: inches(0, 3, 4), width: inches(2, 1, 2) },
    }, inside);
    const [glass, ...trim] = roomThings({ inside, shell, doors: [], windows: [window!], placed: [] }).slice(6);
    expect(glass!.kind).toBe('window');
    expect(trim.map(({ kind }) => kind)).toEqual(['trim', 'trim', 'trim', 'trim']);
    expect(trim.every(({ box }) => !overlap({ ...glass!.box, x: interval(ticks(0), inches(1)) }, box))).toBe(true);
    expect(overlappingThings([glass!, ...trim])).toEqual([]);
});

test('things in the same place are found, touching ones are not', () => {
    const pair = (second: number) => overlappingThings([hook(inches(5)), hook(second)]).length;
    expect(pair(inches(6))).toBe(0);
    expect(pair(inches(6) - 1)).toBe(1);
});

test('a hook cannot be fixed where the door is; beside it, it can', () => {
    const door = doorOf();
    const openings = [{ name: door.name, wall: door.wall, opening: door.clear }];
    const found = (distance: number) => fixedOnOpenings([hook(distance)], openings, inside).length;
    expect(found(inches(30))).toBe(1);
    expect(found(inches(22, 1, 4))).toBe(0); // its far edge touches the clear opening at 23 1/4"
    expect(found(inches(22, 1, 4) + 1)).toBe(1);
    expect(fixedOnOpenings([hook(inches(30), inches(74))], openings, inside)).toEqual([]); // above the head
});

test('a fitting without a size is a point, and one that stands out of the room is measured', () => {
    const point = placeFitting({ kind: 'thermometer', name: 'thermometer', wall: 'left', place: { from: 'back', distance: inches(10), to: 'near_edge' }, height: { belowCeiling: inches(6) } }, inside).thing!;
    expect(point.box).toEqual({ x: interval(ticks(0), ticks(0)), y: interval(inches(54, 1, 2), inches(54, 1, 2)), z: interval(inches(72), inches(72)) });
    expect(outsideRoom(point, inside)).toBe(0);
    const board = duckboardThing({ name: 'duckboard', fromLeft: inches(70), fromFront: inches(0), width: inches(10), depth: inches(20), thickness: inches(1, 1, 2) });
    expect(outsideRoom(board, inside)).toBe(inches(3, 1, 2));
});

test('duckboard slats and gaps make up its depth exactly', () => {
    // 6 slats of 3 1/2" and 5 gaps of 1/2" are 23 1/2".
    const { build } = duckboardBuild({ name: 'walk', width: inches(30), depth: inches(23, 1, 2), slat: { stock: 'cedar', section: { thickness: inches(0, 3, 4), width: inches(3, 1, 2) } } });
    expect(build).toMatchObject({ slats: 6, gap: inches(0, 1, 2), leftOver: 0, bearers: 3 });
    expect(build!.parts.map(({ mark, count, length, nominal }) => [mark, count, length, nominal])).toEqual([
        ['WALK-SLAT-1', 6, inches(30), '1x4'], ['WALK-BEARER-1', 3, inches(23, 1, 2), '1x4'],
    ]);
});

test('a depth no gap makes names the nearest depths that one does', () => {
    // 2 slats of 3 1/2" and a gap of 1" : the most is 7 3/4", the least with three is 11 1/4".
    const { problem } = duckboardBuild({ name: 'walk', width: inches(30), depth: inches(8), slat: { stock: 'cedar', section: { thickness: inches(0, 3, 4), width: inches(3, 1, 2) } } });
    expect(problem).toEqual({ kind: 'no-slat-gap', depth: inches(8), nearest: [inches(7, 3, 4), inches(11, 1, 4)] });
    for (const depth of [inches(7, 3, 4), inches(11, 1, 4)]) {
        expect(duckboardBuild({ name: 'walk', width: inches(30), depth, slat: { stock: 'cedar', section: { thickness: inches(0, 3, 4), width: inches(3, 1, 2) } } }).problem).toBeUndefined();
    }
    expect(duckboardBuild({ name: 'walk', width: inches(30), depth: inches(6), slat: { stock: 'cedar', section: { thickness: inches(0, 3, 4), width: inches(3, 1, 2) } } }).problem?.kind).toBe('duckboard-too-small');
});

// the door wall's and the one across from it run through; the others lose two thicknesses of 3/4" between them. Common practice, no source.
test('ceiling mouldings are cut on site, ship long and say what to measure', () => {
    const parts = ceilingMouldings({ stock: 'cove', section: { thickness: inches(0, 3, 4), width: inches(1, 1, 2) }, inside, doorWall: 'front' });
    expect(parts.map(({ mark, length, cut }) => [mark, length, cut])).toEqual([
        ['FRONT-MOULDING-1', inches(78, 1, 2), 'site'], ['LEFT-MOULDING-1', inches(65), 'site'],
        ['BACK-MOULDING-1', inches(78, 1, 2), 'site'], ['RIGHT-MOULDING-1', inches(65), 'site'],
    ]);
    expect(parts[0]!.measure).toBe('lining to lining along the front wall, under the ceiling; it goes on after the door is aligned and holds it in line');
    expect(parts[1]!.measure).toBe('between the moulding of the front wall and the one across from it once those two are up, along the left wall, under the ceiling');
    expect(parts.map(({ goesTo }) => /runs through|butted square/.exec(goesTo)?.[0])).toEqual(['runs through', 'butted square', 'runs through', 'butted square']);
    expect(parts[1]!.place).toEqual({ wall: 'left', stretches: [interval(inches(0, 3, 4), inches(63, 3, 4))], run: inches(64, 1, 2), between: 'linings' });
});

test('with the door in a side wall the side mouldings run through, and nothing stands between mouldings that touch', () => {
    const section = { thickness: inches(0, 3, 4), width: inches(1, 1, 2) };
    const finished = (size: typeof inside, doorWall?: Wall) => ceilingMouldings({ stock: 'cove', section, inside: size, ...(doorWall && { doorWall }) }).map(({ mark, length, allowance }) => [mark.split('-')[0], length - allowance!]);
    expect(finished(inside, 'right')).toEqual([['FRONT', inches(75)], ['LEFT', inches(64, 1, 2)], ['BACK', inches(75)], ['RIGHT', inches(64, 1, 2)]]);
    expect(finished(inside)).toEqual(finished(inside, 'back'));
    expect(finished({ ...inside, depth: inches(1, 1, 2) })).toEqual([['FRONT', inches(76, 1, 2)], ['BACK', inches(76, 1, 2)]]);
});

test('a wall longer than the stock gets equal pieces', () => {
    const [front, left] = ceilingMouldings({ stock: 'cove', section: { thickness: inches(0, 3, 4), width: inches(1, 1, 2) }, inside, longest: inches(65) });
    expect([front!.count, front!.length]).toEqual([2, inches(40, 1, 4)]);
    expect([left!.count, left!.length]).toEqual([1, inches(65)]); // exactly the stock length is enough
});
