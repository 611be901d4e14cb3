/** What a column of one rectangular section can carry, psi and inches. */
export interface ColumnInput {
    /** Compression design value parallel to grain with every factor but that of stability, Fc*. */
    readonly compressionPsi: number;
    /** Adjusted modulus for stability, Emin'. */
    readonly stabilityModulusPsi: number;
    /** Greatest slenderness, effective length over the dimension it can bend along. */
    readonly slenderness: number;
}

/** c of sawn lumber. NDS 3.7.1. */
const sawnLumber = 0.8;
/** Greatest slenderness of a column in service. NDS 3.7.1.4. */
export const greatestSlenderness = 50;

/** Critical buckling stress of a rectangular column, FcE = 0.822 Emin'/(le/d)². NDS 3.7.1. */
export const bucklingStress = (stabilityModulusPsi: number, slenderness: number): number => 0.822 * stabilityModulusPsi / slenderness ** 2;

/** Column stability factor CP of sawn lumber. NDS Eq. 3.7-1 (Ylinen's column formula). */
export function columnStability({ compressionPsi, stabilityModulusPsi, slenderness }: ColumnInput): number {
    const ratio = bucklingStress(stabilityModulusPsi, slenderness) / compressionPsi;
    const half = (1 + ratio) / (2 * sawnLumber);
    return half - Math.sqrt(half ** 2 - ratio / sawnLumber);
}

/** A column whose load stands off the middle of its section. Stresses in psi, lengths in inches. */
export interface EccentricColumn {
    /** fc, the load over the section. */
    readonly stressPsi: number;
    /** Fc', with the factor of stability. */
    readonly compressionPsi: number;
    /** Fb', for bending about the axis the load stands off from. */
    readonly bendingPsi: number;
    /** FcE for buckling along the eccentricity. */
    readonly bucklingPsi: number;
    readonly eccentricity: number;
    /** Dimension of the section along the eccentricity. */
    readonly depth: number;
}

/** How much a small eccentricity grows as the column bends: (1 + 0.234 f/FcE)/(1 − f/FcE). NDS 15.4.1; it stands for the secant formula. */
export const eccentricityGrowth = (share: number): number => (1 + 0.234 * share) / (1 - share);

/** Utilisation of a column with an eccentric load and no load from the side, (fc/Fc')² + fc(6e/d)(growth)/Fb'. NDS Eq. 15.4-2. Infinite where it buckles. */
export function eccentricColumn({ stressPsi, compressionPsi, bendingPsi, bucklingPsi, eccentricity, depth }: EccentricColumn): number {
    if (stressPsi >= bucklingPsi) return Infinity;
    return (stressPsi / compressionPsi) ** 2 + stressPsi * 6 * eccentricity / depth * eccentricityGrowth(stressPsi / bucklingPsi) / bendingPsi;
}
