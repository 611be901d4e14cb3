import type { LinearBound } from './column-generation.js';
import { cheapest, fillBoardByBoard } from './greedy.js';
import type { SearchHost } from './search-host.js';
import type { PatternChoice } from './pattern-choice.js';
import { boardsFrom, boardsUsed, leftOver, patternProgram, type ProgramLimits } from './pattern-program.js';
import type { CuttingProblem, Pattern, Solution } from './problem.js';

const QUICK: ProgramLimits = { maxNodes: 100, maxSeconds: 0.2, mayLeaveOver: true };
const STRICT: ProgramLimits = { maxNodes: 300, maxSeconds: 0.25, mayLeaveOver: false };
const THOROUGH: ProgramLimits = { maxNodes: 600, maxSeconds: 0.5, mayLeaveOver: true };
/** What a search that came to its end counts for, of its limit. */
const SOLVED_SHARE = 0.2;
/** A bound on pieces left over above this is taken for a proof that some are: the solver's own tolerance is far smaller. */
const SOME_LEFT = 0.01;
/** Patterns up to which one search over all of them is quicker than a narrow one first, and up to which it is quick at all. */
const FEW = 300;
const MANY = 1000;
/** Pieces up to which the patterns of the linear solutions alone are tried first: fewer patterns than pieces, and quick. */
const SMALL = 200;

export interface Realised {
    /** `found`: `plan` uses no more than the chosen boards. `none`: no plan does. `unknown`: not settled. */
    readonly outcome: 'found' | 'none' | 'unknown';
    /** A complete plan, with more boards than chosen unless found. */
    readonly plan: Solution | undefined;
    readonly programs: number;
    /** Seconds of solving it counts for: the limit of each search that was stopped and a share of it for the others, whatever the machine's clock said. */
    readonly seconds: number;
}

/** Quick while only a good plan is wanted; thorough when the bound depends on the answer; remaining is thorough after quick. */
export type Effort = 'quick' | 'thorough' | 'remaining';

interface Search {
    readonly isQuick: boolean;
    readonly kept: Solution;
    readonly patterns: readonly Pattern[];
    readonly limits: ProgramLimits;
    readonly isComplete: boolean;
}

/**
 * Looks for the cuts of a fixed number of boards of each class. While the patterns are many, the whole boards of the linear solution are
 * kept and only the rest is searched; then some are given up again; at last everything is searched.
 * @param mostSeconds no further search is begun once they count for so many
 */
export async function realise(
    problem: CuttingProblem, bound: LinearBound, boards: readonly number[], patterns: PatternChoice, effort: Effort, host: SearchHost,
    mostSeconds: number,
): Promise<Realised> {
    let plan: Solution | undefined;
    let programs = 0;
    let seconds = 0;
    for (const { kept, patterns: offered, limits, isComplete } of searches(problem, bound, patterns, effort)) {
        if (host.isLate() || seconds >= mostSeconds) break;
        const used = boardsUsed(problem, kept);
        const left = boards.map((count, at) => count - (used[at] ?? 0));
        if (left.some(count => count < 0)) continue;
        programs++;
        const answer = await host.solver.solve(patternProgram(problem, offered, leftOver(problem, kept), left, limits), host.signal);
        host.signal?.throwIfAborted();
        seconds += limits.maxSeconds * (answer.status === 'limit' || answer.status === 'failed' ? 1 : SOLVED_SHARE);
        const cut = answer.values ? [...kept, ...boardsFrom(offered, answer.values)] : kept;
        const missing = leftOver(problem, cut);
        if (missing.every(count => count === 0)) return { outcome: 'found', plan: cut, programs, seconds };
        const rest = fillBoardByBoard(problem, bound.values, missing, boardsUsed(problem, cut));
        plan = cheapest(problem, [plan, rest && [...cut, ...rest]]);
        if (isComplete && (answer.status === 'infeasible' || answer.bound > SOME_LEFT)) return { outcome: 'none', plan, programs, seconds };
    }
    return { outcome: 'unknown', plan, programs, seconds };
}

function searches(problem: CuttingProblem, bound: LinearBound, { met, near, all }: PatternChoice, effort: Effort): Search[] {
    const keep = (share: number): Solution =>
        bound.basis.map(({ pattern, boards }) => ({ pattern, count: Math.floor(share * boards + 1e-6) })).filter(({ count }) => count > 0);
    const nothing: Solution = [];
    const complete = all ? [{ kept: nothing, patterns: all, limits: THOROUGH, isComplete: true, isQuick: false }] : [];
    if (all && all.length <= FEW) {
        return effort === 'quick' ? complete.map(search => ({ ...search, limits: QUICK })) : complete;
    }
    const few = near.slice(0, FEW);
    const partial = (share: number, isQuick: boolean): Search[] =>
        keep(share).length > 0 ? [{ kept: keep(share), patterns: few, limits: QUICK, isComplete: false, isQuick }] : [];
    const isSmall = problem.types.reduce((total, type) => total + type.demand, 0) <= SMALL;
    const strict = { kept: nothing, patterns: met, limits: STRICT, isComplete: false, isQuick: isSmall };
    const wide = all && all.length <= MANY ? [] : [{ kept: nothing, patterns: near.slice(0, MANY), limits: THOROUGH, isComplete: false, isQuick: false }];
    const inOrder = isSmall
        ? [strict, ...effort === 'thorough' ? [] : partial(1, true), ...partial(0.6, false), ...wide, ...complete]
        : [...partial(1, true), ...partial(0.6, true), strict, ...wide, ...complete];
    switch (effort) {
        case 'quick': return inOrder.filter(search => search.isQuick);
        case 'remaining': return inOrder.filter(search => !search.isQuick);
        case 'thorough': return inOrder;
    }
}
