import { expect, test } from 'vitest';
import { extent } from '../../../language/src/core/geometry.js';
import { feet, inches, minus, plus, sum } from '../../../language/src/core/length.js';
import { showLength } from '../../../language/src/core/show.js';
import { benchMarks } from '../../../language/src/engines/benches/bench-result.js';
import { computeBenches } from '../../../language/src/engines/benches/compute-benches.js';
import { twoTiers } from './rooms.js';

const result = computeBenches(twoTiers());
const [upper, lower] = result.benches;

test('nothing is wrong with the common two-tier room', () => expect(result.problems).toEqual([]));

test('ledgers stand 2 1/4" under tops at 37" and 18"', () => {
    // Common practice, no source.
    expect([upper!.ledgerTop, lower!.ledgerTop]).toEqual([inches(34, 3, 4), inches(15, 3, 4)]);
    expect(upper!.ledgers.map(ledger => [ledger.mark, ledger.wall, ledger.u, ledger.v.to])).toEqual([
        ['UPPER-LEDGER-1', 'left', { from: inches(44, 1, 2), to: inches(64, 1, 2) }, inches(34, 3, 4)],
        ['UPPER-LEDGER-2', 'right', { from: inches(0), to: inches(20) }, inches(34, 3, 4)],
    ]);
});

test('the lower bench stands in front of the upper, its first run through and its second up to it', () => {
    expect(lower!.runs.map(run => [run.wall, run.u, run.w, run.ends, run.isThrough])).toEqual([
        ['back', { from: 0, to: inches(76, 1, 2) }, { from: inches(20), to: inches(40) }, { left: 'wall', right: 'wall' }, true],
        ['left', { from: 0, to: inches(24, 1, 2) }, { from: 0, to: inches(20) }, { left: 'wall', right: 'own_run' }, false],
    ]);
});

test('the rear centre leg is notched from the lower rail up to the lower top, carries both rails and keeps a column', () => {
    const leg = upper!.legs.find(one => one.line === 'front')!;
    expect(leg.under).toBe('UPPER-RAIL-2');
    expect(leg.alsoCarries).toEqual(['LOWER-RAIL-1']);
    expect(leg.finishedLength).toBe(inches(31, 1, 4));
    expect(leg.shippedLength).toBe(inches(33, 1, 4));
    expect(leg.notches).toEqual([{
        side: 'front', end: 'head', toward: 'front', from: inches(13, 1, 4), length: inches(5, 3, 4), depth: inches(1, 1, 2), clears: 'rear rail, bearers and slats of lower',
    }]);
    // From the head down: 31 1/4" less 13 1/4" is the lower TOP, less 5 3/4" more the underside of its rail.
    expect(minus(leg.finishedLength, leg.notches[0]!.from)).toBe(inches(18));
    expect(minus(leg.finishedLength, sum(leg.notches[0]!.from, leg.notches[0]!.length))).toBe(lower!.railUnderside);
    expect(leg.column).toEqual({ thickness: inches(1, 1, 2), width: inches(2) });
});

test('the cut list of the room', () => {
    expect(result.parts.map(part => `${part.mark} ${part.count} ${part.nominal} ${showLength(part.length)} ${part.cut}`)).toMatchInlineSnapshot(`
      [
        "UPPER-LEDGER-1 1 2x4 20" shop",
        "UPPER-LEDGER-2 1 2x4 20" shop",
        "UPPER-RAIL-1 1 2x4 73 1/2" shop",
        "UPPER-RAIL-2 1 2x4 73 1/2" shop",
        "UPPER-LEG-1 1 2x4 33 1/4" site",
        "UPPER-LEG-2 1 2x4 33 1/4" site",
        "UPPER-BEARER-1 6 2x4 20" shop",
        "UPPER-SLAT-1 5 1x4 76 1/2" shop",
        "LOWER-LEDGER-1 1 2x4 20" shop",
        "LOWER-LEDGER-2 1 2x4 20" shop",
        "LOWER-LEDGER-3 1 2x4 20" shop",
        "LOWER-RAIL-1 1 2x4 73 1/2" shop",
        "LOWER-RAIL-2 1 2x4 73 1/2" shop",
        "LOWER-RAIL-3 1 2x4 23" shop",
        "LOWER-RAIL-4 1 2x4 23" shop",
        "LOWER-LEG-1 1 2x4 14 1/4" site",
        "LOWER-LEG-2 1 2x4 14 1/4" site",
        "LOWER-LEG-3 1 2x4 14 1/4" site",
        "LOWER-BEARER-1 6 2x4 20" shop",
        "LOWER-BEARER-2 3 2x4 20" shop",
        "LOWER-SLAT-1 5 1x4 76 1/2" shop",
        "LOWER-SLAT-2 5 1x4 24 1/2" shop",
      ]
    `);
    expect(benchMarks(result)).toEqual(result.parts.map(part => part.mark));
    expect(new Set(benchMarks(result)).size).toBe(result.parts.length);
});

test('only legs are site cut, and they say what to measure', () => {
    for (const part of result.parts) {
        expect(part.cut === 'site').toBe(part.mark.includes('-LEG-'));
        expect(part.measure !== undefined).toBe(part.cut === 'site');
    }
});

test('comfort: head clearance, rise, places, feet', () => {
    expect(upper!.comfort).toEqual({
        headClearance: inches(43), rise: inches(19), climbFrom: 'lower', seats: 3, lyingPlaces: 1, footDepth: inches(20), heelClearance: inches(13, 1, 4),
    });
    expect(lower!.comfort).toMatchObject({ rise: inches(18), climbFrom: undefined, seats: 3 + 1, lyingPlaces: 1, footDepth: undefined });
});

test('blocking is asked for at every ledger and where a rear leg is screwed to the wall', () => {
    expect(upper!.wallFastenings.map(({ mark, what, wall, v }) => [mark, what, wall, v.to])).toEqual([
        ['UPPER-LEDGER-1', 'ledger', 'left', inches(34, 3, 4)], ['UPPER-LEDGER-2', 'ledger', 'right', inches(34, 3, 4)], ['UPPER-LEG-1', 'rear leg', 'back', inches(31, 1, 4)],
    ]);
    expect(lower!.wallFastenings.filter(({ what }) => what === 'ledger').map(({ wall }) => wall)).toEqual(['left', 'right', 'front']);
});

test('an overlap brings the lower tier under the upper and deepens the notch to it', () => {
    const [high, low] = computeBenches({ ...twoTiers(), benches: twoTiers().benches.map(bench => bench.name === 'lower' ? { ...bench, overlap: inches(2) } : bench) }).benches;
    expect(low!.runs[0]!.w.from).toBe(inches(18));
    const leg = high!.legs.find(one => one.line === 'front')!;
    expect(leg.notches[0]!.depth).toBe(inches(2));
    expect(leg.column.width).toBe(inches(1, 1, 2));
    expect(leg.alsoCarries).toEqual(['LOWER-RAIL-1']);
});

test('equal spans: 10 ft takes one centre leg under each rail, 13 ft two', () => {
    const legs = (width: number) => computeBenches({ ...twoTiers(), inside: { ...twoTiers().inside, width: feet(width) } }).benches[0]!.legs.length;
    expect([legs(6), legs(10), legs(13)]).toEqual([0, 2, 4]);
});

test('a floor that falls makes each leg as long as its place asks for', () => {
    const level = upper!.legs[0]!;
    const fallen = computeBenches(twoTiers({ floor: { kind: 'falls', fall: inches(1), toward: 'right' } })).benches[0]!;
    // The foot ends 39" from the left lining of a room 76 1/2" wide: the floor is 39/76.5 in lower there.
    expect(Math.abs(fallen.legs[0]!.finishedLength - level.finishedLength - 39 / 76.5 * inches(1))).toBeLessThanOrEqual(1);
    expect(fallen.ledgerTop).toBe(upper!.ledgerTop);
    expect(fallen.legs[1]!.notches).toEqual(upper!.legs[1]!.notches);
    const measured = computeBenches(twoTiers({ floor: { kind: 'measured', heights: { 'UPPER-LEG-2': inches(-1, 0) } } })).benches[0]!;
    expect(measured.legs.map(leg => leg.finishedLength)).toEqual([inches(31, 1, 4), plus(inches(31, 1, 4), inches(1))]);
});

test('a front leg stands under its rail over the whole thickness', () => {
    for (const leg of upper!.legs) {
        const rail = upper!.pieces.find(piece => piece.mark === leg.under)!;
        expect(leg.box.y.from <= rail.box.y.from && rail.box.y.to <= leg.box.y.to).toBe(true);
        expect(leg.box.z.to).toBe(rail.box.z.from);
        expect(extent(leg.box.z)).toBe(leg.finishedLength);
    }
});
