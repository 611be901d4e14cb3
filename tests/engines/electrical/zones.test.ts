import fc from 'fast-check';
import { expect, test } from 'vitest';
import { box, interval, type Box } from '../../../language/src/core/geometry.js';
import { mm, ticks, TICKS_PER_MM, type Length } from '../../../language/src/core/length.js';
import { checkZones, zoneOf, zoneSolids, type Zone, type ZonedEquipment } from '../../../language/src/engines/electrical/index.js';

const inside = { width: mm(2400), depth: mm(2000), height: mm(2100) };
const span = (from: number, to: number) => interval(mm(from), mm(to));
const solid = (x: readonly [number, number], y: readonly [number, number], z: readonly [number, number]): Box => box(span(...x), span(...y), span(...z));
const heater = solid([1000, 1400], [100, 400], [150, 800]);
const zones = (thing: Box, toColdSide?: Length): readonly Zone[] => zoneOf(thing, heater, inside, toColdSide);

test.each([
    ['the heater itself', heater, [1]],
    ['touching zone 1 from outside', solid([1900, 1950], [100, 400], [0, 500]), [2]],
    ['within zone 1 up to its edge', solid([1850, 1900], [100, 400], [0, 2100]), [1]],
    ['across the edge of zone 1 over the whole height', solid([1850, 1950], [100, 400], [0, 2100]), [1, 2, 3]],
    ['far off, up to 1.0 m', solid([0, 100], [1500, 1600], [0, 1000]), [2]],
    ['far off, from 1.0 m', solid([0, 100], [1500, 1600], [1000, 1100]), [3]],
    ['inside the corner of the square but outside the round one', solid([1800, 1900], [800, 900], [0, 500]), [2]],
    ['behind the lining', solid([-50, -10], [1500, 1600], [0, 500]), []],
    ['over the ceiling', solid([0, 100], [1500, 1600], [2100, 2150]), []],
    ['through the wall', solid([-50, 10], [1500, 1600], [0, 500]), [2]],
] as const)('%s', (_what, thing, expected) => {
    expect(zones(thing)).toEqual(expected);
});

test('one tick decides: 12.5 nm inside the reach is in zone 1', () => {
    const from = 1900 * TICKS_PER_MM;
    const at = (shift: number): Box => box(interval(ticks(from + shift), ticks(from + shift + 100)), span(100, 400), span(0, 500));
    expect(zones(at(0))).toEqual([2]);
    expect(zones(at(-1))).toEqual([1, 2]);
});

test('the corner is round to the tick: 3-4-5', () => {
    const corner = (x: number, y: number): Box => box(interval(ticks(x), mm(2300)), interval(ticks(y), mm(1900)), span(0, 500));
    const [x, y] = [1700 * TICKS_PER_MM, 800 * TICKS_PER_MM];
    expect(zones(corner(x, y))).toEqual([2]);
    expect(zones(corner(x - 1, y))).toEqual([1, 2]);
    expect(zones(corner(x, y - 1))).toEqual([1, 2]);
});

test('the zones reach to the cold side of the insulation when that is given', () => {
    const cable = solid([-50, -10], [1500, 1600], [1200, 1300]);
    expect(zones(cable)).toEqual([]);
    expect(zones(cable, mm(80))).toEqual([3]);
    expect(zones(solid([1000, 1100], [-60, -20], [0, 100]), mm(80))).toEqual([1]);
});

test('solids for a drawing: outline, radius, clip, heights', () => {
    const { one, two, three } = zoneSolids(heater, inside);
    expect([one.x, one.y, one.z, one.cornerRadius]).toEqual([span(500, 1900), span(-400, 900), span(0, 2100), mm(500)]);
    expect(one.clip).toEqual({ x: span(0, 2400), y: span(0, 2000) });
    expect([two.z, three.z]).toEqual([span(0, 1000), span(1000, 2100)]);
    expect(zoneSolids(heater, { ...inside, height: mm(900) }).three.z).toEqual(span(900, 900));
});

const anyBox = fc.tuple(fc.integer({ min: 0, max: 2300 }), fc.integer({ min: 0, max: 1900 }), fc.integer({ min: 0, max: 2000 }), fc.integer({ min: 1, max: 100 }))
    .map(([x, y, z, side]) => solid([x, x + side], [y, y + side], [z, z + side]));

test('every thing in the room is in some zone, and a mirrored room mirrors nothing but the place', () => {
    const flip = ({ x, y, z }: Box): Box => box(interval((inside.width - x.to) as Length, (inside.width - x.from) as Length), y, z);
    fc.assert(fc.property(anyBox, thing => {
        const found = zones(thing);
        expect(found.length).toBeGreaterThan(0);
        expect(zoneOf(flip(thing), flip(heater), inside)).toEqual(found);
    }));
});

test('a larger box is in every zone the smaller one is in', () => {
    fc.assert(fc.property(anyBox, fc.integer({ min: 0, max: 300 }), (thing, more) => {
        const larger = box(interval(thing.x.from, ticks(thing.x.to + more * TICKS_PER_MM)), thing.y, thing.z);
        expect(zones(larger)).toEqual(expect.arrayContaining([...zones(thing)]));
    }));
});

test('what lacks a rating is named, and only where a rating matters', () => {
    const lamp = (more: Partial<ZonedEquipment>): ZonedEquipment => ({ name: 'lamp', kind: 'light', zones: [3], ...more });
    expect(checkZones([lamp({})], { isHosed: false })).toEqual({ problems: [], lacks: ['temperature rating of lamp', 'degree of protection of lamp'] });
    expect(checkZones([lamp({ zones: [2], waterDigit: 4 })], { isHosed: false })).toEqual({ problems: [], lacks: [] });
    expect(checkZones([lamp({ zones: [] })], { isHosed: false })).toEqual({ problems: [], lacks: [] });
});

test('water jets ask for one degree more, equal passes', () => {
    const lamp: ZonedEquipment = { name: 'lamp', kind: 'light', zones: [2], waterDigit: 4 };
    expect(checkZones([lamp], { isHosed: true }).problems).toMatchObject([{ kind: 'water-protection-too-low', waterDigit: 4, required: 5 }]);
    expect(checkZones([{ ...lamp, waterDigit: 5 }], { isHosed: true }).problems).toEqual([]);
});
