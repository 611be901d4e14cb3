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

/** Nearer than this is the same place: a millionth of an inch. */
const sameplace = 1e-6;

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
    const elements = nodes.slice(1).map((to, i): Element => {
        const from = nodes[i] ?? 0;
        const [left, right] = [numbers[i], numbers[i + 1]];
        return {
            from, length: to - from, isOverhang: !isSupport(i) || !isSupport(i + 1), isLast: i === nodes.length - 2,
            freedoms: [left?.deflection ?? -1, left?.slope ?? -1, right?.deflection ?? -1, right?.slope ?? -1], own: elementStiffness(to - from, stiffness),
        };
    });
    const matrix: number[][] = Array.from({ length: count }, () => new Array<number>(count).fill(0));
    for (const { freedoms, own } of elements) {
        freedoms.forEach((row, i) => { if (row >= 0) freedoms.forEach((column, j) => { if (column >= 0) add(matrix, row, column, own[i]?.[j] ?? 0); }); });
    }
    const factor = factorize(matrix);

    return loads => {
        const forces = new Array<number>(count).fill(0);
        const loaded = elements.map(element => {
            const held = loadsWithin(loads, element);
            const equivalent = nodalForces(held, element);
            for (let i = 0; i < 4; i++) { const row = element.freedoms[i] ?? -1; if (row >= 0) forces[row] = (forces[row] ?? 0) + (equivalent[i] ?? 0); }
            return { held, equivalent };
        });
        const moved = solveFactored(factor, forces);
        const nodeForces = new Array<number>(nodes.length).fill(0);
        const stretches = elements.map((element, index): SolvedStretch => {
            const { freedoms, own } = element;
            const equivalent = loaded[index]?.equivalent ?? none;
            const at = (i: number): number => { const freedom = freedoms[i] ?? -1; return freedom < 0 ? 0 : moved[freedom] ?? 0; };
            const displaced = [at(0), at(1), at(2), at(3)];
            const force = (i: number): number => {
                let total = -(equivalent[i] ?? 0);
                for (let j = 0; j < 4; j++) total += (own[i]?.[j] ?? 0) * (displaced[j] ?? 0);
                return total;
            };
            const leftForce = force(0);
            nodeForces[index] = (nodeForces[index] ?? 0) + leftForce;
            nodeForces[index + 1] = (nodeForces[index + 1] ?? 0) + force(2);
            return {
                from: element.from, length: element.length, loads: loaded[index]?.held ?? [], isOverhang: element.isOverhang,
                deflection: displaced[0] ?? 0, slope: displaced[1] ?? 0, moment: force(1), shear: -leftForce,
            };
        });
        return { stiffness, stretches, reactions: nodeForces.filter((_, node) => isSupport(node)).map(force => -force) };
    };
}

interface Element {
    readonly from: number;
    readonly length: number;
    readonly isOverhang: boolean;
    readonly isLast: boolean;
    /** Numbers of its unknowns: deflection and slope at the left, then at the right. */
    readonly freedoms: readonly number[];
    readonly own: readonly (readonly number[])[];
}
const none: readonly number[] = [0, 0, 0, 0];

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
function loadsWithin(loads: readonly BeamLoad[], { from, length, isLast }: Element): readonly BeamLoad[] {
    const to = from + length;
    const held: BeamLoad[] = [];
    for (const load of loads) {
        const wide = load.to - load.from;
        if (wide <= sameplace) {
            if (load.from >= from - sameplace && (load.from < to - sameplace || isLast)) held.push(load);
            continue;
        }
        const start = Math.max(load.from, from);
        const end = Math.min(load.to, to);
        if (end > start) held.push({ from: start, to: end, total: load.total * (end - start) / wide });
    }
    return held;
}

/** Work-equivalent end forces and moments of the loads: integrals of the cubic shape functions, exact for points and even stretches. */
function nodalForces(loads: readonly BeamLoad[], { from, length }: Element): readonly number[] {
    if (loads.length === 0) return none;
    const sums: [number, number, number, number] = [0, 0, 0, 0];
    for (const load of loads) {
        const a = (load.from - from) / length;
        const b = (load.to - from) / length;
        // Means of the place, its square and its cube over the load.
        const one = (a + b) / 2;
        const two = (a * a + a * b + b * b) / 3;
        const three = (a + b) * (a * a + b * b) / 4;
        sums[0] += load.total * (1 - 3 * two + 2 * three);
        sums[1] += load.total * length * (one - 2 * two + three);
        sums[2] += load.total * (3 * two - 2 * three);
        sums[3] += load.total * length * (three - two);
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
