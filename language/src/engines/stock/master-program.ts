import { boardClass, fullCost, type CuttingProblem, type Pattern } from './problem.js';
import type { Column } from './simplex.js';

/** How many boards of each class a plan uses: whole-number limits, in the order of `problem.classes`. */
export interface BoardCounts {
    readonly least: readonly number[];
    readonly most: readonly number[];
}

export interface MasterColumn extends Column {
    /** Absent for slack and for columns that stand for a broken limit. */
    readonly pattern: Pattern | undefined;
}

/**
 * The columns of the linear program over patterns. Its rows are one per piece type (at least the demand), then one per class for its
 * most boards and one for its least. A limit on boards may be broken for a high price, so every start is feasible and the bound stays a bound.
 */
export class MasterProgram {
    readonly rows: number;
    /** Surplus pieces, unused boards, boards above the least. */
    readonly slack: readonly MasterColumn[];
    private readonly aboveMost: readonly MasterColumn[];
    private readonly belowLeast: readonly MasterColumn[];
    private readonly pool = new Map<string, MasterColumn>();
    private readonly all: MasterColumn[];
    private readonly first: readonly MasterColumn[];

    constructor(private readonly problem: CuttingProblem) {
        const types = problem.types.length;
        const classes = problem.classes.length;
        this.rows = types + 2 * classes;
        const unit = (row: number, value: number, cost: number): MasterColumn => ({ cost, rows: [row], values: [value], pattern: undefined });
        const broken = 20 * Math.max(1, ...problem.classes.map(fullCost));
        this.slack = [
            ...problem.types.map((_, type) => unit(type, -1, 0)),
            ...problem.classes.map((_, at) => unit(types + at, 1, 0)),
            ...problem.classes.map((_, at) => unit(types + classes + at, -1, 0)),
        ];
        this.aboveMost = problem.classes.map((_, at) => unit(types + at, -1, broken));
        this.belowLeast = problem.classes.map((_, at) => unit(types + classes + at, 1, broken));
        this.all = [...this.slack, ...this.aboveMost, ...this.belowLeast];
        this.first = problem.types.map((_, type) => this.add(onlyOne(problem, type)));
    }

    get patterns(): Pattern[] {
        return [...this.pool.values()].flatMap(column => column.pattern ? [column.pattern] : []);
    }

    get columns(): readonly MasterColumn[] {
        return this.all;
    }

    has(pattern: Pattern): boolean {
        return this.pool.has(keyOf(pattern));
    }

    add(pattern: Pattern): MasterColumn {
        const key = keyOf(pattern);
        const known = this.pool.get(key);
        if (known) return known;
        const { types, classes } = this.problem;
        const rows: number[] = [];
        const values: number[] = [];
        pattern.counts.forEach((count, type) => { if (count > 0) { rows.push(type); values.push(count); } });
        rows.push(types.length + pattern.classIndex, types.length + classes.length + pattern.classIndex);
        values.push(1, 1);
        const column = { cost: fullCost(boardClass(this.problem, pattern.classIndex)), rows, values, pattern };
        this.pool.set(key, column);
        this.all.push(column);
        return column;
    }

    rightSide(counts: BoardCounts): number[] {
        return [...this.problem.types.map(type => type.demand), ...counts.most, ...counts.least];
    }

    /** A feasible basis: boards of one type each, with the limits they break. */
    startBasis(counts: BoardCounts): MasterColumn[] {
        const { types, classes } = this.problem;
        const boards = classes.map(() => 0);
        this.first.forEach(({ pattern }, type) => {
            const held = pattern?.counts[type] ?? 1;
            if (pattern) boards[pattern.classIndex] = (boards[pattern.classIndex] ?? 0) + (types[type]?.demand ?? 0) / held;
        });
        const pick = (isKept: boolean, kept: MasterColumn | undefined, broken: MasterColumn | undefined): MasterColumn => {
            const column = isKept ? kept : broken;
            if (!column) throw new Error('A board class has no limit column');
            return column;
        };
        return [
            ...this.first,
            ...classes.map((_, at) => pick((boards[at] ?? 0) <= (counts.most[at] ?? 0), this.slack[types.length + at], this.aboveMost[at])),
            ...classes.map((_, at) => pick((boards[at] ?? 0) >= (counts.least[at] ?? 0), this.slack[types.length + classes.length + at], this.belowLeast[at])),
        ];
    }

    /** The basis of a wider region, made to fit a narrower one: where its slack would turn negative the limit counts as broken. */
    repaired(basis: readonly MasterColumn[], values: readonly number[], boards: readonly number[], counts: BoardCounts): MasterColumn[] {
        const { types, classes } = this.problem;
        return basis.map((column, place) => {
            if (column.pattern || (values[place] ?? 0) < 0) return column;
            const at = this.slack.indexOf(column) - types.length;
            if (at >= 0 && at < classes.length && (boards[at] ?? 0) > (counts.most[at] ?? 0)) return this.aboveMost[at] ?? column;
            const low = at - classes.length;
            if (low >= 0 && (boards[low] ?? 0) < (counts.least[low] ?? 0)) return this.belowLeast[low] ?? column;
            return column;
        });
    }
}

export const keyOf = (pattern: Pattern): string => `${pattern.classIndex}:${pattern.counts.join()}`;

/** A board of one type only, from the class where that costs least. */
function onlyOne(problem: CuttingProblem, type: number): Pattern {
    const piece = problem.types[type];
    if (!piece) throw new Error(`No piece type ${type}`);
    let best: { classIndex: number; held: number; rate: number } | undefined;
    for (const [classIndex, board] of problem.classes.entries()) {
        const held = Math.min(piece.perPattern, Math.floor(board.capacity / piece.weight));
        if (held === 0) continue;
        const rate = fullCost(board) / held;
        if (!best || rate < best.rate) best = { classIndex, held, rate };
    }
    if (!best) throw new Error(`No board takes a piece of ${piece.length} ticks`);
    const { classIndex, held } = best;
    return { classIndex, counts: problem.types.map((_, at) => at === type ? held : 0) };
}
