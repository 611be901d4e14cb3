/** A limit on how long stock is planned: the search asks `isLate` and ends with the best plan it has; `signal` ends a solve that asks nobody. */
export interface TimeLimit {
    readonly isLate: () => boolean;
    readonly signal: AbortSignal;
}

/** What a solve that is under way may take beyond the limit, in ms. */
const grace = 5000;

export function timeLimit(milliseconds: number): TimeLimit {
    const end = performance.now() + milliseconds;
    return { isLate: () => performance.now() >= end, signal: AbortSignal.timeout(Math.ceil(milliseconds + grace)) };
}
