import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, ticks, TICKS_PER_INCH, zero } from '../../../language/src/core/length.js';
import { blockedWayIn, entersLiftCar, longestRoundCorner, passesDoorway, passesStairs, passesTurn, type PanelDimensions } from '../../../language/src/engines/shell/way-in.js';

const panel = (width: number, height: number, thickness: number): PanelDimensions => [inches(width), inches(height), inches(thickness)];

describe('doorway', () => {
    const doorway = { width: inches(30), height: inches(80) };
    test.each<[string, PanelDimensions, boolean]>([
        ['24" x 79" x 4"', panel(24, 79, 4), true], ['long panel carried flat through', panel(24, 120, 4), true], ['both smaller dimensions equal', panel(30, 90, 80), true],
        ['wider than the doorway, carried on edge', panel(48, 90, 4), true], ['both smaller dimensions too large', panel(81, 90, 4), false],
    ])('%s', (_name, dimensions, passes) => expect(passesDoorway(dimensions, doorway)).toBe(passes));
    test('a tick too wide does not pass', () => expect(passesDoorway([ticks(inches(80) + 1), inches(90), inches(4)], doorway)).toBe(false));
});

describe('corridor turn', () => {
    /** A ladder round a corner: (a^(2/3) + b^(2/3))^(3/2), a textbook exercise in calculus. Equal corridors of 48": 48 times the root of 8. */
    test('without thickness it is the ladder round the corner', () => fc.assert(fc.property(fc.integer({ min: 24, max: 96 }), fc.integer({ min: 24, max: 96 }), (a, b) => {
        expect(longestRoundCorner(inches(a), inches(b), zero) / TICKS_PER_INCH).toBeCloseTo((a ** (2 / 3) + b ** (2 / 3)) ** 1.5, 5);
    })));
    test('with thickness it is the least over every angle, tried one by one', () => fc.assert(fc.property(
        fc.integer({ min: 30, max: 60 }), fc.integer({ min: 30, max: 60 }), fc.integer({ min: 1, max: 29 }), (a, b, t) => {
            let least = Infinity;
            for (let angle = 0.0005; angle < Math.PI / 2; angle += 0.0005) least = Math.min(least, (a * Math.cos(angle) + b * Math.sin(angle) - t) / (Math.sin(angle) * Math.cos(angle)));
            expect(longestRoundCorner(inches(a), inches(b), inches(t)) / TICKS_PER_INCH).toBeCloseTo(Math.max(least, a, b), 2);
        }), { numRuns: 40 }));
    test('a 24" x 79" panel stands upright round a 36" corner; without the height for it a 120" one has to lie and does not go round', () => {
        expect(passesTurn(panel(24, 79, 4), { before: inches(36), after: inches(36) })).toBe(true);
        expect(passesTurn(panel(24, 120, 4), { before: inches(36), after: inches(36), height: inches(96) })).toBe(false);
    });
});

describe('lift car', () => {
    const leansBySearch = (thin: number, long: number, width: number, height: number): boolean => {
        for (let angle = 0; angle <= Math.PI / 2; angle += 0.0002) {
            if (long * Math.cos(angle) + thin * Math.sin(angle) <= width && long * Math.sin(angle) + thin * Math.cos(angle) <= height) return true;
        }
        return false;
    };
    test('leaning is found by trying every angle; near misses of the search aside', () => fc.assert(fc.property(
        fc.integer({ min: 2, max: 12 }), fc.integer({ min: 60, max: 120 }), fc.integer({ min: 40, max: 70 }), fc.integer({ min: 75, max: 95 }), (thin, long, depth, height) => {
            const fits = entersLiftCar([inches(thin), inches(24), inches(long)], { width: inches(24), depth: inches(depth), height: inches(height) });
            if (leansBySearch(thin, long, depth, height)) expect(fits).toBe(true);
            else if (!leansBySearch(thin, long - 0.1, depth - 0, height)) expect(fits).toBe(false);
        }), { numRuns: 60 }));
});

test('stairs take what a doorway of their width and head height takes', () => {
    expect(passesStairs(panel(24, 120, 4), { width: inches(36), headHeight: inches(78) })).toBe(true);
    expect(passesStairs(panel(79, 120, 4), { width: inches(36), headHeight: inches(78) })).toBe(false);
});

test('every part of the way in that blocks is named, one that was not measured is not', () => {
    const way = { doorway: { width: inches(30), height: inches(80) }, turn: { before: inches(30), after: inches(30), height: inches(80) } };
    expect(blockedWayIn(panel(24, 79, 4), way)).toEqual([]);
    expect(blockedWayIn(panel(24, 144, 4), way)).toEqual(['turn']);
    expect(blockedWayIn(panel(100, 144, 4), way)).toEqual(['doorway', 'turn']);
});
