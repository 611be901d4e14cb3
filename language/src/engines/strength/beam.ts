/**
 * A straight beam of one section on knife-edge supports, by the direct stiffness method. Any consistent units do; the product uses inches, pounds-force
 * and psi. x runs from the beam's left end; forces, loads and deflections count downward, reactions upward, a sagging moment is positive.
 */
export interface Beam {
    readonly length: number;
    /** Places of the supports, ascending, at least two of them, each within the beam. */
    readonly supports: readonly number[];
    /** Modulus of elasticity times second moment of area. */
    readonly stiffness: number;
}

/** A force spread evenly from `from` to `to`; one place for both is a point load. */
export interface BeamLoad { readonly from: number; readonly to: number; readonly total: number }

/** One stretch between neighbouring supports, or a free end. */
export interface SolvedStretch {
    readonly from: number;
    readonly length: number;
    readonly isOverhang: boolean;
    readonly loads: readonly BeamLoad[];
    /** At its left end: deflection, slope, moment and shear (upward on the piece to the right). */
    readonly deflection: number;
    readonly slope: number;
    readonly moment: number;
    readonly shear: number;
}
export interface SolvedBeam { readonly stiffness: number; readonly reactions: readonly number[]; readonly stretches: readonly SolvedStretch[] }

/** Answers for loads on one beam: its matrix is factored once and serves every arrangement of loads. */
export type BeamSolver = (loads: readonly BeamLoad[]) => SolvedBeam;

const sameplace = 1e-9;

/**
 * Prepares a beam for its loads.
 * @throws when the beam has fewer than two supports, or one outside it: such a beam is a mechanism, and a defect of the caller
 */
export function prepareBeam({ length, supports, stiffness }: Beam): BeamSolver {
    const first = supports[0] ?? 0;
    const last = supports[supports.length - 1] ?? 0;
    if (supports.length < 2 || first < -sameplace || last > length + sameplace || !(length > 0) || !(stiffness > 0)) throw new Error('A beam needs two supports within its length');
    const hasLeftEnd = first > sameplace;
    const hasRightEnd = last < length - sameplace;
    const nodes = [...hasLeftEnd ? [0] : [], ...supports, ...hasRightEnd ? [length] : []];
    const isSupport = (node: number): boolean => !(node === 0 && hasLeftEnd) && !(node === nodes.length - 1 && hasRightEnd);

    // Unknowns: the slope of every node, and the deflection of a free end. -1 stands for what a support holds.
    let count = 0;
    const numbers = nodes.map((_, node) => ({ deflection: isSupport(node) ? -1 : count++, slope: count++ }));
    const freedoms = (element: number): readonly [number, number, number, number] => {
        const [left, right] = [numbers[element], numbers[element + 1]];
        return [left?.deflection ?? -1, left?.slope ?? -1, right?.deflection ?? -1, right?.slope ?? -1];
    };
    const lengthOf = (element: number): number => (nodes[element + 1] ?? 0) - (nodes[element] ?? 0);
    const elements = nodes.slice(1).map((_, element) => element);

    const matrix: number[][] = Array.from({ length: count }, () => new Array<number>(count).fill(0));
    for (const element of elements) {
        const own = elementStiffness(lengthOf(element), stiffness);
        freedoms(element).forEach((row, i) => { if (row >= 0) freedoms(element).forEach((column, j) => { if (column >= 0) add(matrix, row, column, own[i]?.[j] ?? 0); }); });
    }
    const factor = factorize(matrix);

    return loads => {
        const forces = new Array<number>(count).fill(0);
        const perElement = elements.map(element => {
            const from = nodes[element] ?? 0;
            const held = loadsWithin(loads, from, from + lengthOf(element), element === elements.length - 1);
            return { from, length: lengthOf(element), loads: held, equivalent: nodalForces(held, from, lengthOf(element)) };
        });
        perElement.forEach(({ equivalent }, element) => freedoms(element).forEach((row, i) => { if (row >= 0) forces[row] = (forces[row] ?? 0) + (equivalent[i] ?? 0); }));
        const moved = solveFactored(factor, forces);
        const at = (freedom: number): number => freedom < 0 ? 0 : moved[freedom] ?? 0;
        const nodeForces = nodes.map(() => 0);
        const stretches = perElement.map(({ from, length: long, loads: held, equivalent }, element): SolvedStretch => {
            const displaced = freedoms(element).map(at);
            const own = elementStiffness(long, stiffness);
            const ends = own.map((row, i) => row.reduce((total, value, j) => total + value * (displaced[j] ?? 0), 0) - (equivalent[i] ?? 0));
            nodeForces[element] = (nodeForces[element] ?? 0) + (ends[0] ?? 0);
            nodeForces[element + 1] = (nodeForces[element + 1] ?? 0) + (ends[2] ?? 0);
            return {
                from, length: long, loads: held, isOverhang: !isSupport(element) || !isSupport(element + 1),
                deflection: displaced[0] ?? 0, slope: displaced[1] ?? 0, moment: ends[1] ?? 0, shear: -(ends[0] ?? 0),
            };
        });
        return { stiffness, stretches, reactions: nodeForces.filter((_, node) => isSupport(node)).map(force => -force) };
    };
}

/** Stiffness matrix of an Euler-Bernoulli beam element over deflection and slope of its two ends. Source: any text on the direct stiffness method. */
function elementStiffness(long: number, stiffness: number): readonly (readonly number[])[] {
    const k = stiffness / long ** 3;
    const a = 12 * k;
    const b = 6 * k * long;
    const c = 4 * k * long ** 2;
    const d = 2 * k * long ** 2;
    return [[a, b, -a, b], [b, c, -b, d], [-a, -b, a, -b], [b, d, -b, c]];
}

/** The parts of loads that lie on a stretch; a point load on the border of two belongs to the right one, at the very end to the last. */
function loadsWithin(loads: readonly BeamLoad[], from: number, to: number, isLast: boolean): readonly BeamLoad[] {
    return loads.flatMap((load): BeamLoad[] => {
        const wide = load.to - load.from;
        if (wide <= sameplace) return load.from >= from - sameplace && (load.from < to - sameplace || isLast) ? [{ ...load, to: load.from }] : [];
        const start = Math.max(load.from, from);
        const end = Math.min(load.to, to);
        return end > start ? [{ from: start, to: end, total: load.total * (end - start) / wide }] : [];
    });
}

/** Work-equivalent end forces and moments of the loads: integrals of the cubic shape functions, exact for points and even stretches. */
function nodalForces(loads: readonly BeamLoad[], from: number, long: number): readonly [number, number, number, number] {
    const sums: [number, number, number, number] = [0, 0, 0, 0];
    for (const load of loads) {
        const a = (load.from - from) / long;
        const b = (load.to - from) / long;
        // Mean of each power of the place over the load.
        const mean = (power: number): number => b - a < sameplace ? a ** power : (b ** (power + 1) - a ** (power + 1)) / ((power + 1) * (b - a));
        const [one, two, three] = [mean(1), mean(2), mean(3)];
        sums[0] += load.total * (1 - 3 * two + 2 * three);
        sums[1] += load.total * long * (one - 2 * two + three);
        sums[2] += load.total * (3 * two - 2 * three);
        sums[3] += load.total * long * (three - two);
    }
    return sums;
}

function add(matrix: number[][], row: number, column: number, value: number): void {
    const line = matrix[row];
    if (line) line[column] = (line[column] ?? 0) + value;
}

/** Lower triangle of the Cholesky factor of a symmetric positive definite matrix. */
export function factorize(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
    const lower: number[][] = matrix.map(() => []);
    matrix.forEach((row, i) => {
        const own = lower[i] ?? [];
        for (let j = 0; j <= i; j++) {
            const other = lower[j] ?? [];
            let rest = row[j] ?? 0;
            for (let k = 0; k < j; k++) rest -= (own[k] ?? 0) * (other[k] ?? 0);
            if (i === j && !(rest > 0)) throw new Error('A matrix of stiffness is positive definite');
            own[j] = i === j ? Math.sqrt(rest) : rest / (other[j] ?? 1);
        }
    });
    return lower;
}

/** Solves for one right-hand side with the factor of `factorize`. */
export function solveFactored(lower: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
    const answer = [...right];
    const count = lower.length;
    for (let i = 0; i < count; i++) {
        const row = lower[i] ?? [];
        let rest = answer[i] ?? 0;
        for (let k = 0; k < i; k++) rest -= (row[k] ?? 0) * (answer[k] ?? 0);
        answer[i] = rest / (row[i] ?? 1);
    }
    for (let i = count - 1; i >= 0; i--) {
        let rest = answer[i] ?? 0;
        for (let k = i + 1; k < count; k++) rest -= (lower[k]?.[i] ?? 0) * (answer[k] ?? 0);
        answer[i] = rest / (lower[i]?.[i] ?? 1);
    }
    return answer;
}
