import type { LinearBound } from './column-generation.js';
import type { ValueTable } from './knapsack.js';
import { fullCost, type CuttingProblem, type Pattern } from './problem.js';

/** Patterns looked at before the list is given up: about 50 ms. */
const MOST_SEEN = 60_000;

/**
 * Every maximal pattern whose cost exceeds the value of its pieces by at most `allowance`: only these can occur in a plan that costs
 * at most `allowance` more than the linear bound.
 * @param allowance in 1/scale cost units, as `bound.values`
 * @param most gives up and returns undefined beyond this many patterns
 * @param isAlsoWithin leaves out what another bound rules out
 */
export function patternsWithin(
    problem: CuttingProblem, bound: LinearBound, table: ValueTable, allowance: number, most: number, isAlsoWithin: (pattern: Pattern) => boolean = () => true,
): Pattern[] | undefined {
    const { types, classes } = problem;
    const list = { patterns: [] as Pattern[], seen: 0, isTooLong: false };
    const counts = new Array<number>(types.length).fill(0);
    /** Grid units the types from here on could fill at most. */
    const fillable = new Array<number>(types.length + 1).fill(0);
    for (let type = types.length - 1; type >= 0; type--) fillable[type] = (fillable[type + 1] ?? 0) + (types[type]?.perPattern ?? 0) * (types[type]?.weight ?? 0);

    for (const [classIndex, board] of classes.entries()) {
        const needed = fullCost(board) * bound.scale + (bound.excess[classIndex] ?? 0) - allowance;
        // a load that a shorter board takes for no more money is cut from that board
        const smaller = Math.max(0, ...classes.slice(0, classIndex)
            .filter(other => other.limit === Infinity && fullCost(other) <= fullCost(board)).map(other => other.capacity));
        const search = (type: number, rest: number, value: number, leastLeftOut: number): void => {
            if (list.isTooLong) return;
            const piece = types[type];
            if (!piece) {
                if (rest >= leastLeftOut || board.capacity - rest <= smaller) return;
                const pattern = { classIndex, counts: counts.slice() };
                list.isTooLong = ++list.seen > MOST_SEEN || (isAlsoWithin(pattern) && list.patterns.push(pattern) > most);
                return;
            }
            if (rest - (fillable[type] ?? 0) >= leastLeftOut) return;
            const gain = bound.values[type] ?? 0;
            for (let count = Math.min(piece.perPattern, Math.floor(rest / piece.weight)); count >= 0; count--) {
                const left = rest - count * piece.weight;
                const worth = value + count * gain;
                if (worth + table.most(type + 1, left) < needed) continue;
                counts[type] = count;
                search(type + 1, left, worth, count < piece.perPattern ? Math.min(leastLeftOut, piece.weight) : leastLeftOut);
            }
            counts[type] = 0;
        };
        search(0, board.capacity, 0, Infinity);
        if (list.isTooLong) return undefined;
    }
    return list.patterns;
}
