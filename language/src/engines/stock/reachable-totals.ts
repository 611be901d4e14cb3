import { type CuttingProblem } from './problem.js';

const MOST_CELLS = 4_000_000;

/**
 * Totals that whole boards can cost. Three lengths at 7.99, 9.99 and 12.99 cannot add up to every cent, so a bound may be raised to the
 * next total there is, and a plan is improved only by reaching the total before its own.
 */
export interface ReachableTotals {
    /** Smallest total of whole boards that is at least `cost`, in cost units. */
    atLeast(cost: number): number;
    /** Largest total of whole boards below `cost`; -1 when there is none. */
    below(cost: number): number;
}

/** @param upTo the largest total asked about, in cost units */
export function reachableTotals(problem: CuttingProblem, upTo: number): ReachableTotals {
    // where boards may be missing the total holds penalties, and above the cell limit the table would cost more than it gains
    if (problem.classes.some(board => board.isMissing) || upTo > MOST_CELLS) return { atLeast: cost => cost, below: cost => cost - 1 };
    const canCost = new Uint8Array(upTo + 1);
    canCost[0] = 1;
    for (const { cost } of problem.classes) {
        for (let total = cost; total <= upTo; total++) if (canCost[total - cost] === 1) canCost[total] = 1;
    }
    return {
        atLeast: cost => {
            for (let total = Math.max(0, cost); total <= upTo; total++) if (canCost[total] === 1) return total;
            return cost;
        },
        below: cost => {
            let total = Math.min(cost - 1, upTo);
            while (total >= 0 && canCost[total] !== 1) total--;
            return total;
        },
    };
}
