import type { LinearBound } from './column-generation.js';
import { boardClass, fullCost, type CuttingProblem } from './problem.js';

/** How near a whole number a count of boards has to be to be taken for one. */
const WHOLE = 1e-6;
/** Boards of a class by which whole counts may lie beside the linear solution. */
const BESIDE = 2;

/** The class whose count of boards is furthest from whole, among those that can be split there; undefined when none can. */
export function unevenClass({ boards, counts }: LinearBound): number | undefined {
    let chosen: number | undefined;
    let least = 0.5 - WHOLE;
    boards.forEach((count, at) => {
        const floor = Math.floor(count);
        const fromHalf = Math.abs(count - floor - 0.5);
        // a limit the linear program had to break cannot be split at
        if (fromHalf < least - 1e-9 && floor >= (counts.least[at] ?? 0) && floor < (counts.most[at] ?? 0)) [chosen, least] = [at, fromHalf];
    });
    return chosen;
}

/** The whole counts nearest to the linear solution that the region allows. */
export const wholeCounts = ({ boards, counts }: LinearBound): number[] =>
    boards.map((count, at) => Math.min(counts.most[at] ?? 0, Math.max(counts.least[at] ?? 0, Math.round(count))));

/** Whole counts beside the linear solution that cost just `total`: the fewest boards first, because long boards are easier to fill, then the nearest. */
export function countsOfTotal(problem: CuttingProblem, { boards, counts }: LinearBound, total: number): number[][] {
    const found: { counts: number[]; boards: number; distance: number }[] = [];
    const search = (chosen: readonly number[], left: number, distance: number): void => {
        const at = chosen.length;
        const board = problem.classes[at];
        if (!board) {
            if (left === 0) found.push({ counts: [...chosen], boards: chosen.reduce((sum, count) => sum + count, 0), distance });
            return;
        }
        const share = boards[at] ?? 0;
        const first = Math.max(counts.least[at] ?? 0, Math.floor(share) - BESIDE);
        const last = Math.min(counts.most[at] ?? 0, Math.ceil(share) + BESIDE);
        for (let count = first; count <= last && count * fullCost(board) <= left; count++) {
            search([...chosen, count], left - count * fullCost(board), distance + Math.abs(count - share));
        }
    };
    search([], total, 0);
    return found.sort((a, b) => a.boards - b.boards || a.distance - b.distance).map(one => one.counts);
}

/** Boards that cost a little more than those given: one more, or a longer one in place of a shorter; the cheapest first. */
export function dearerCounts(problem: CuttingProblem, whole: readonly number[]): { readonly boards: readonly number[]; readonly extra: number }[] {
    const { classes } = problem;
    const changed = (at: number, by: number, boards: readonly number[]): number[] => boards.map((count, index) => index === at ? count + by : count);
    return classes.flatMap((board, at) => (whole[at] ?? 0) >= boardClass(problem, at).limit ? [] : [
        { boards: changed(at, 1, whole), extra: fullCost(board) },
        ...classes.flatMap((shorter, from) => (whole[from] ?? 0) > 0 && shorter.capacity < board.capacity
            ? [{ boards: changed(from, -1, changed(at, 1, whole)), extra: fullCost(board) - fullCost(shorter) }]
            : []),
    ]).filter(one => one.extra > 0).sort((a, b) => a.extra - b.extra);
}
