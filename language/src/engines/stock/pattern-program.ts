import type { IntegerProgram } from './integer-solver.js';
import { type CuttingProblem, type Pattern, type Solution } from './problem.js';

export interface ProgramLimits {
    readonly maxNodes: number;
    readonly maxSeconds: number;
    /** False asks for all pieces or no answer: sometimes quicker, and never half an answer. */
    readonly mayLeaveOver: boolean;
}

/**
 * How to cut the pieces from boards already chosen, leaving as few pieces over as can be: none when the boards suffice.
 * Columns: how often each pattern is cut, then the pieces of each type left over. A program that may leave pieces over always has an
 * answer, and a search stopped early still gives most of a plan.
 * @param demand pieces of each type
 * @param boards boards of each class
 */
export function patternProgram(
    problem: CuttingProblem, patterns: readonly Pattern[], demand: readonly number[], boards: readonly number[], limits: ProgramLimits,
): IntegerProgram {
    const { types, classes } = problem;
    const starts: number[] = [0];
    const rows: number[] = [];
    const values: number[] = [];
    const upper: number[] = [];
    for (const { classIndex, counts } of patterns) {
        let most = 0;
        counts.forEach((count, type) => {
            const wanted = demand[type] ?? 0;
            if (count === 0 || wanted === 0) return;
            rows.push(type);
            values.push(count);
            most = Math.max(most, Math.ceil(wanted / count));
        });
        rows.push(types.length + classIndex);
        values.push(1);
        upper.push(Math.min(most, boards[classIndex] ?? 0));
        starts.push(rows.length);
    }
    types.forEach((_, type) => {
        rows.push(type);
        values.push(1);
        upper.push(limits.mayLeaveOver ? demand[type] ?? 0 : 0);
        starts.push(rows.length);
    });
    return {
        cost: [...patterns.map(() => 0), ...types.map(() => 1)],
        upper, starts, rows, values,
        rowLower: [...demand, ...classes.map(() => 0)],
        rowUpper: [...types.map(() => Infinity), ...boards],
        // pieces are whole: less than one left over is none
        absoluteGap: 0.99,
        maxNodes: limits.maxNodes,
        maxSeconds: limits.maxSeconds,
    };
}

/** The boards in a solver's answer, rounded to whole ones. */
export const boardsFrom = (patterns: readonly Pattern[], values: readonly number[]): Solution => patterns.flatMap((pattern, at) => {
    const count = Math.round(values[at] ?? 0);
    return count > 0 ? [{ pattern, count }] : [];
});

/** Pieces of each type a solution does not make. */
export const leftOver = (problem: CuttingProblem, solution: Solution): number[] => problem.types.map((type, at) =>
    Math.max(0, type.demand - solution.reduce((made, { pattern, count }) => made + count * (pattern.counts[at] ?? 0), 0)));

/** Boards of each class a solution uses. */
export const boardsUsed = (problem: CuttingProblem, solution: Solution): number[] => problem.classes.map((_, at) =>
    solution.reduce((boards, { pattern, count }) => boards + (pattern.classIndex === at ? count : 0), 0));
