/**
 * A linear program in which every variable is a whole number from 0 to its `upper`. The matrix is stored by columns: column j has
 * `values[k]` in row `rows[k]` for k from `starts[j]` to `starts[j + 1]`. Plain arrays only, so it can be sent to another thread.
 */
export interface IntegerProgram {
    readonly cost: readonly number[];
    readonly upper: readonly number[];
    readonly rowLower: readonly number[];
    /** Infinity means no upper limit. */
    readonly rowUpper: readonly number[];
    readonly starts: readonly number[];
    readonly rows: readonly number[];
    readonly values: readonly number[];
    /** The search may stop when the best solution is within this of the bound. */
    readonly absoluteGap: number;
    /** Most branch-and-bound nodes: the limit that keeps the answer the same on every machine. */
    readonly maxNodes: number;
    /** Last resort against a search that does not end. */
    readonly maxSeconds: number;
}

export interface IntegerResult {
    /** `optimal`: `values` is best within the gap. `infeasible`: proven that there is none. `limit`: stopped early. `failed`: no answer. */
    readonly status: 'optimal' | 'infeasible' | 'limit' | 'failed';
    readonly objective: number | undefined;
    /** No solution costs less; -Infinity when nothing is known. */
    readonly bound: number;
    readonly values: readonly number[] | undefined;
}

/** The port to a mixed-integer solver; `server/` and the web host bring their own. */
export interface IntegerSolver {
    /** Rejects with the signal's reason when it is aborted. */
    solve(program: IntegerProgram, signal?: AbortSignal): Promise<IntegerResult>;
    /** Lets other work of the host run, so that a signal can arrive between two stretches of arithmetic. */
    pause?(): Promise<void>;
}
