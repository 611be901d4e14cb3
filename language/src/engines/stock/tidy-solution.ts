import { boardClass, fullCost, loadOf, type CuttingProblem, type Pattern, type Solution } from './problem.js';

/**
 * The same plan without surplus: pieces beyond the demand are taken out, each board becomes the cheapest that holds its load, and
 * equal boards are counted together. Surplus comes off the board whose offcut grows longest, so that what is left over is useful.
 */
export function withoutSurplus(problem: CuttingProblem, solution: Solution): Solution {
    const surplus = problem.types.map((type, at) =>
        solution.reduce((made, { pattern, count }) => made + count * (pattern.counts[at] ?? 0), 0) - type.demand);
    const short = surplus.findIndex(extra => extra < 0);
    if (short >= 0) throw new Error(`A plan lacks ${-(surplus[short] ?? 0)} pieces of ${problem.types[short]?.length} ticks`);

    const groups = new Map<string, { pattern: Pattern; count: number }>();
    const add = (pattern: Pattern, count: number): void => {
        const key = `${pattern.classIndex}:${pattern.counts.join()}`;
        const group = groups.get(key);
        if (group) group.count += count; else groups.set(key, { pattern, count });
    };
    for (const { pattern, count } of solution) if (count > 0) add(pattern, count);

    for (let type = problem.types.length - 1; type >= 0; type--) {
        while ((surplus[type] ?? 0) > 0) {
            const holding = [...groups].filter(([, group]) => (group.pattern.counts[type] ?? 0) > 0);
            const roomiest = holding.reduce((best, one) => room(problem, one[1].pattern) > room(problem, best[1].pattern) ? one : best, holding[0] ?? never());
            const [key, { pattern, count }] = roomiest;
            const counts = pattern.counts.slice();
            const taken = Math.min(surplus[type] ?? 0, counts[type] ?? 0);
            counts[type] = (counts[type] ?? 0) - taken;
            surplus[type] = (surplus[type] ?? 0) - taken;
            if (count === 1) groups.delete(key); else groups.set(key, { pattern, count: count - 1 });
            if (counts.some(held => held > 0)) add({ classIndex: pattern.classIndex, counts }, 1);
        }
    }
    return inCheapestBoards(problem, [...groups.values()]);
}

const never = (): never => { throw new Error('No board holds a piece that is in surplus'); };

const room = (problem: CuttingProblem, pattern: Pattern): number =>
    boardClass(problem, pattern.classIndex).capacity - loadOf(problem, pattern.counts);

function inCheapestBoards(problem: CuttingProblem, solution: Solution): Solution {
    const used = problem.classes.map((_, at) =>
        solution.reduce((boards, { pattern, count }) => boards + (pattern.classIndex === at ? count : 0), 0));
    const groups = new Map<string, { pattern: Pattern; count: number }>();
    const add = (classIndex: number, counts: readonly number[], count: number): void => {
        const key = `${classIndex}:${counts.join()}`;
        const group = groups.get(key);
        if (group) group.count += count; else groups.set(key, { pattern: { classIndex, counts }, count });
    };
    for (const { pattern, count } of solution) {
        const load = loadOf(problem, pattern.counts);
        let left = count;
        while (left > 0) {
            const now = pattern.classIndex;
            let to = now;
            problem.classes.forEach((board, at) => {
                if (board.capacity < load || (used[at] ?? 0) >= board.limit) return;
                if (fullCost(board) < fullCost(boardClass(problem, to))) to = at;
            });
            const free = to === now ? left : boardClass(problem, to).limit - (used[to] ?? 0);
            const moved = Math.min(left, free);
            if (to !== now) {
                used[to] = (used[to] ?? 0) + moved;
                used[now] = (used[now] ?? 0) - moved;
            }
            add(to, pattern.counts, moved);
            left -= moved;
        }
    }
    return [...groups.values()];
}
