import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { ticks, zero } from '../../../language/src/core/length.js';
import { bestByTable, createValueTable, quickFills } from '../../../language/src/engines/stock/knapsack.js';
import { MasterProgram } from '../../../language/src/engines/stock/master-program.js';
import { linearBound } from '../../../language/src/engines/stock/column-generation.js';
import { patternsWithin } from '../../../language/src/engines/stock/patterns.js';
import { cuttingProblem, loadOf, type CuttingProblem } from '../../../language/src/engines/stock/problem.js';
import { board, piece, request } from './requests.js';

/** Every pattern of a class, maximal or not. */
function everyPattern(problem: CuttingProblem, capacity: number): number[][] {
    const found: number[][] = [];
    const search = (counts: number[]): void => {
        const type = problem.types[counts.length];
        if (!type) { found.push(counts); return; }
        for (let count = 0; count <= type.perPattern && loadOf(problem, [...counts, count]) <= capacity; count++) search([...counts, count]);
    };
    search([]);
    return found;
}

const problems = (grain: number) => fc.record({
    pieces: fc.array(fc.record({ length: fc.integer({ min: 3, max: 40 }), count: fc.integer({ min: 1, max: 4 }), value: fc.integer({ min: 0, max: 50 }) }), { minLength: 1, maxLength: 6 }),
    stock: fc.uniqueArray(fc.integer({ min: 40, max: 90 }), { minLength: 1, maxLength: 3 }),
}).map(({ pieces, stock }) => {
    // an odd tick on each length makes the common grid one tick, which is finer than the table's cells
    const problem = cuttingProblem(request(
        pieces.map(({ length, count }, at) => piece(`P${at}`, ticks(length * grain + (grain > 1 ? at : 0)), count)), stock.map(length => board(ticks(length * grain))), { kerf: grain > 1 ? ticks(1) : zero },
    ));
    return { problem, values: problem.types.map((_, at) => pieces[at]?.value ?? 1) };
});

test.each([['a coarse grid', 1], ['a grid finer than the table', 1013]])('both fills find the most valuable pattern on %s', (_name, grain) => {
    fc.assert(fc.property(problems(grain), ({ problem, values }) => {
        const table = createValueTable(problem)(values);
        const quick = quickFills(problem, values, problem.types.map(type => type.perPattern));
        for (const { capacity } of problem.classes) {
            const worth = (counts: readonly number[]): number => counts.reduce((total, count, at) => total + count * (values[at] ?? 0), 0);
            const most = Math.max(...everyPattern(problem, capacity).map(worth));
            const exact = bestByTable(problem, table, values, capacity);
            const fill = quick(capacity, 1e6);
            expect(exact.value).toBe(most);
            expect(worth(exact.counts)).toBe(most);
            expect(fill).toMatchObject({ value: most, isBest: true });
            expect(worth(fill.counts)).toBe(most);
            expect(loadOf(problem, fill.counts)).toBeLessThanOrEqual(capacity);
            expect(table.most(0, capacity)).toBeGreaterThanOrEqual(most);
        }
    }), { numRuns: 150, seed: 7 });
});

test('a fill that is cut off says so', () => {
    const problem = cuttingProblem(request(Array.from({ length: 20 }, (_, at) => piece(`P${at}`, ticks(101 + 7 * at), 2)), [board(ticks(997))]));
    expect(quickFills(problem, problem.types.map(type => type.weight), problem.types.map(type => type.perPattern))(997, 5).isBest).toBe(false);
});

test('the patterns within an allowance are exactly the maximal ones that lose no more', () => {
    fc.assert(fc.property(problems(1), fc.integer({ min: 0, max: 60 }), ({ problem }, percent) => {
        const tableFor = createValueTable(problem);
        const boards = problem.types.reduce((total, type) => total + type.demand, 0);
        const bound = linearBound(problem, new MasterProgram(problem), { least: problem.classes.map(() => 0), most: problem.classes.map(() => boards) }, tableFor, () => false);
        const allowance = Math.floor(percent / 100 * bound.scale * 40);
        const listed = patternsWithin(problem, bound, tableFor(bound.values), allowance, 1e6)?.map(({ classIndex, counts }) => `${classIndex}:${counts.join()}`);
        const expected = problem.classes.flatMap(({ capacity, cost }, classIndex) => everyPattern(problem, capacity)
            .filter(counts => problem.types.every((type, at) => (counts[at] ?? 0) === type.perPattern || loadOf(problem, counts) + type.weight > capacity))
            .filter(counts => !problem.classes.some((other, at) => at < classIndex && other.cost <= cost && loadOf(problem, counts) <= other.capacity))
            .filter(counts => cost * bound.scale + (bound.excess[classIndex] ?? 0) - counts.reduce((total, count, at) => total + count * (bound.values[at] ?? 0), 0) <= allowance)
            .map(counts => `${classIndex}:${counts.join()}`));
        expect(listed?.sort()).toEqual(expected.sort());
    }), { numRuns: 80, seed: 11 });
});

test('the linear bound is below every way to cut and never below the material', () => {
    fc.assert(fc.property(problems(1), ({ problem }) => {
        const boards = problem.types.reduce((total, type) => total + type.demand, 0);
        const bound = linearBound(problem, new MasterProgram(problem), { least: problem.classes.map(() => 0), most: problem.classes.map(() => boards) }, createValueTable(problem), () => false);
        const load = loadOf(problem, problem.types.map(type => type.demand));
        const material = load * Math.min(...problem.classes.map(one => one.cost / one.capacity));
        const linear = Number(bound.scaledBound) / bound.scale;
        // piece values are rounded down to 1/scale, so the bound may be that much too low for each piece
        expect(linear).toBeGreaterThanOrEqual(material * (1 - 1e-6));
        expect(linear).toBeLessThanOrEqual(bound.basis.reduce((total, { pattern, boards: share }) => total + share * (problem.classes[pattern.classIndex]?.cost ?? 0), 0) * (1 + 1e-9));
    }), { numRuns: 120, seed: 13 });
});
