import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { temperatureFactor } from '../../../language/src/engines/strength/adjustment.js';
import { inches, type Length } from '../../../language/src/core/length.js';
import type { BenchBuild, BenchesInput } from '../../../language/src/engines/benches/bench-input.js';
import { computeBenches } from '../../../language/src/engines/benches/compute-benches.js';
import { columnStability } from '../../../language/src/engines/strength/column.js';
import { computeStrength } from '../../../language/src/engines/strength/compute-strength.js';
import { findCure } from '../../../language/src/engines/strength/cure.js';
import { lateralValue } from '../../../language/src/engines/strength/screw.js';
import type { StrengthInput, StrengthLoad, TimberValues } from '../../../language/src/engines/strength/strength-input.js';
import { governingCheck, type StrengthAction, type StrengthMember } from '../../../language/src/engines/strength/strength-result.js';

const timber: TimberValues = { name: 'test', bendingPsi: 1800, shearPsi: 135, compressionParallelPsi: 1200, compressionPerpendicularPsi: 225, elasticityPsi: 1.4e6, specificGravity: 0.41, sizeRule: 'depth' };
const eighths = (count: number): Length => inches(0, count, 8);
interface Choice {
    readonly width: number; readonly depth: number; readonly slat: number; readonly rail: number; readonly leg: number; readonly bearer: number; readonly legs: number; readonly pounds: number; readonly serviceC: number; readonly screws: number;
}
const standard: Choice = { width: 76, depth: 20, slat: 6, rail: 28, leg: 28, bearer: 20, legs: 36, pounds: 220, serviceC: 90, screws: 5 };

function benchesOf({ width, depth, slat, rail, leg, bearer, legs, screws }: Choice): BenchesInput {
    const stock = (thickness: number, wide: number): BenchBuild['slat'] => ({ section: { thickness: eighths(thickness), width: eighths(wide) } });
    const build: BenchBuild = {
        name: 'test', slat: stock(slat, 28), slatGap: { from: 0 as Length, to: inches(4) }, bearer: stock(12, 28), bearerSpacing: inches(bearer), rail: stock(12, rail), ledger: stock(12, 28), leg: stock(12, leg),
        legSpacing: inches(legs), wallGap: 0 as Length, ledgerScrewSpacing: inches(screws), ledgerScrewRows: 2,
    };
    return {
        inside: { width: inches(width), depth: inches(72), height: inches(84) }, openings: [], keepClear: [], floorObstacles: [], floor: { kind: 'level' },
        benches: [{ name: 'upper', walls: ['back'], top: inches(37), depth: inches(depth), overlap: 0 as Length, loadPath: 'end_ledgers', hasFascia: false, hasHeadRest: false, isAccessible: false, build }],
    };
}
function strengthInput(choice: Choice): StrengthInput {
    const benches = benchesOf(choice);
    const loads: readonly StrengthLoad[] = [
        { id: 'row', title: 'row', duration: 'ten_years', shape: { kind: 'row', poundsForce: choice.pounds, along: 12, across: 14, pitch: 24 } },
        { id: 'foot', title: 'foot', duration: 'seven_days', shape: { kind: 'moving', poundsForce: choice.pounds, along: 4, across: 10 } },
        { id: 'even', title: 'even', duration: 'ten_years', shape: { kind: 'even', poundsPerSquareFoot: choice.pounds / 4 } },
    ];
    return {
        inside: benches.inside, serviceC: choice.serviceC,
        benches: computeBenches(benches).benches.flatMap(layout => {
            const build = benches.benches[0]?.build;
            return build ? [{
                layout, build, loads, isWet: false, timbers: { slat: timber, bearer: timber, rail: timber, ledger: timber, leg: timber },
                screw: { name: 'screw', shank: 0.242, root: 0.196, length: 3.75, lining: 0.75, liningGravity: 0.39, gap: 0, frameGravity: 0.42 },
            }] : [];
        }),
    };
}
type Share = (member: StrengthMember, action?: StrengthAction) => number;
function shares(choice: Choice): Share {
    const members = computeStrength(strengthInput(choice)).benches[0]?.members ?? [];
    return (member, action) => {
        const found = members.find(one => one.member === member);
        const check = action === undefined ? found && governingCheck(found) : found?.checks.find(one => one.action === action);
        return check?.utilisation ?? NaN;
    };
}
const members: readonly StrengthMember[] = ['slat', 'bearer', 'rail', 'ledger', 'ledger screw', 'leg'];
const choices: fc.Arbitrary<Choice> = fc.record({
    width: fc.integer({ min: 40, max: 110 }), depth: fc.integer({ min: 16, max: 28 }), slat: fc.integer({ min: 5, max: 10 }), rail: fc.integer({ min: 20, max: 40 }), leg: fc.integer({ min: 20, max: 44 }),
    bearer: fc.integer({ min: 8, max: 26 }), legs: fc.integer({ min: 20, max: 60 }), pounds: fc.integer({ min: 100, max: 300 }), serviceC: fc.integer({ min: 20, max: 110 }), screws: fc.integer({ min: 3, max: 14 }),
});
const close = 1 + 1e-9;

describe('strength of random benches', () => {
    test('a thicker slat, a higher rail, a wider leg is never more used in bending, shear or as a column', () => {
        fc.assert(fc.property(choices, choice => {
            const before = shares(choice);
            const thicker = shares({ ...choice, slat: choice.slat + 1 });
            const higher = shares({ ...choice, rail: choice.rail + 4 });
            for (const action of ['bending', 'shear', 'deflection'] as const) {
                expect(thicker('slat', action)).toBeLessThanOrEqual(before('slat', action) * close);
                expect(higher('rail', action)).toBeLessThanOrEqual(before('rail', action) * close);
            }
        }), { numRuns: 60 });
    });
    test('a greater load never lowers what is used, and neither does a hotter room', () => {
        fc.assert(fc.property(choices, choice => {
            const before = shares(choice);
            const heavier = shares({ ...choice, pounds: choice.pounds + 20 });
            const hotter = shares({ ...choice, serviceC: choice.serviceC + 10 });
            for (const member of members) {
                if (Number.isNaN(before(member))) continue;
                expect(heavier(member)).toBeGreaterThanOrEqual(before(member) / close);
                expect(hotter(member)).toBeGreaterThanOrEqual(before(member) / close);
            }
        }), { numRuns: 60 });
    });
    test('wider spans of slats and rails never lower what bends them', () => {
        fc.assert(fc.property(fc.integer({ min: 30, max: 60 }), fc.integer({ min: 1, max: 12 }), (width, more) => {
            // One span between ledgers, and bearers at both its ends only: wider is the only thing that changes.
            const narrow = shares({ ...standard, width, bearer: 80, legs: 80 });
            const wide = shares({ ...standard, width: width + more, bearer: 80, legs: 80 });
            for (const member of ['slat', 'rail'] as const) expect(wide(member, 'bending')).toBeGreaterThanOrEqual(narrow(member, 'bending') / close);
        }), { numRuns: 60 });
    });
    test('a longer or hotter column never carries more; a screw with a gap never more than without', () => {
        fc.assert(fc.property(fc.double({ min: 2, max: 48, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 20, max: 140 }), (slenderness, gap, celsius) => {
            const column = { compressionPsi: 640, stabilityModulusPsi: 4e5 };
            expect(columnStability({ ...column, slenderness: slenderness + 1 })).toBeLessThan(columnStability({ ...column, slenderness }));
            expect(temperatureFactor(celsius + 5, 'bending')).toBeLessThanOrEqual(temperatureFactor(celsius, 'bending'));
            const joint = { diameter: 0.196, yieldPsi: 70_000, side: 1.5, main: 1.5, sideBearingPsi: 3200, mainBearingPsi: 3000 };
            expect(lateralValue({ ...joint, gap }).poundsForce).toBeLessThanOrEqual(lateralValue({ ...joint, gap: 0 }).poundsForce * close);
        }), { numRuns: 100 });
    });
    test('equal inputs give equal results, and every figure is a number', () => {
        fc.assert(fc.property(choices, choice => {
            const first = computeStrength(strengthInput(choice));
            expect(computeStrength(strengthInput(choice))).toEqual(first);
            for (const { members: found } of first.benches) for (const { checks, lacks } of found) {
                expect(lacks).toEqual([]);
                for (const check of checks) expect(Number.isFinite(check.utilisation) && check.utilisation >= 0).toBe(true);
            }
        }), { numRuns: 40 });
    });
});

describe('the search for a cure', () => {
    const search = (choice: Choice, member: StrengthMember): ReturnType<typeof findCure> => findCure({ benches: benchesOf(choice), strength: strengthInput(choice), bench: 'upper', member, isMetric: false, options: [
        { stock: 'thick', section: { thickness: eighths(12), width: eighths(28) }, timber }, { nominal: '2x6', section: { thickness: eighths(12), width: eighths(44) }, timber },
    ] });
    test('finds a spacing of bearers that makes slats strong enough, and no wider one does', () => {
        const choice = { ...standard, bearer: 40 };
        expect(shares(choice)('slat')).toBeGreaterThan(1);
        const cure = search(choice, 'slat');
        if (cure?.change !== 'bearer_spacing') throw new Error('no spacing found');
        expect(shares({ ...choice, bearer: cure.length / inches(1) })('slat')).toBeLessThanOrEqual(1);
        expect(cure.utilisation).toBeCloseTo(shares({ ...choice, bearer: cure.length / inches(1) })('slat'), 12);
        expect(shares({ ...choice, bearer: cure.length / inches(1) + 2 })('slat')).toBeGreaterThan(1);
    });
    test('finds legs for rails that span too far', () => {
        const choice = { ...standard, legs: 80 };
        expect(shares(choice)('rail')).toBeGreaterThan(1);
        const cure = search(choice, 'rail');
        if (cure?.change !== 'leg_spacing') throw new Error('no spacing found');
        expect(cure.legs).toBeGreaterThan(0);
        expect(shares({ ...choice, legs: cure.length / inches(1) })('rail')).toBeLessThanOrEqual(1);
    });
    test('finds nothing where nothing helps', () => {
        expect(search({ ...standard, pounds: 30_000 }, 'rail')).toBeUndefined();
    });
});
