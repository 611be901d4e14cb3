import { findRuleSet, showFigure, strictest, type ClauseKey, type RuleSetId } from '../../language/src/rule-sets/index.js';
import { interval } from '../../language/src/core/geometry.js';
import { inches, inMm, mm } from '../../language/src/core/length.js';
import type { PlanBox } from '../../language/src/engines/access/free-floor.js';
import { largestCircle } from '../../language/src/engines/access/turning-circle.js';
import { findTurningSpace } from '../../language/src/engines/access/turning-space.js';
import type { PublishedRow } from './table.js';

const items: readonly (readonly [clause: string, key: ClauseKey, published: string, fromMemory?: true])[] = [
    ['903.2', 'floor.clear-space-place', 'at bench end along short axis'],
    ['305.3', 'floor.clear-space', '30" x 48"'],
    ['903.3', 'bench.length', '42"'],
    ['903.3', 'bench.depth-minimum', '20"'],
    ['903.3', 'bench.depth-maximum', '24"'],
    ['903.4', 'bench.back-length', '42"'],
    ['903.4', 'bench.back-from', '2"'],
    ['903.4', 'bench.back-to', '18"'],
    ['903.4', 'bench.back-from-rear-edge', '2 1/2"'],
    ['903.5', 'bench.seat-height-minimum', '17"'],
    ['903.5', 'bench.seat-height-maximum', '19"'],
    ['903.6', 'bench.load', '250 lbf (1112 N)'],
    ['903.7', 'bench.slip-resistant', 'yes'],
    ['612.2', 'door.into-bench-floor-space', 'no'],
    ['612.2 exception', 'bench.removable-may-obstruct', 'yes'],
    ['612.3', 'floor.turning-circle', '60"', true],
    ['304.3.2', 'floor.turning-square', '60"', true],
    ['304.3.2', 'floor.turning-arm', '36"', true],
    ['308.2.1', 'control.reach-low', '15"', true],
    ['308.2.1', 'control.reach-high', '48"', true],
    ['404.2.3', 'door.clear-width', '32"', true],
    ['404.2.5', 'door.threshold', '1/2"', true],
    ['241', 'scoping.share', '5 %'],
    ['241', 'scoping.each-type', '1'],
];
const governs = (key: ClauseKey, ...ids: readonly RuleSetId[]): string => {
    const found = strictest(ids.flatMap(id => findRuleSet(id) ?? []), key);
    return found ? showFigure(found.figure, 'in') : 'nothing';
};
const box = (x0: number, x1: number, y0: number, y1: number): PlanBox => ({ x: interval(mm(x0), mm(x1)), y: interval(mm(y0), mm(y1)) });
const largest = (width: number, depth: number, ...taken: readonly PlanBox[]): number => { const found = largestCircle(taken, { width: mm(width), depth: mm(depth), height: mm(2100) }); return found ? inMm(found.diameter) : Number.NaN; };
const plane = { source: 'plane geometry', tolerance: 0.001, toleranceReason: 'roots are rounded to a micrometre; the circle is found to two ticks of 12.5 nm', checks: 'largestCircle' } as const;
/** Turning space in the plan, where the answer follows from a drawing with ruler and compasses. */
const turningRows: readonly PublishedRow[] = [
    { ...plane, clause: 'circle between parallels', what: 'room 2400 x 2200 mm with a bench 508 mm deep at the back, largest circle in mm', published: 2200 - 508, ours: () => largest(2400, 2200, box(0, 2400, 1692, 2200)) },
    { ...plane, clause: 'circle at two walls and a corner, r = √2·(a − b) / (1 + √2)', what: 'square of 2000 mm with a box of 700 mm in a corner', published: 2 * Math.SQRT2 * 1300 / (1 + Math.SQRT2), ours: () => largest(2000, 2000, box(0, 700, 0, 700)) },
    { ...plane, clause: 'circle through four corners', what: 'square of 2000 mm with boxes of 500 mm in its corners', published: 1000 * Math.SQRT2, ours: () => largest(2000, 2000, box(0, 500, 0, 500), box(1500, 2000, 0, 500), box(0, 500, 1500, 2000), box(1500, 2000, 1500, 2000)) },
    { ...plane, clause: 'circle at a wall and two corners, r = (s² + h²) / 2h', what: 'gap of 1000 mm between boxes 800 mm off a wall', published: (500 ** 2 + 800 ** 2) / 800, ours: () => largest(3000, 1600, box(0, 1000, 800, 1600), box(2000, 3000, 800, 1600)) },
    {
        source: 'ADA Standards 2010', clause: '304.3.2', what: 'a T of 36" in a square of 60" goes where boxes leave it and no circle', published: 'a T', tolerance: 0, toleranceReason: 'it is there or not', fromMemory: true, checks: 'findTurningSpace',
        ours: () => {
            const corner = (from: number, to: number): PlanBox => ({ x: interval(inches(from), inches(to)), y: interval(inches(0), inches(24)) });
            const found = findTurningSpace({ inside: { width: inches(60), depth: inches(60), height: inches(84) }, taken: [corner(0, 12), corner(48, 60)], swept: [], diameter: inches(60), t: { square: inches(60), arm: inches(36) } });
            return found.circle ? 'a circle' : found.t ? 'a T' : 'none';
        },
    },
];
const common = { tolerance: 0, toleranceReason: 'a printed figure', checks: 'strictest' } as const;
export const accessibleRows: readonly PublishedRow[] = [
    ...items.map(([clause, key, published, fromMemory]): PublishedRow => ({
        source: 'ADA Standards 2010', clause, what: key, published, ours: () => governs(key, 'us_accessible'), ...common, ...(fromMemory ? { fromMemory } : {}),
    })),
    ...turningRows,
    { source: 'California Building Code 2019', clause: '11B-903.3', what: 'bench.length', published: '48"', ours: () => governs('bench.length', 'us_accessible', 'california_accessible'), ...common },
];
