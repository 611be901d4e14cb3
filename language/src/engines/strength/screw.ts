/** A dowel-type fastener in single shear between two members, side grain to side grain. Inches and psi. */
export interface DowelJoint {
    /** Diameter the joint is calculated with: of a nail its own, of a wood screw the root of its thread. */
    readonly diameter: number;
    /** Bending yield strength, Fyb. */
    readonly yieldPsi: number;
    /** Bearing length in the side member and in the main member. */
    readonly side: number;
    readonly main: number;
    readonly sideBearingPsi: number;
    readonly mainBearingPsi: number;
    /** Between the two members: a lining, an air gap; nothing counts on it to carry. */
    readonly gap: number;
}

/** Dowel bearing strength of fasteners thinner than 1/4 in, Fe = 16600 G^1.84 psi, to the nearest 50 psi as the table prints it. NDS 12.3.3. */
export const dowelBearing = (specificGravity: number): number => Math.round(16_600 * specificGravity ** 1.84 / 50) * 50;

/** Bending yield strength of nails and wood screws by diameter, psi. NDS Appendix I, from memory. */
export function dowelYield(diameter: number): number {
    return diameter <= 0.142 ? 100_000 : diameter <= 0.177 ? 90_000 : diameter <= 0.236 ? 80_000 : diameter <= 0.273 ? 70_000 : 60_000;
}

/** Reduction term Rd of a fastener thinner than 1/4 in. NDS Table 12.3.1B. */
export const dowelReduction = (diameter: number): number => diameter <= 0.17 ? 2.2 : 10 * diameter + 0.5;

/** Yield modes of single shear, as the NDS names them. */
export const yieldModes = ['Im', 'Is', 'II', 'IIIm', 'IIIs', 'IV'] as const;
export type YieldMode = (typeof yieldModes)[number];

/**
 * Reference lateral design value of one dowel in single shear, lbf, and the mode that governs: the least of the six yield modes over the reduction term.
 * Sources: NDS 12.3.1; AWC Technical Report 12 for joints with a gap, which the equations of the NDS are without one.
 */
export function lateralValue({ diameter, yieldPsi, side, main, sideBearingPsi, mainBearingPsi, gap }: DowelJoint): { readonly poundsForce: number; readonly mode: YieldMode } {
    const qs = sideBearingPsi * diameter;
    const qm = mainBearingPsi * diameter;
    const bending = yieldPsi * diameter ** 3 / 6;
    const root = (a: number, b: number, c: number): number => (-b + Math.sqrt(b ** 2 + 4 * a * c)) / (2 * a);
    const loads: Readonly<Record<YieldMode, number>> = {
        Im: qm * main,
        Is: qs * side,
        II: root(1 / (4 * qs) + 1 / (4 * qm), side / 2 + gap + main / 2, qs * side ** 2 / 4 + qm * main ** 2 / 4),
        IIIm: root(1 / (2 * qs) + 1 / (4 * qm), gap + main / 2, bending + qm * main ** 2 / 4),
        IIIs: root(1 / (4 * qs) + 1 / (2 * qm), side / 2 + gap, qs * side ** 2 / 4 + bending),
        IV: root(1 / (2 * qs) + 1 / (2 * qm), gap, 2 * bending),
    };
    const mode = yieldModes.reduce((least, other) => loads[other] < loads[least] ? other : least);
    return { poundsForce: loads[mode] / dowelReduction(diameter), mode };
}

/** Reference withdrawal value of a wood screw from side grain, W = 2850 G² D lbf for each inch of thread. NDS Eq. 12.2-2. @param diameter of the shank, in */
export const withdrawalValue = (specificGravity: number, diameter: number): number => 2850 * specificGravity ** 2 * diameter;

/**
 * Capacity against a load at an angle to the surface of the wood, lbf: Z'α = W'p Z'/(W'p cos²α + Z' sin²α). NDS Eq. 12.4-1.
 * @param withdrawal W'p, over the whole penetration; @param lateral Z'; @param angle between the surface and the load, radians
 */
export const combinedValue = (withdrawal: number, lateral: number, angle: number): number =>
    withdrawal * lateral / (withdrawal * Math.cos(angle) ** 2 + lateral * Math.sin(angle) ** 2);

/** Root diameters of wood screws by gauge, in. NDS Appendix L, Table L3, from memory. */
const roots: Readonly<Record<number, number>> = { 6: 0.113, 7: 0.122, 8: 0.131, 9: 0.142, 10: 0.152, 12: 0.171, 14: 0.196, 16: 0.209, 18: 0.232, 20: 0.255, 24: 0.298 };
/** Root diameter of a wood screw of that gauge, in; `undefined` for a gauge the table lacks. */
export const rootDiameter = (gauge: number): number | undefined => Object.hasOwn(roots, gauge) ? roots[gauge] : undefined;
/** Shank diameter of a wood screw of that gauge, in: 0.060 in and 0.013 in for each number. ASME B18.6.1. */
export const shankDiameter = (gauge: number): number => 0.06 + 0.013 * gauge;
