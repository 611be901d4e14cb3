import fc from 'fast-check';
import { CholeskyDecomposition, Matrix, solve } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { factorize, prepareBeam, solveFactored, type BeamLoad } from '../../../language/src/engines/strength/beam.js';
import { momentAt, responseOf } from '../../../language/src/engines/strength/beam-response.js';
import { evenLoads, movingLoad, rowsOfLoads } from '../../../language/src/engines/strength/arrangements.js';
import { shareOfOneSlat } from '../../../language/src/engines/strength/effects.js';

/**
 * The same beam by three moments (Clapeyron), solved with a general linear algebra library: an unknown moment over each inner support, simple spans between.
 * Only for beams whose ends are supports. Published in any text on strength of materials.
 */
function supportMoments(supports: readonly number[], loads: readonly BeamLoad[]): readonly number[] {
    const spans = supports.slice(1).map((to, i) => ({ from: supports[i] ?? 0, long: to - (supports[i] ?? 0) }));
    /** 6 A x̄ / L of the simple moment diagram, taken from the left and from the right, by adding up points. */
    const terms = spans.map(({ from, long }) => {
        let [left, right] = [0, 0];
        for (const load of loads) {
            const parts = 400;
            for (let part = 0; part < parts; part++) {
                const at = load.from + (load.to - load.from) * (part + 0.5) / parts - from;
                if (at <= 0 || at >= long) continue;
                const p = load.total / parts;
                left += p * at * (long ** 2 - at ** 2) / long;
                right += p * (long - at) * (long ** 2 - (long - at) ** 2) / long;
            }
        }
        return { left, right };
    });
    const inner = spans.length - 1;
    if (inner === 0) return [0, 0];
    const matrix = Matrix.zeros(inner, inner);
    const right = Matrix.zeros(inner, 1);
    for (let i = 0; i < inner; i++) {
        const [a, b] = [spans[i]?.long ?? 0, spans[i + 1]?.long ?? 0];
        matrix.set(i, i, 2 * (a + b));
        if (i > 0) matrix.set(i, i - 1, a);
        if (i < inner - 1) matrix.set(i, i + 1, b);
        right.set(i, 0, -((terms[i]?.left ?? 0) + (terms[i + 1]?.right ?? 0)));
    }
    return [0, ...solve(matrix, right).to1DArray(), 0];
}

const spans = fc.array(fc.integer({ min: 8, max: 72 }), { minLength: 1, maxLength: 6 });
const placesOf = (lengths: readonly number[]): readonly number[] => lengths.reduce<number[]>((places, length) => [...places, (places.at(-1) ?? 0) + length], [0]);
const loadsOn = (length: number): fc.Arbitrary<BeamLoad[]> => fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 1, max: 500 }))
    .map(([a, b, total]) => ({ from: Math.min(a, b) * length, to: Math.max(a, b) * length, total })), { minLength: 1, maxLength: 4 });
const beams = spans.chain(lengths => loadsOn(lengths.reduce((sum, length) => sum + length, 0)).map(loads => ({ supports: placesOf(lengths), loads })));

describe('the stiffness solver', () => {
    test('has the support moments that three moments give, solved by a general library', () => {
        fc.assert(fc.property(beams, ({ supports, loads }) => {
            const solved = prepareBeam({ length: supports.at(-1) ?? 0, supports, stiffness: 1e6 })(loads);
            const ours = [...solved.stretches.map(({ moment }) => moment), 0];
            const scale = loads.reduce((sum, { total }) => sum + total, 0) * (supports.at(-1) ?? 0);
            // The referee adds up 400 points for a load, which is good to about a thousandth of a per cent of the whole moment.
            supportMoments(supports, loads).forEach((moment, i) => { expect(Math.abs(moment - (ours[i] ?? NaN))).toBeLessThan(2e-5 * scale); });
        }), { numRuns: 150 });
    });
    test('is in balance: the reactions are the loads, and turn about the left end as they do', () => {
        fc.assert(fc.property(beams, fc.integer({ min: 0, max: 20 }), ({ supports, loads }, overhang) => {
            const places = supports.map(place => place + overhang);
            const { reactions } = prepareBeam({ length: (supports.at(-1) ?? 0) + 2 * overhang, supports: places, stiffness: 1e6 })(loads);
            const total = loads.reduce((sum, load) => sum + load.total, 0);
            const turning = loads.reduce((sum, load) => sum + load.total * (load.from + load.to) / 2, 0);
            expect(reactions.reduce((sum, reaction) => sum + reaction, 0)).toBeCloseTo(total, 5);
            expect(reactions.reduce((sum, reaction, i) => sum + reaction * (places[i] ?? 0), 0)).toBeCloseTo(turning, 3);
        }), { numRuns: 150 });
    });
    test('finds the greatest moment that a fine walk along the beam finds', () => {
        fc.assert(fc.property(beams, ({ supports, loads }) => {
            const solved = prepareBeam({ length: supports.at(-1) ?? 0, supports, stiffness: 1 })(loads);
            const { sagging, hogging } = responseOf(solved);
            const walked = solved.stretches.flatMap(stretch => Array.from({ length: 201 }, (_, i) => momentAt(stretch, stretch.length * i / 200)));
            const scale = Math.max(sagging, hogging);
            expect(Math.max(...walked)).toBeLessThanOrEqual(sagging + 1e-9 * (1 + scale));
            expect(Math.max(...walked.map(moment => -moment))).toBeLessThanOrEqual(hogging + 1e-9 * (1 + scale));
            expect(Math.max(...walked.map(Math.abs))).toBeGreaterThanOrEqual(0.98 * scale - 1e-9);
        }), { numRuns: 100 });
    });
    test('factors a matrix as a general library does', () => {
        const rows = [[4, 1, 0.5], [1, 3, 0.2], [0.5, 0.2, 2]];
        const right = [1, 2, 3];
        const referee = new CholeskyDecomposition(new Matrix(rows)).solve(Matrix.columnVector(right)).to1DArray();
        solveFactored(factorize(rows), right).forEach((value, i) => { expect(value).toBeCloseTo(referee[i] ?? NaN, 12); });
    });
    test('refuses a beam that is a mechanism', () => {
        expect(() => prepareBeam({ length: 10, supports: [5], stiffness: 1 })).toThrow('two supports');
        expect(() => prepareBeam({ length: 10, supports: [0, 12], stiffness: 1 })).toThrow('two supports');
    });
});

describe('arrangements of loads', () => {
    const member = { length: 60, supports: [2, 20, 40, 58] };
    test('an even load covers each pattern of stretches, the whole member in the first', () => {
        const [all] = evenLoads(member, 2);
        expect(all?.reduce((sum, { total }) => sum + total, 0)).toBe(120);
    });
    test('a moving load stays on the member', () => {
        for (const [load] of movingLoad(member, 100, 10)) expect(load && load.from >= 0 && load.to <= 60 && load.total === 100).toBe(true);
    });
    test('a row has a place for each whole pitch', () => {
        expect(Math.max(...rowsOfLoads(member, 100, 12, 24).map(loads => loads.length))).toBe(2);
        expect(Math.max(...rowsOfLoads({ length: 20, supports: [0, 20] }, 100, 12, 24).map(loads => loads.length))).toBe(1);
    });
    test('one slat takes all of a narrow load, and a share of a wide one', () => {
        expect(shareOfOneSlat(3, 3.5, 4, 5)).toBe(1);
        // 10" on slats of 3 1/2" at 4": two whole slats and 2" of a third, or the middle one whole and 2 3/4" of each neighbour.
        expect(shareOfOneSlat(10, 3.5, 4, 5)).toBeCloseTo(3.5 / 9, 12);
        expect(shareOfOneSlat(10, 3.5, 4, 1)).toBe(1);
    });
});
