import { bestByTable, fillsOfClasses, type Fill, type ValueTable } from './knapsack.js';
import type { BoardCounts, MasterColumn, MasterProgram } from './master-program.js';
import { boardClass, fullCost, type CuttingProblem, type Pattern } from './problem.js';
import { Simplex } from './simplex.js';

const PRICING_STEPS = 800;
const MOST_PIVOTS = 20_000;
/** Work of one type's row of the value table, beside which a pivot's is counted exactly. */
const TABLE_WORK = 20_000;
/** A column has to promise at least this share of its own cost, or rounding errors would be chased. */
const WORTHWHILE = 1e-7;

/** The linear relaxation within limits on boards: fractions of boards are allowed, so no plan within them can cost less. */
export interface LinearBound {
    readonly counts: BoardCounts;
    /** Value of one piece of each type, in 1/scale of a cost unit, whole numbers. */
    readonly values: readonly number[];
    /** What the best pattern of each class is worth beyond its board, in the same unit; negative when no pattern pays. */
    readonly excess: readonly number[];
    readonly scale: number;
    /** The bound in 1/scale cost units, exact. */
    readonly scaledBound: bigint;
    /** Boards of each class the linear solution uses, fractions included. */
    readonly boards: readonly number[];
    /** Patterns of the optimal basis with the boards, fractions included, each is cut from. */
    readonly basis: readonly { readonly pattern: Pattern; readonly boards: number }[];
    /** For the start of a narrower region. */
    readonly columns: readonly MasterColumn[];
    readonly shares: readonly number[];
    /** Multiplications it took, roughly: a measure of work that is the same on every machine. */
    readonly work: number;
}

/**
 * Column generation: a linear program over few patterns, and a knapsack that finds the pattern worth adding, until none is.
 * The bound does not rest on floating-point numbers: piece values are rounded down to whole numbers, each class's dearest pattern is
 * found for them exactly, and what it is worth beyond its board is charged to every board of the class there may be.
 *
 * @param isLate stops before the last column is found; what is returned is a bound all the same, only a lower one
 * @param from the bound of a wider region to start from
 * Source of the method: Gilmore and Gomory, "A linear programming approach to the cutting-stock problem", Operations Research 9
 * (1961) and 11 (1963), from memory.
 */
export function linearBound(
    problem: CuttingProblem, master: MasterProgram, counts: BoardCounts, tableFor: (values: readonly number[]) => ValueTable,
    isLate: () => boolean, from?: LinearBound,
): LinearBound {
    const simplex = startSimplex(master, counts, from);
    const scale = scaleOf(problem);
    let tables = 0;
    for (let pivots = 0; ;) {
        for (let entering = cheapest(master.columns, simplex); entering && pivots < MOST_PIVOTS; entering = cheapest(master.columns, simplex)) {
            if (!simplex.enter(entering)) break;
            pivots++;
        }
        const prices = simplex.prices();
        const values = problem.types.map((_, type) => Math.floor(Math.max(0, prices[type] ?? 0) * scale));
        const addBetter = (fills: readonly Fill[]): boolean => {
            let found = false;
            for (const [classIndex, fill] of fills.entries()) {
                const cost = fullCost(boardClass(problem, classIndex));
                const worth = cost - (prices[problem.types.length + classIndex] ?? 0) - (prices[problem.types.length + problem.classes.length + classIndex] ?? 0);
                const pattern = { classIndex, counts: fill.counts };
                if (fill.value <= (worth + WORTHWHILE * Math.max(worth, cost)) * scale || fill.value <= 0 || master.has(pattern)) continue;
                master.add(pattern);
                found = true;
            }
            return found;
        };
        let dearest = fillsOfClasses(problem, values, PRICING_STEPS);
        const canGoOn = pivots < MOST_PIVOTS && !isLate();
        if (canGoOn && addBetter(dearest)) continue;
        if (!dearest.every(fill => fill.isBest)) {
            const table = tableFor(values);
            tables++;
            dearest = problem.classes.map(board => bestByTable(problem, table, values, board.capacity));
            if (canGoOn && addBetter(dearest)) continue;
        }
        return withSolution(problem, counts, wholeBound(problem, counts, values, scale, dearest), simplex, (pivots + master.rows / 4) * master.rows ** 2 + tables * TABLE_WORK * master.rows);
    }
}

function startSimplex(master: MasterProgram, counts: BoardCounts, from: LinearBound | undefined): Simplex<MasterColumn> {
    const rightSide = master.rightSide(counts);
    if (from) {
        const warm = new Simplex(rightSide, master.repaired(from.columns, from.shares, from.boards, counts));
        if (warm.isFeasible()) return warm;
    }
    return new Simplex(rightSide, master.startBasis(counts));
}

function withSolution(problem: CuttingProblem, counts: BoardCounts, bound: ReturnType<typeof wholeBound>, simplex: Simplex<MasterColumn>, work: number): LinearBound {
    const shares = simplex.values();
    const basis = simplex.basis.flatMap(({ pattern }, place) => pattern ? [{ pattern, boards: shares[place] ?? 0 }] : []);
    return {
        counts, values: bound.values, excess: bound.excess, scale: bound.scale, scaledBound: bound.scaledBound,
        boards: problem.classes.map((_, at) => basis.reduce((total, { pattern, boards }) => total + (pattern.classIndex === at ? boards : 0), 0)),
        basis, columns: simplex.basis.slice(), shares, work,
    };
}

/** The column that promises most for its own cost; undefined when none promises anything. */
function cheapest(columns: readonly MasterColumn[], simplex: Simplex<MasterColumn>): MasterColumn | undefined {
    let best: MasterColumn | undefined;
    let bestPromise = WORTHWHILE;
    for (const column of columns) {
        const promise = -simplex.reducedCost(column) / (column.cost || 1);
        if (promise > bestPromise) [best, bestPromise] = [column, promise];
    }
    return best;
}

/** A power of two, so that values in 1/scale cost units and their sums stay exact in a double. */
const scaleOf = (problem: CuttingProblem): number =>
    2 ** Math.max(0, Math.floor(40 - Math.log2(Math.max(1, ...problem.classes.map(fullCost)))));

/** The bound that whole-number piece values give, when `dearest` is the most valuable fill of each class. */
function wholeBound(problem: CuttingProblem, counts: BoardCounts, values: readonly number[], scale: number, dearest: readonly Fill[]) {
    const excess = problem.classes.map((board, at) => (dearest[at]?.value ?? 0) - fullCost(board) * scale);
    const pieces = problem.types.reduce((total, type, at) => total + BigInt(type.demand) * BigInt(values[at] ?? 0), 0n);
    const boards = excess.reduce((total, over, at) => total + BigInt(over > 0 ? counts.most[at] ?? 0 : counts.least[at] ?? 0) * BigInt(over), 0n);
    return { values, scale, excess, scaledBound: pieces - boards };
}
