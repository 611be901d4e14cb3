import { loadOf, boardClass, type CuttingProblem, type Solution } from './problem.js';

/**
 * The same pieces from the same boards with fewer settings of the saw: where two patterns of one board class, cut a and b times, can be
 * shared out evenly over their a + b boards, one pattern takes their place. The even share holds no more than the fuller of the two, so
 * it always fits.
 * Source of the method: Foerster and Wäscher, pattern reduction by combination (2000), from memory; of it, the step from two patterns to one.
 */
export function withMergedPatterns(problem: CuttingProblem, solution: Solution): Solution {
    const patterns = [...solution];
    for (let first = 0; first < patterns.length; first++) {
        for (let second = first + 1; second < patterns.length; second++) {
            const merged = mergedPair(problem, patterns[first], patterns[second]);
            if (!merged) continue;
            patterns.splice(second, 1);
            patterns[first] = merged;
            // the new pattern may go together with one passed over before
            first = -1;
            break;
        }
    }
    return patterns;
}

function mergedPair(problem: CuttingProblem, a: Solution[number] | undefined, b: Solution[number] | undefined): Solution[number] | undefined {
    if (!a || !b || a.pattern.classIndex !== b.pattern.classIndex) return undefined;
    const boards = a.count + b.count;
    const totals = a.pattern.counts.map((held, type) => held * a.count + (b.pattern.counts[type] ?? 0) * b.count);
    if (totals.some(total => total % boards !== 0)) return undefined;
    const pattern = { classIndex: a.pattern.classIndex, counts: totals.map(total => total / boards) };
    return loadOf(problem, pattern.counts) <= boardClass(problem, pattern.classIndex).capacity ? { pattern, count: boards } : undefined;
}
