import type { LinearBound } from './column-generation.js';
import type { ValueTable } from './knapsack.js';
import { keyOf } from './master-program.js';
import { patternsWithin } from './patterns.js';
import { boardClass, fullCost, type CuttingProblem, type Pattern } from './problem.js';

const MOST_PATTERNS = 6000;
const CLOSEST_PATTERNS = 1500;

/** Patterns to look for a plan in. */
export interface PatternChoice {
    /** Patterns met in linear solutions. */
    readonly met: readonly Pattern[];
    /** These and others, the likeliest first. */
    readonly near: readonly Pattern[];
    /** Every pattern such a plan could hold; undefined when they are too many, and then nothing can be proven. */
    readonly all: readonly Pattern[] | undefined;
}

/**
 * The patterns that a plan of a given total within a region may hold: each bound that holds for the region says what such a plan can lose at most to
 * patterns worth less than their boards.
 * @param met patterns met so far
 * @param bounds the region's own bound first, then those of ever wider regions around it
 * @param total in cost units
 */
export function choosePatterns(
    problem: CuttingProblem, met: readonly Pattern[], bounds: readonly [LinearBound, ...LinearBound[]], total: number, tableFor: (values: readonly number[]) => ValueTable,
): PatternChoice {
    const [own] = bounds;
    const widest = bounds.at(-1) ?? own;
    const isPossible = screen(problem, bounds, total);
    const all = [widest, own].reduce<readonly Pattern[] | undefined>((found, bound) =>
        found ?? patternsWithin(problem, bound, tableFor(bound.values), allowanceFor(bound, total), MOST_PATTERNS, isPossible), undefined);
    const basis = own.basis.map(({ pattern }) => pattern);
    const known = new Set(basis.map(keyOf));
    const isNew = (pattern: Pattern): boolean => !known.has(keyOf(pattern)) && known.add(keyOf(pattern)).size > 0;
    const others = met.filter(pattern => isPossible(pattern) && isNew(pattern));
    const close = (all ?? closestPatterns(problem, widest, total, tableFor)).filter(isNew);
    const likeliest = [...others, ...close].map(pattern => ({ pattern, loss: loss(problem, widest, pattern) })).sort((a, b) => a.loss - b.loss);
    return { met: [...basis, ...others], near: [...basis, ...likeliest.map(({ pattern }) => pattern)], all };
}

/** Where all patterns are too many: those that lose no more than some part of what they may. */
function closestPatterns(problem: CuttingProblem, bound: LinearBound, total: number, tableFor: (values: readonly number[]) => ValueTable): readonly Pattern[] {
    const table = tableFor(bound.values);
    for (let allowance = allowanceFor(bound, total) / 2; allowance >= 1; allowance /= 2) {
        const patterns = patternsWithin(problem, bound, table, Math.floor(allowance), CLOSEST_PATTERNS);
        if (patterns) return patterns;
    }
    return [];
}

/** Whether a pattern can be part of a plan of this total by all of the bounds; asked of many thousand patterns. */
function screen(problem: CuttingProblem, bounds: readonly LinearBound[], total: number): (pattern: Pattern) => boolean {
    const tests = bounds.map(bound => ({
        values: Float64Array.from(bound.values),
        needed: problem.classes.map((board, at) => fullCost(board) * bound.scale + (bound.excess[at] ?? 0) - allowanceFor(bound, total)),
    }));
    const held = new Int32Array(problem.types.length);
    return ({ classIndex, counts }) => {
        let kinds = 0;
        for (let type = 0; type < counts.length; type++) if (counts[type] !== 0) held[kinds++] = type;
        return tests.every(({ values, needed }) => {
            let worth = 0;
            for (let at = 0; at < kinds; at++) {
                const type = held[at] ?? 0;
                worth += (counts[type] ?? 0) * (values[type] ?? 0);
            }
            return worth >= (needed[classIndex] ?? 0);
        });
    };
}

/** What a plan of this total may lose to patterns that are worth less than their boards. */
const allowanceFor = (bound: LinearBound, total: number): number => Number(BigInt(total) * BigInt(bound.scale) - bound.scaledBound);

const loss = (problem: CuttingProblem, bound: LinearBound, pattern: Pattern): number =>
    fullCost(boardClass(problem, pattern.classIndex)) * bound.scale + (bound.excess[pattern.classIndex] ?? 0)
    - pattern.counts.reduce((worth, count, type) => worth + count * (bound.values[type] ?? 0), 0);
