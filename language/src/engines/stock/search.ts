import { BranchOnBoards } from './branch-on-boards.js';
import { greedySolution, materialBound } from './greedy.js';
import { withMergedPatterns } from './merge-patterns.js';
import { solutionCost, type CuttingProblem, type Solution } from './problem.js';
import { reachableTotals } from './reachable-totals.js';
import type { SearchHost } from './search-host.js';

/** What a search found, in cost units; proven when the solution costs no more than the bound. */
export interface SearchResult {
    readonly solution: Solution;
    readonly lowerBound: number;
    /** The bound before it is rounded up to a total that boards can have. */
    readonly linearBound: number;
    /** What was done, in order, for the method text. */
    readonly steps: readonly string[];
    /** True when the proof rests on a solver that works in floating point. */
    readonly usesSolver: boolean;
}

/** Greedy plan and bound without a linear program. */
export function greedySearch(problem: CuttingProblem): SearchResult {
    const solution = greedySolution(problem);
    if (!solution) throw new Error('Greedy found no plan although boards may be missing');
    const linearBound = materialBound(problem);
    const cost = solutionCost(problem, solution);
    // the bound is a quotient in floating point; what it may be too high by must not raise the whole number
    const lowerBound = Math.min(cost, reachableTotals(problem, cost).atLeast(Math.ceil(linearBound - 1e-6 * Math.max(1, linearBound))));
    return { solution: withMergedPatterns(problem, solution), lowerBound, linearBound, steps: ['the best of several greedy plans'], usesSolver: false };
}

/** The cheapest plan, and the bound that proves it or tells the gap. */
export async function searchPlan(problem: CuttingProblem, host: SearchHost): Promise<SearchResult> {
    const greedy = greedySearch(problem);
    const cost = solutionCost(problem, greedy.solution);
    if (cost <= greedy.lowerBound) return greedy;
    const found = await new BranchOnBoards(problem, greedy.solution, reachableTotals(problem, cost), host).run();
    return {
        solution: withMergedPatterns(problem, found.solution),
        lowerBound: found.lowerBound,
        linearBound: found.linearBound,
        steps: [
            ...greedy.steps,
            `${found.regions} linear bound${found.regions === 1 ? '' : 's'} by column generation, branching on the number of boards of each length`,
            ...found.programs > 0 ? [`${found.programs} integer program${found.programs === 1 ? '' : 's'} over cutting patterns`] : [],
        ],
        usesSolver: found.programs > 0,
    };
}
