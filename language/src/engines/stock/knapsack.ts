import type { CuttingProblem } from './problem.js';

/** Cells of the longest board at most; a finer grid is rounded so that bounds stay bounds. */
const MOST_CELLS = 8192;

/**
 * For every type and every remaining length, the most value the types from there on can add. One table serves every board class,
 * because a shorter board is only a smaller remaining length. On a grid that is too fine the figures are upper bounds.
 */
export interface ValueTable {
    /** Most value types `from`.. can add in `rest` units of the problem's grid. */
    most(from: number, rest: number): number;
}

export function createValueTable(problem: CuttingProblem): (values: readonly number[]) => ValueTable {
    const { types, classes } = problem;
    const largest = Math.max(0, ...classes.map(one => one.capacity));
    const step = Math.max(1, Math.ceil(largest / MOST_CELLS));
    const cells = Math.floor(largest / step) + 1;
    const store = new Float64Array((types.length + 1) * cells);
    // rounding every weight and every remaining length down keeps each real pattern possible, so the table never says too little
    const weights = types.map(type => Math.floor(type.weight / step));
    return values => {
        store.fill(0, types.length * cells);
        for (let type = types.length - 1; type >= 0; type--) fillRow(store, cells, type, weights[type] ?? 0, types[type]?.perPattern ?? 0, values[type] ?? 0);
        return { most: (from, rest) => store[from * cells + Math.floor(rest / step)] ?? 0 };
    };
}

function fillRow(store: Float64Array, cells: number, type: number, weight: number, most: number, value: number): void {
    const row = type * cells;
    const below = row + cells;
    store.copyWithin(row, below, below + cells);
    if (value <= 0 || most <= 0) return;
    if (weight === 0) {
        // a piece finer than the grid is free in the rounded problem
        for (let cell = 0; cell < cells; cell++) store[row + cell] = (store[below + cell] ?? 0) + most * value;
        return;
    }
    if (most * weight >= cells - weight) {
        for (let cell = weight; cell < cells; cell++) {
            const withOne = (store[row + cell - weight] ?? 0) + value;
            if (withOne > (store[row + cell] ?? 0)) store[row + cell] = withOne;
        }
        return;
    }
    for (let count = 1; count <= most; count++) {
        const shift = count * weight;
        const gain = count * value;
        for (let cell = shift; cell < cells; cell++) {
            const withCount = (store[below + cell - shift] ?? 0) + gain;
            if (withCount > (store[row + cell] ?? 0)) store[row + cell] = withCount;
        }
    }
}

export interface Fill {
    readonly value: number;
    readonly counts: number[];
    /** True when no fill is worth more. */
    readonly isBest: boolean;
}

/** The most valuable pattern in `capacity`, searched along the value table; exact also where the table only bounds. */
export function bestByTable(problem: CuttingProblem, table: ValueTable, values: readonly number[], capacity: number): Fill {
    const { types } = problem;
    const counts = new Array<number>(types.length).fill(0);
    let best = 0;
    let bestCounts = counts.slice();
    const search = (type: number, rest: number, value: number): void => {
        if (value > best) [best, bestCounts] = [value, counts.slice()];
        const piece = types[type];
        if (!piece || value + table.most(type, rest) <= best) return;
        const gain = values[type] ?? 0;
        const most = gain > 0 ? Math.min(piece.perPattern, Math.floor(rest / piece.weight)) : 0;
        for (let count = most; count >= 0; count--) {
            counts[type] = count;
            const left = rest - count * piece.weight;
            if (value + count * gain + table.most(type + 1, left) > best) search(type + 1, left, value + count * gain);
        }
        counts[type] = 0;
    };
    search(0, capacity, 0);
    return { value: best, counts: bestCounts, isBest: true };
}

/** Fills boards for one set of piece values. `beat` is a fill already known, worth no more than what this capacity takes. */
export type QuickFill = (capacity: number, maxSteps: number, beat?: Fill) => Fill;

/**
 * Prepares fills by branch and bound on value per length, stopped after so many steps: quick, and usually the best.
 * @param available most of each type a fill may hold
 */
export function quickFills(problem: CuttingProblem, values: readonly number[], available: readonly number[]): QuickFill {
    const { types } = problem;
    const order: number[] = [];
    types.forEach((_, at) => { if ((values[at] ?? 0) > 0 && (available[at] ?? 0) > 0) order.push(at); });
    const density = Float64Array.from(types, (type, at) => (values[at] ?? 0) / type.weight);
    order.sort((a, b) => (density[b] ?? 0) - (density[a] ?? 0) || a - b);
    const items = order.length;
    const weight = new Float64Array(items + 1);
    const value = new Float64Array(items + 1);
    const most = new Float64Array(items + 1);
    const rate = new Float64Array(items + 2);
    // below the lightest piece still to come nothing more fits
    const lightest = new Float64Array(items + 1).fill(Infinity);
    for (let at = items - 1; at >= 0; at--) {
        const type = order[at] ?? 0;
        weight[at] = types[type]?.weight ?? 1;
        value[at] = values[type] ?? 0;
        most[at] = available[type] ?? 0;
        rate[at] = density[type] ?? 0;
        lightest[at] = Math.min(lightest[at + 1] ?? Infinity, weight[at] ?? Infinity);
    }
    const taken = new Float64Array(items);
    const bestTaken = new Float64Array(items);
    let best = 0;
    let steps = 0;
    let limit = 0;
    const search = (at: number, rest: number, worth: number): void => {
        if (worth > best) {
            best = worth;
            bestTaken.set(taken);
        }
        if (rest < (lightest[at] ?? 0) || ++steps > limit) return;
        const own = weight[at] ?? 1;
        const gain = value[at] ?? 0;
        const next = rate[at + 1] ?? 0;
        for (let count = Math.min(most[at] ?? 0, Math.floor(rest / own)); count >= 0; count--) {
            const left = rest - count * own;
            // fewer of this piece only makes room for pieces worth less, so the first hopeless count ends the loop
            if (worth + count * gain + left * next <= best) break;
            taken[at] = count;
            search(at + 1, left, worth + count * gain);
            if (steps > limit) break;
        }
        taken[at] = 0;
    };
    return (capacity, maxSteps, beat) => {
        best = beat?.value ?? 0;
        steps = 0;
        limit = maxSteps;
        bestTaken.fill(0);
        search(0, capacity, 0);
        const isBest = steps <= maxSteps;
        if (beat && best === beat.value) return { ...beat, isBest };
        const counts = new Array<number>(types.length).fill(0);
        order.forEach((type, at) => { counts[type] = bestTaken[at] ?? 0; });
        return { value: best, counts, isBest };
    };
}

/** One quick fill for each board class, each starting from the one before, as the classes grow. */
export function fillsOfClasses(problem: CuttingProblem, values: readonly number[], maxSteps: number): Fill[] {
    const quick = quickFills(problem, values, problem.types.map(type => type.perPattern));
    const fills: Fill[] = [];
    for (const board of problem.classes) fills.push(quick(board.capacity, maxSteps, fills.at(-1)));
    return fills;
}
