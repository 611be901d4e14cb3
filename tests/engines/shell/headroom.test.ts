import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feet, inches, ticks, TICKS_PER_INCH, zero, type Length } from '../../../language/src/core/length.js';
import { interlockRise } from '../../../language/src/engines/shell/ceiling.js';
import { computeShell } from '../../../language/src/engines/shell/shell.js';
import type { ShellInput } from '../../../language/src/engines/shell/shell-input.js';
import { layers, room, shown, system } from './rooms.js';

/** Height of the apex of a triangle from its three sides by the law of cosines: another way to the same point than Heron's formula. */
function apexHeight(base: number, left: number, right: number): number {
    const cosine = (left ** 2 + base ** 2 - right ** 2) / (2 * left * base);
    return left * Math.sqrt(1 - cosine ** 2);
}

describe('rise of a ceiling joint', () => {
    test('is the height of the triangle of the two leaves over their cover widths (law of cosines)', () => fc.assert(fc.property(
        fc.integer({ min: 6 * 16, max: 48 * 16 }), fc.integer({ min: 6 * 16, max: 48 * 16 }), fc.integer({ min: 1, max: 16 }), (w1, w2, d) => {
            const rise = interlockRise(inches(w1, 0, 1) / 16 as Length, inches(w2, 0, 1) / 16 as Length, inches(0, d, 16));
            expect(rise / TICKS_PER_INCH).toBeCloseTo(apexHeight((w1 + w2) / 16, (w1 + d) / 16, w2 / 16), 6);
        })));
    test('never rounds down: the square of the rise is at least the exact square, and one tick less is not', () => fc.assert(fc.property(
        fc.integer({ min: 12_000_000, max: 50_000_000 }), fc.integer({ min: 12_000_000, max: 50_000_000 }), fc.integer({ min: 1, max: 1_000_000 }), (w1, w2, d) => {
            const [a, b, e] = [BigInt(w1), BigInt(w2), BigInt(d)];
            const [L, s2] = [a + b, 2n * (a + b) + e];
            // 4/L^2 s (s - w1 - d)(s - w2)(s - L), each factor doubled: over 4 L^2.
            const exact = s2 * (s2 - 2n * a - 2n * e) * (s2 - 2n * b) * (s2 - 2n * L);
            const rise = BigInt(interlockRise(ticks(w1), ticks(w2), ticks(d)));
            expect(rise * rise * 4n * L * L >= exact).toBe(true);
            expect((rise - 1n) * (rise - 1n) * 4n * L * L < exact).toBe(true);
        })));
    test('nothing engages, nothing rises', () => expect(interlockRise(inches(24), inches(24), zero)).toBe(0));
});

/** Common practice, no source: a room 7'0" high wants a building's ceiling of at least 7'3". */
describe('a 7\'0" room under a 7\'3" ceiling', () => {
    const headroom = (input: Partial<ShellInput>) => computeShell(room({ openings: [], ...input })).headroom;
    test('needs 7\'3" within a sixteenth with 24" panels and 3/8" engagement: tight, not an error', () => {
        const found = headroom({ siteCeiling: [feet(7, 6), feet(7, 3)] });
        expect(found).toMatchObject({ governing: { kind: 'ceiling-joint', joint: ['CEILING-1', 'CEILING-2'] }, verdict: 'tight', available: feet(7, 3) });
        expect(shown(found.required)).toBeCloseTo(84 + apexHeight(48, 24.375, 24), 6);
    });
    test.each<[string, Length, string]>([
        ['a sixteenth short', ticks(headroom({}).required - inches(0, 1, 16)), 'short'], ['less than a sixteenth short', ticks(headroom({}).required - inches(0, 1, 16) + 1), 'tight'],
        ['exactly enough', headroom({}).required, 'fits'],
    ])('%s', (_name, ceiling, verdict) => expect(headroom({ siteCeiling: [ceiling] }).verdict).toBe(verdict));
    test('not measured, not judged', () => expect(headroom({})).toMatchObject({ verdict: 'not-measured' }));
});

test('a thick wall tilted up governs: 80" high and 18" thick turns on a diagonal of 82" (18-80-82, a right triangle in whole numbers)', () => {
    const thick = layers.map(layer => layer.role === 'core' ? { ...layer, thickness: inches(16, 3, 4) } : layer);
    const thin = layers.filter(({ role }) => role === 'lining');
    const { headroom } = computeShell(room({
        openings: [], width: inches(120), depth: inches(120), height: inches(82, 1, 4), wallLayers: { front: thick, left: thick, back: thick, right: thick }, ceilingLayers: thin,
    }));
    expect(headroom.terms.map(({ kind, height }) => `${kind} ${shown(height) < 85 ? shown(height) : 'more'}`)).toEqual(['tilt-up 82', 'lift-over-plate 82.5', 'ceiling-run-in 83.25', 'ceiling-joint more']);
});

test('a ceiling of one panel has no joint: lifting it over the wall tops governs', () => {
    const { headroom } = computeShell(room({ openings: [], system: { ...system, modules: [inches(84), ...system.modules] } }));
    expect(headroom.governing).toEqual({ kind: 'ceiling-run-in', height: inches(85), above: inches(1) });
});

test('with no side free the ceiling comes up tilted through the open top; the reach is that of the tilted rectangle', () => {
    const { headroom } = computeShell(room({ openings: [], freeSides: [], depth: inches(60) }));
    const up = headroom.terms.find(({ kind }) => kind === 'ceiling-way-up');
    // 60" long, 3 3/4" thick, between the far lining and the building 1" beyond the near wall: 57 1/4" of level room. Smallest angle by trial.
    let angle = 0;
    while (60 * Math.cos(angle) + 3.75 * Math.sin(angle) > 57.25) angle += 1e-6;
    expect(shown(up?.height ?? zero)).toBeCloseTo(84 - 3.75 + 60 * Math.sin(angle) + 3.75 * Math.cos(angle), 3);
});
