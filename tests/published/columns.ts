import { stabilityModulus } from '../../language/src/engines/strength/adjustment.js';
import { bucklingStress, columnStability, eccentricColumn, eccentricityGrowth } from '../../language/src/engines/strength/column.js';
import type { PublishedRow } from './table.js';

/** Ylinen's column: the tangent modulus falls as Et/E = (F − σ)/(F − cσ), and the column buckles where σ = FcE · Et/E. Solved by halving, without the closed formula. */
function ylinen(bucklingOverStrength: number, c: number): number {
    let [low, high] = [0, 1];
    for (let step = 0; step < 200; step++) {
        const stress = (low + high) / 2;
        if (bucklingOverStrength * (1 - stress) / (1 - c * stress) > stress) low = stress; else high = stress;
    }
    return low;
}
const stabilityAt = (ratio: number): number => columnStability({ compressionPsi: 1000, stabilityModulusPsi: ratio * 1000 * 400 / 0.822, slenderness: 20 });

const ylinenRows = [0.2, 0.5, 1, 2, 5].map((ratio): PublishedRow => ({
    source: 'Ylinen, A method of determining the buckling stress (1956)', clause: 'tangent modulus, c = 0.8', what: `share of the strength where FcE is ${ratio} of it`, fromMemory: true,
    published: ylinen(ratio, 0.8), ours: () => stabilityAt(ratio), tolerance: 1e-9, toleranceReason: 'the equation solved by halving against its closed solution', checks: 'columnStability',
}));
const secantRows = [0.1, 0.3, 0.5, 0.7, 0.9].map((share): PublishedRow => ({
    source: 'Timoshenko and Gere, Theory of Elastic Stability', clause: 'secant formula', what: `growth of the eccentricity at ${share} of the Euler load`, fromMemory: true,
    published: 1 / Math.cos(Math.PI / 2 * Math.sqrt(share)), ours: () => eccentricityGrowth(share), tolerance: (4 / Math.PI / 1.234 - 1) / Math.cos(Math.PI / 2 * Math.sqrt(share)),
    toleranceReason: '(1 + 0.234 x)/(1 − x) stands for the secant; the two draw apart to 4/π against 1.234, 3.2 %, at the Euler load', checks: 'eccentricityGrowth',
}));

export const columnRows: readonly PublishedRow[] = [
    ...ylinenRows, ...secantRows,
    {
        source: 'Euler\'s column', clause: 'π²EI/L²', what: 'stress of a 3.5 in square column 70 in long, E 1e6 psi', published: Math.PI ** 2 * 1e6 * (3.5 ** 4 / 12) / 70 ** 2 / 3.5 ** 2,
        ours: () => bucklingStress(1e6, 20), tolerance: 2, toleranceReason: '0.822 is printed for π²/12 = 0.8225, 0.06 % less', checks: 'bucklingStress',
    },
    {
        source: 'NDS 2018', clause: '3.7.1.5', what: 'a column that cannot buckle keeps its strength: CP', published: 1, ours: () => columnStability({ compressionPsi: 1000, stabilityModulusPsi: 400_000, slenderness: 0.1 }),
        tolerance: 1e-4, toleranceReason: 'reached as the slenderness goes to nothing', fromMemory: true, checks: 'columnStability',
    },
    {
        source: 'NDS 2018', clause: 'Eq. 15.4-2', what: 'a straight column, without eccentricity: (fc/Fc\')²', published: 0.25, tolerance: 1e-12, toleranceReason: 'the other term is nothing', fromMemory: true, checks: 'eccentricColumn',
        ours: () => eccentricColumn({ stressPsi: 200, compressionPsi: 400, bendingPsi: 500, bucklingPsi: 800, eccentricity: 0, depth: 3.5 }),
    },
    {
        source: 'strength of materials', clause: 'P/A + 6Pe/bd²', what: 'a short column, load a sixth of the depth off the middle: bending as great as compression', published: 0.04 + 0.2, tolerance: 0.001,
        toleranceReason: 'what it still bends at a thousandth of its buckling stress', checks: 'eccentricColumn',
        ours: () => eccentricColumn({ stressPsi: 100, compressionPsi: 500, bendingPsi: 500, bucklingPsi: 100_000, eccentricity: 3.5 / 6, depth: 3.5 }),
    },
    ...([[1_900_000, 690_000], [1_700_000, 620_000], [1_400_000, 510_000], [1_100_000, 400_000]] as const).map(([elasticity, published]): PublishedRow => ({
        source: 'NDS Supplement 2018', clause: 'Table 4A', what: `Emin of E ${elasticity} psi`, published, ours: () => stabilityModulus(elasticity), tolerance: 5000,
        toleranceReason: 'the table prints whole 10,000 psi', fromMemory: true, checks: 'stabilityModulus',
    })),
];
