import fc from 'fast-check';
import { expect, test } from 'vitest';
import { interval } from '../../../language/src/core/geometry.js';
import { inches, ticks, zero } from '../../../language/src/core/length.js';
import { blockingParts, greatestGuardGap, guardBuild } from '../../../language/src/engines/heater/heater-parts.js';

const board = { stock: 'slat', section: { thickness: inches(0, 3, 4), width: inches(3, 1, 2) } };
const guard = (height: number, width = inches(20), depth = inches(15)): Parameters<typeof guardBuild>[1] =>
    ({ onWall: { u: interval(zero, width), v: interval(zero, ticks(height)), w: interval(zero, depth) } });

test('22" of guard takes four rows: five would be more than needed, three leave gaps of 5 3/4"', () => {
    const build = guardBuild({ name: 'stove', wall: 'right' }, guard(inches(22)), board, inches(72));
    expect(build?.rows).toBe(4);
    expect(build?.parts.map(part => [part.mark, part.count, part.length])).toEqual([
        ['STOVE-GUARD-RAIL-1', 4, inches(20)], ['STOVE-GUARD-RAIL-2', 8, inches(14, 1, 4)], ['STOVE-GUARD-POST-1', 4, inches(22)],
    ]);
});
test('a gap of exactly the limit is accepted, and a tick more takes another row', () => {
    const height = 3 * board.section.width + 2 * greatestGuardGap;
    expect([guardBuild({ name: 'stove', wall: 'right' }, guard(height), board, inches(72))?.rows, guardBuild({ name: 'stove', wall: 'right' }, guard(height + 1), board, inches(72))?.rows]).toEqual([3, 4]);
});
test('gaps are never wider than the limit, and one row fewer would leave them so', () => {
    fc.assert(fc.property(fc.integer({ min: 2 * board.section.width, max: inches(90) }), height => {
        const rows = guardBuild({ name: 'stove', wall: 'right' }, guard(height), board, inches(72))?.rows ?? 0;
        const gap = (n: number): number => (height - n * board.section.width) / (n - 1);
        expect(gap(rows)).toBeLessThanOrEqual(greatestGuardGap);
        if (rows > 2) expect(gap(rows - 1)).toBeGreaterThan(greatestGuardGap);
    }));
});
test('a guard too low for two rails has none', () => {
    expect(guardBuild({ name: 'stove', wall: 'right' }, guard(inches(6)), board, inches(72))).toBeUndefined();
});
test('blocking is as long as the zone and as many boards as its height takes', () => {
    const needed = { u: interval(zero, inches(14)), v: interval(zero, inches(4)) };
    const parts = blockingParts({ name: 'stove', wall: 'right' }, needed, board, inches(72));
    expect(parts.map(part => [part.mark, part.count, part.length, part.goesTo])).toEqual([['STOVE-BLOCKING-1', 2, inches(14), 'in the panels of the right wall, behind the lining, for stove']]);
    expect(parts[0]!.place).toEqual({ wall: 'right', stretches: [needed.u], run: inches(72), between: 'linings', heights: needed.v });
});
