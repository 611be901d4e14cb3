import { assemblePlan, emptyPlan } from './assemble.js';
import type { IntegerSolver } from './integer-solver.js';
import { cuttingProblem } from './problem.js';
import type { StockPlan, StockRequest } from './request.js';
import { greedySearch, searchPlan } from './search.js';
import { verifyStockPlan } from './verify.js';

/**
 * A good stock plan at once, without a solver: the best of several greedy plans, with a bound from the length of the pieces alone.
 * @returns a plan that usually costs a few percent too much, and says so as its gap; throws when a figure of the request is none
 */
export function planStockGreedy(request: StockRequest): StockPlan {
    const problem = cuttingProblem(request);
    return problem.types.length === 0 ? emptyPlan(request, problem) : verified(assemblePlan(request, problem, greedySearch(problem)), request);
}

/**
 * The stock plan of least cost for one section and grade, proven best or with its gap.
 *
 * Greedy plans give the start; column generation gives a bound that holds in exact arithmetic; branching on how many boards of each length are
 * bought raises the bound and ends in counts for which the solver finds the cuts or shows that there are none. Never worse than
 * `planStockGreedy`. Equal requests give equal plans unless a limit in seconds stops the solver; the cost of a proven plan never differs.
 *
 * @param solver port to a mixed-integer solver
 * @param signal cancels; the promise rejects with its reason
 * @param isLate asked now and then; once true the search ends with the plan and the bound there are
 * Worked example: 97 of 45, 610 of 36, 395 of 31 and 211 of 14 from stock of 100 without kerf take 453 boards (Chvatal, Linear Programming, ch. 13).
 */
export async function planStock(
    request: StockRequest, solver: IntegerSolver, signal?: AbortSignal, isLate: () => boolean = () => false,
): Promise<StockPlan> {
    signal?.throwIfAborted();
    const problem = cuttingProblem(request);
    if (problem.types.length === 0) return emptyPlan(request, problem);
    return verified(assemblePlan(request, problem, await searchPlan(problem, { solver, signal, isLate })), request);
}

/** The search and its solver work in floating point; what leaves here adds up in whole ticks, board by board, or is a defect of ours and throws. */
function verified(plan: StockPlan, request: StockRequest): StockPlan {
    const [fault] = verifyStockPlan(plan, request);
    if (fault !== undefined) throw new Error(`The stock plan does not add up: ${fault}`);
    return plan;
}
