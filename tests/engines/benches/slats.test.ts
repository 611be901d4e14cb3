import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, mm, ticks, type Length } from '../../../language/src/core/length.js';
import { add, multiply, rational, toNumber } from '../../../language/src/core/rational.js';
import { equalCentres, evenPlaces, supportsInBay } from '../../../language/src/engines/benches/even-places.js';
import { layOutSlats, nearestDepths } from '../../../language/src/engines/benches/slats.js';

const limits = { from: inches(0, 1, 4), to: inches(0, 3, 4) };

test.each<[what: string, depth: Length, width: Length, from: Length, to: Length, count: number | undefined, gap: number]>([
    ['five 1x4 slats on 20"', inches(20), inches(3, 1, 2), inches(0, 1, 4), inches(0, 3, 4), 5, inches(0, 5, 8)],
    ['the same bench in millimetres', mm(508), mm(88.9), mm(6.35), mm(19.05), 5, mm(15.875)],
    ['a gap equal to the greatest allowed', inches(20), inches(3, 1, 2), inches(0, 1, 4), inches(0, 5, 8), 5, inches(0, 5, 8)],
    ['a gap equal to the least allowed', inches(20), inches(3, 1, 2), inches(0, 5, 8), inches(1), 5, inches(0, 5, 8)],
    ['a gap one tick over the greatest', inches(20), inches(3, 1, 2), inches(0, 1, 4), ticks(inches(0, 5, 8) - 1), undefined, 0],
    ['one slat as wide as the bench is deep', inches(11, 1, 4), inches(11, 1, 4), inches(0, 1, 4), inches(0, 3, 4), 1, 0],
    ['of two counts the gap nearest the middle', inches(40), inches(1), inches(0), inches(4), 14, 2 * inches(1)],
    ['a bench narrower than a slat', inches(3), inches(3, 1, 2), inches(0, 1, 4), inches(0, 3, 4), undefined, 0],
    ['a slat with no width', inches(3), ticks(0), inches(0, 1, 4), inches(0, 3, 4), undefined, 0],
])('%s', (_what, depth, width, from, to, count, gap) => {
    const slats = layOutSlats(depth, width, { from, to });
    expect(slats?.count).toBe(count);
    if (slats) expect(toNumber(slats.gap)).toBe(gap);
});

test('the last slat is flush, n w + (n - 1) g is the depth exactly, and no slat is a tick from its exact place', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 60_000_000 }), fc.integer({ min: 500_000, max: 9_000_000 }), fc.integer({ min: 0, max: 2_000_000 }), (depth, width, least) => {
        const slats = layOutSlats(ticks(depth), ticks(width), { from: ticks(least), to: ticks(least + 1_500_000) });
        if (!slats) return;
        const { count, gap, starts } = slats;
        expect(add(rational(BigInt(count) * BigInt(width)), multiply(gap, rational(BigInt(count - 1))))).toEqual(rational(BigInt(depth)));
        expect(starts[0]).toBe(0);
        expect(starts.at(-1)! + width).toBe(depth);
        expect(starts).toHaveLength(count);
        for (const [i, start] of starts.entries()) expect(Math.abs(start - i * (width + toNumber(gap)))).toBeLessThan(1);
    }));
});

test('nearest depths fit, and no depth between them and the bench does', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 120 }), fc.integer({ min: 2, max: 15 }), fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 3 }), (depth, width, least, span) => {
        const range = { from: ticks(least), to: ticks(least + span) };
        const fits = (d: number): boolean => layOutSlats(ticks(d), ticks(width), range) !== undefined;
        const { smaller, larger } = nearestDepths(ticks(depth), ticks(width), range);
        let below: number | undefined = depth;
        while (below !== undefined && !fits(below)) below = below > 1 ? below - 1 : undefined;
        let above = depth;
        while (!fits(above)) above++;
        expect([smaller, larger]).toEqual([below, above]);
    }));
});

test('18" deep with 1x4 slats: four slats with wider gaps or five with narrower ones are named', () => {
    expect(layOutSlats(inches(17, 1, 2), inches(3, 1, 2), limits)).toBeUndefined();
    expect(nearestDepths(inches(17, 1, 2), inches(3, 1, 2), limits)).toEqual({ smaller: inches(16, 1, 4), larger: inches(18, 1, 2) });
});

test('even places mirror, whatever the remainder', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 10 ** 9 }), fc.integer({ min: 1, max: 40 }), (length, spaces) => {
        const places = evenPlaces(ticks(length), spaces);
        expect(places).toHaveLength(spaces + 1);
        for (const [i, place] of places.entries()) {
            expect(Math.abs(place - length * i / spaces)).toBeLessThan(1);
            if (2 * i !== spaces) expect(place + places[spaces - i]!).toBe(length);
        }
    }));
});

test('cross-bearers: fewest with centres within the limit, equal to the limit passes', () => {
    expect(equalCentres(inches(75, 1, 2), inches(3, 1, 2), inches(18))).toHaveLength(5);
    expect(equalCentres(ticks(inches(75, 1, 2) + 1), inches(3, 1, 2), inches(18))).toHaveLength(6);
});

test('centre supports: none at the limit, one a tick beyond, bays equal', () => {
    const bay = (to: number) => ({ from: ticks(0), to: ticks(to) });
    expect(supportsInBay(bay(inches(72)), inches(1, 1, 2), inches(72))).toEqual([]);
    expect(supportsInBay(bay(inches(72) + 2), inches(1, 1, 2), inches(72))).toEqual([{ from: inches(35, 1, 4) + 1, to: inches(36, 3, 4) + 1 }]);
    expect(supportsInBay(bay(inches(147)), inches(1, 1, 2), inches(72))).toHaveLength(2);
    expect(supportsInBay(bay(inches(145, 1, 2)), inches(1, 1, 2), inches(72))).toHaveLength(1);
});
