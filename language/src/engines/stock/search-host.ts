import type { IntegerSolver } from './integer-solver.js';

/** What a search needs from outside: the solver, a signal that cancels, and when to stop with what there is. */
export interface SearchHost {
    readonly solver: IntegerSolver;
    readonly signal: AbortSignal | undefined;
    readonly isLate: () => boolean;
}
