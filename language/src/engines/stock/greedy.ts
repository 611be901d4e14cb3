import { boardClass, fullCost, loadOf, solutionCost, type CuttingProblem, type Pattern, type Solution } from './problem.js';
import { quickFills } from './knapsack.js';
import { withoutSurplus } from './tidy-solution.js';

/** Steps of one board's fill: enough for the best fill of an ordinary board, few enough to stay quick. */
const FILL_STEPS = 400;

/**
 * The cheapest of several greedy plans: first fit and best fit, longest piece first, opening one board class each; and board by
 * board the pattern that costs least per value, with longer pieces valued a little above their length.
 * Returns undefined only when the boards there are cannot hold the pieces, which a problem with missing boards rules out.
 */
export function greedySolution(problem: CuttingProblem): Solution | undefined {
    const lengths = problem.types.map(type => type.weight);
    const largest = Math.max(1, ...lengths);
    const candidates: (Solution | undefined)[] = [];
    problem.classes.forEach((_, opened) => {
        candidates.push(fitLongestFirst(problem, opened, 'first'), fitLongestFirst(problem, opened, 'best'));
    });
    for (const bias of [0, 0.05, 0.15, 0.4]) {
        candidates.push(fillBoardByBoard(problem, lengths.map(length => length * (1 + bias * length / largest))));
    }
    return cheapest(problem, candidates);
}

/** The candidate of least cost; among equals the fewest patterns, then the longest offcut, then the first. */
export function cheapest(problem: CuttingProblem, candidates: readonly (Solution | undefined)[]): Solution | undefined {
    let best: { solution: Solution; rank: readonly number[] } | undefined;
    for (const candidate of candidates) {
        if (!candidate) continue;
        const solution = withoutSurplus(problem, candidate);
        const rank = [solutionCost(problem, solution), solution.length, -longestOffcut(problem, solution)];
        const differs = best ? rank.findIndex((figure, at) => figure !== best?.rank[at]) : 0;
        if (!best || (differs >= 0 && (rank[differs] ?? 0) < (best.rank[differs] ?? 0))) best = { solution, rank };
    }
    return best?.solution;
}

const longestOffcut = (problem: CuttingProblem, solution: Solution): number =>
    Math.max(0, ...solution.map(({ pattern }) => boardClass(problem, pattern.classIndex).capacity - loadOf(problem, pattern.counts)));

/** Longest piece first into the first (or tightest) board that still takes it, else into a new board of the opened class. */
function fitLongestFirst(problem: CuttingProblem, opened: number, fit: 'first' | 'best'): Solution | undefined {
    const boards: { classIndex: number; counts: number[]; rest: number }[] = [];
    const used = problem.classes.map(() => 0);
    for (const [type, { weight, demand }] of problem.types.entries()) {
        for (let piece = 0; piece < demand; piece++) {
            let place: (typeof boards)[number] | undefined;
            for (const board of boards) {
                if (board.rest < weight) continue;
                if (!place || board.rest < place.rest) place = board;
                if (fit === 'first') break;
            }
            if (!place) {
                const classIndex = classFor(problem, opened, weight, used);
                if (classIndex === undefined) return undefined;
                used[classIndex] = (used[classIndex] ?? 0) + 1;
                place = { classIndex, counts: problem.types.map(() => 0), rest: boardClass(problem, classIndex).capacity };
                boards.push(place);
            }
            place.counts[type] = (place.counts[type] ?? 0) + 1;
            place.rest -= weight;
        }
    }
    return boards.map(({ classIndex, counts }) => ({ pattern: { classIndex, counts }, count: 1 }));
}

function classFor(problem: CuttingProblem, opened: number, weight: number, used: readonly number[]): number | undefined {
    const fits = (at: number): boolean => {
        const board = boardClass(problem, at);
        return board.capacity >= weight && (used[at] ?? 0) < board.limit;
    };
    if (fits(opened)) return opened;
    const others = problem.classes.map((_, at) => at).filter(fits)
        .sort((a, b) => fullCost(boardClass(problem, a)) - fullCost(boardClass(problem, b)) || a - b);
    return others[0];
}

/**
 * Board by board, the pattern of what is still to be cut whose cost is least for its value; a pattern is repeated as long as the
 * demand lasts.
 * @param values worth of one piece of each type; with the prices of the linear bound this finds near-optimal plans
 * @param demand pieces to cut; the whole job when absent
 */
export function fillBoardByBoard(
    problem: CuttingProblem, values: readonly number[], demand: readonly number[] = problem.types.map(type => type.demand), used = problem.classes.map(() => 0),
): Solution | undefined {
    const left = demand.slice();
    const boards = used.slice();
    const solution: { pattern: Pattern; count: number }[] = [];
    const worth = values.map((value, at) => Math.max(value, 1e-6 * (problem.types[at]?.weight ?? 0)));
    while (left.some(count => count > 0)) {
        const quick = quickFills(problem, worth, left);
        let best: { classIndex: number; counts: readonly number[]; rate: number } | undefined;
        for (const [classIndex, board] of problem.classes.entries()) {
            if ((boards[classIndex] ?? 0) >= board.limit) continue;
            const fill = quick(board.capacity, FILL_STEPS);
            if (fill.value <= 0) continue;
            const rate = fullCost(board) / fill.value;
            if (!best || rate < best.rate - 1e-12) best = { classIndex, counts: fill.counts, rate };
        }
        if (!best) return undefined;
        const { classIndex, counts } = best;
        let times = boardClass(problem, classIndex).limit - (boards[classIndex] ?? 0);
        counts.forEach((held, type) => { if (held > 0) times = Math.min(times, Math.floor((left[type] ?? 0) / held)); });
        counts.forEach((held, type) => { left[type] = (left[type] ?? 0) - held * times; });
        boards[classIndex] = (boards[classIndex] ?? 0) + times;
        solution.push({ pattern: { classIndex, counts }, count: times });
    }
    return solution;
}

/** A bound without a linear program: all pieces in the boards that cost least per length, with no waste. In cost units. */
export function materialBound(problem: CuttingProblem): number {
    const load = loadOf(problem, problem.types.map(type => type.demand));
    return load === 0 ? 0 : load * Math.min(...problem.classes.map(board => fullCost(board) / board.capacity));
}
