/** A column of a linear program: its cost and its entries, as rows and values side by side. */
export interface Column {
    readonly cost: number;
    readonly rows: readonly number[];
    readonly values: readonly number[];
}

const SMALLEST_PIVOT = 1e-9;
/** Rank-one updates collect rounding errors; the inverse is made afresh after so many. */
const UPDATES_BEFORE_REFRESH = 60;

/**
 * Primal simplex with a dense inverse of the basis, for min c·x, Ax = b, x >= 0, when columns are found while it runs.
 * Rows are few (one for each different length), so dense is the simplest that is quick enough.
 */
export class Simplex<C extends Column> {
    private readonly inverse: Float64Array;
    private readonly x: Float64Array;
    private readonly price: Float64Array;
    private updates = 0;

    /** @param basis a feasible start: one column per row, of which the inverse must give x >= 0 */
    constructor(private readonly rightSide: readonly number[], readonly basis: C[]) {
        const rows = rightSide.length;
        this.inverse = new Float64Array(rows * rows);
        this.x = new Float64Array(rows);
        this.price = new Float64Array(rows);
        this.refresh();
    }

    /** True when the start is one the method may use: no basic column below zero, and a basis that could be inverted. */
    isFeasible(): boolean {
        return this.x.every(value => value >= -1e-7);
    }

    /** Value of the basic column in each place of the basis. */
    values(): number[] {
        return Array.from(this.x, value => Math.max(0, value));
    }

    /** The price of one unit of each row's right side. */
    prices(): number[] {
        return Array.from(this.price);
    }

    /** What a column costs beyond the prices of what it holds; below zero when it is worth bringing in. */
    reducedCost(column: C): number {
        let reduced = column.cost;
        for (let k = 0; k < column.rows.length; k++) reduced -= (this.price[column.rows[k] ?? 0] ?? 0) * (column.values[k] ?? 0);
        return reduced;
    }

    /** Brings a column into the basis; false when no pivot is large enough to trust. */
    enter(column: C): boolean {
        const rows = this.rightSide.length;
        const direction = this.solve(column);
        const reduced = this.reducedCost(column);
        let leaving = -1;
        let least = Infinity;
        for (let place = 0; place < rows; place++) {
            const step = direction[place] ?? 0;
            if (step <= SMALLEST_PIVOT) continue;
            const ratio = Math.max(0, this.x[place] ?? 0) / step;
            // among equal ratios the largest pivot keeps the inverse accurate
            if (ratio < least - 1e-12 || (ratio <= least + 1e-12 && step > (direction[leaving] ?? 0))) [least, leaving] = [Math.min(ratio, least), place];
        }
        if (leaving < 0) return false;
        this.basis[leaving] = column;
        if (++this.updates >= UPDATES_BEFORE_REFRESH) this.refresh();
        else this.update(direction, leaving, least, reduced);
        return true;
    }

    private solve(column: C): Float64Array {
        const rows = this.rightSide.length;
        const direction = new Float64Array(rows);
        for (let place = 0; place < rows; place++) {
            let total = 0;
            for (let k = 0; k < column.rows.length; k++) total += (this.inverse[place * rows + (column.rows[k] ?? 0)] ?? 0) * (column.values[k] ?? 0);
            direction[place] = total;
        }
        return direction;
    }

    private update(direction: Float64Array, leaving: number, step: number, reduced: number): void {
        const rows = this.rightSide.length;
        const pivot = direction[leaving] ?? 1;
        const pivotRow = leaving * rows;
        for (let row = 0; row < rows; row++) this.inverse[pivotRow + row] = (this.inverse[pivotRow + row] ?? 0) / pivot;
        for (let place = 0; place < rows; place++) {
            if (place === leaving) continue;
            const factor = direction[place] ?? 0;
            if (factor === 0) continue;
            const start = place * rows;
            for (let row = 0; row < rows; row++) this.inverse[start + row] = (this.inverse[start + row] ?? 0) - factor * (this.inverse[pivotRow + row] ?? 0);
            this.x[place] = (this.x[place] ?? 0) - factor * step;
        }
        this.x[leaving] = step;
        for (let row = 0; row < rows; row++) this.price[row] = (this.price[row] ?? 0) + reduced * (this.inverse[pivotRow + row] ?? 0);
    }

    /** Inverts the basis by elimination with row exchange and takes the values afresh. */
    private refresh(): void {
        const rows = this.rightSide.length;
        const work = new Float64Array(rows * rows);
        this.inverse.fill(0);
        this.basis.forEach((column, place) => {
            column.rows.forEach((row, k) => { work[row * rows + place] = column.values[k] ?? 0; });
            this.inverse[place * rows + place] = 1;
        });
        for (let pivot = 0; pivot < rows; pivot++) eliminate(work, this.inverse, rows, pivot);
        for (let place = 0; place < rows; place++) {
            let total = 0;
            for (let row = 0; row < rows; row++) total += (this.inverse[place * rows + row] ?? 0) * (this.rightSide[row] ?? 0);
            this.x[place] = total;
        }
        this.price.fill(0);
        this.basis.forEach(({ cost }, place) => {
            if (cost === 0) return;
            for (let row = 0; row < rows; row++) this.price[row] = (this.price[row] ?? 0) + cost * (this.inverse[place * rows + row] ?? 0);
        });
        this.updates = 0;
    }
}

function eliminate(work: Float64Array, inverse: Float64Array, rows: number, pivot: number): void {
    let chosen = pivot;
    for (let row = pivot + 1; row < rows; row++) {
        if (Math.abs(work[row * rows + pivot] ?? 0) > Math.abs(work[chosen * rows + pivot] ?? 0)) chosen = row;
    }
    const size = work[chosen * rows + pivot] ?? 0;
    if (Math.abs(size) < 1e-12) throw new Error(`The basis of the linear program is singular in column ${pivot} of ${rows}`);
    for (const matrix of [work, inverse]) {
        for (let at = 0; at < rows; at++) {
            const held = matrix[pivot * rows + at] ?? 0;
            matrix[pivot * rows + at] = (matrix[chosen * rows + at] ?? 0) / size;
            if (chosen !== pivot) matrix[chosen * rows + at] = held;
        }
    }
    // slack columns leave most entries zero, so only what the pivot row holds is worth subtracting
    const inWork: number[] = [];
    const inInverse: number[] = [];
    for (let at = 0; at < rows; at++) {
        if (at >= pivot && work[pivot * rows + at] !== 0) inWork.push(at);
        if (inverse[pivot * rows + at] !== 0) inInverse.push(at);
    }
    for (let row = 0; row < rows; row++) {
        const factor = row === pivot ? 0 : work[row * rows + pivot] ?? 0;
        if (factor === 0) continue;
        for (const at of inWork) work[row * rows + at] = (work[row * rows + at] ?? 0) - factor * (work[pivot * rows + at] ?? 0);
        for (const at of inInverse) inverse[row * rows + at] = (inverse[row * rows + at] ?? 0) - factor * (inverse[pivot * rows + at] ?? 0);
    }
}
