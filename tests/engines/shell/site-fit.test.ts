import { describe, expect, test } from 'vitest';
import { feet, inches, ticks, zero } from '../../../language/src/core/length.js';
import { outOfSquare, siteFit, type SiteMeasures } from '../../../language/src/engines/shell/site-fit.js';
import { shown } from './rooms.js';

const site = (more: Partial<SiteMeasures> = {}): SiteMeasures => ({
    width: [inches(87), inches(86), inches(86, 1, 2)], depth: [inches(74)], sides: { front: 'free', left: 'closed', back: 'closed', right: 'closed' }, ...more,
});
const room = { width: inches(84), depth: inches(72), jointsAlongWidth: 3, jointsAlongDepth: 2 };

describe('the room in its place', () => {
    test('the smallest of three places governs; exactly what is owed passes', () => {
        expect(siteFit(room, site())?.axes[0]).toEqual({
            axis: 'width', available: inches(86), outside: inches(84), gaps: [inches(1), inches(1)], outOfSquare: zero, required: inches(86), spare: zero,
            stackUp: inches(0, 3, 32), stackUpGap: inches(2), fits: true, isStackUpAbsorbed: true,
        });
        expect(siteFit(room, site({ width: [ticks(inches(86) - 1)] }))?.axes[0]).toMatchObject({ fits: false, spare: -1 });
    });
    test('a free side owes no gap, one that is reached behind owes 2"', () => {
        expect(siteFit(room, site())?.axes[1]).toMatchObject({ gaps: [zero, inches(1)], required: inches(73), fits: true, stackUpGap: undefined });
        expect(siteFit(room, site({ sides: { front: 'free', left: 'closed', back: 'closed-with-reach', right: 'closed' } }))?.axes[1]).toMatchObject({ required: inches(74), fits: true });
    });
    test('joints add up against the gaps: 64 joints of 1/32" fill 2", one more does not go', () => {
        expect(siteFit({ ...room, jointsAlongWidth: 64 }, site())?.axes[0].isStackUpAbsorbed).toBe(true);
        expect(siteFit({ ...room, jointsAlongWidth: 65 }, site())?.axes[0].isStackUpAbsorbed).toBe(false);
    });
    test('no measure, no answer', () => expect(siteFit(room, site({ depth: [] }))).toBeUndefined());
});

/** Right triangles in whole numbers: a base of 20 leaning 15 at a depth of 12 has diagonals 37 and 13 (12-35-37 and 5-12-13). */
describe('out of square from the diagonals', () => {
    test.each<[number, number, number, number]>([[20, 37, 13, 15], [20, 13, 37, -15], [12.5, 20, 15, 3.5], [12.5, 17, 17, 0]])(
        'width %f\', diagonals %f\' and %f\': %f\'', (width, first, second, lean) => {
            expect(outOfSquare(feet(0, width * 12), feet(first), feet(second))).toBe(lean * 12 * 2_032_000);
        });
    test('it is lost from the width', () => {
        const fit = siteFit(room, site({ width: [inches(100)], diagonals: [inches(124), inches(123)] }));
        expect(shown(fit?.outOfSquare ?? zero)).toBeCloseTo((124 ** 2 - 123 ** 2) / 400, 6);
        expect(fit?.axes[0].required).toBe(inches(86) + (fit?.outOfSquare ?? 0));
    });
});
