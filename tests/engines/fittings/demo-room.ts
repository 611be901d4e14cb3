import type { InsideSize, Wall } from '../../../language/src/core/geometry.js';
import { inches, type Length } from '../../../language/src/core/length.js';
import type { ShellThickness, Thing } from '../../../language/src/engines/fittings/things.js';
import { placeHeater, type HeaterManual, type PlacedHeater } from '../../../language/src/engines/heater/casing.js';
import { placeDoor, type Door, type DoorInput } from '../../../language/src/engines/openings/door.js';

/** A fictional room, heater and door; every figure is made up. */
export const inside: InsideSize = { width: inches(76, 1, 2), depth: inches(64, 1, 2), height: inches(78) };
const thick = inches(3, 3, 4);
export const shell: ShellThickness = { walls: { front: thick, left: thick, back: thick, right: thick }, ceiling: thick };

export const tarn: HeaterManual = {
    title: 'Tarn 60 manual, edition 1 (fictional)',
    body: { width: inches(16), height: inches(24) }, depth: inches(10),
    offWall: inches(2), offFloor: inches(8),
    clearSide: inches(4), clearFront: inches(6), clearAbove: inches(42), clearBelow: inches(6), clearBench: inches(5),
    fastenHeight: inches(18), fastenWidth: inches(12),
    guard: 'recommended', guardOffset: inches(2),
};

export function heaterAt(wall: Wall, from: Wall, distance: Length, manual: HeaterManual = tarn, room: InsideSize = inside): PlacedHeater {
    const { heater } = placeHeater({ name: 'stove', wall, place: { from, distance, to: 'near_edge' }, manual }, room);
    if (!heater) throw new Error('the heater was not placed');
    return heater;
}

export const leaf24: DoorInput = {
    name: 'entry', wall: 'front', hinge: 'left', swing: 'outward', place: { from: 'left', distance: inches(23, 1, 4), to: 'near_edge' },
    leaf: { width: inches(24), height: inches(74) }, clear: { width: inches(22, 1, 2), height: inches(74) }, section: inches(30),
    frameWidth: inches(1, 1, 2),
};
export function doorOf(change: Partial<DoorInput> = {}, room: InsideSize = inside): Door {
    const { door } = placeDoor({ ...leaf24, ...change }, room);
    if (!door) throw new Error('the door was not placed');
    return door;
}

/** The room seen in a mirror: left and right change places. */
export const mirrorWall = (wall: Wall): Wall => wall === 'left' ? 'right' : wall === 'right' ? 'left' : wall;
export const mirrorThing = (thing: Thing, room: InsideSize): Thing => ({
    ...thing,
    name: thing.kind === 'wall' ? mirrorWall(thing.name as Wall) : thing.name,
    box: { ...thing.box, x: { from: (room.width - thing.box.x.to) as Length, to: (room.width - thing.box.x.from) as Length } },
});
