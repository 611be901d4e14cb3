/** Properties a design value is given for. */
export type Property = 'bending' | 'shear' | 'compression_perpendicular' | 'compression_parallel' | 'elasticity';

/** How long a load lasts in sum, as the load duration factor counts it. */
export type LoadDuration = 'permanent' | 'ten_years' | 'two_months' | 'seven_days' | 'ten_minutes' | 'impact';

/** How design values change with the size of a piece: as NDS Supplement Table 4A says, by the depth as ASTM D245 says, or not at all. */
export type SizeRule = 'table_4a' | 'depth' | 'none';

const durations: Readonly<Record<LoadDuration, number>> = { permanent: 0.9, ten_years: 1, two_months: 1.15, seven_days: 1.25, ten_minutes: 1.6, impact: 2 };
/** Load duration factor CD. NDS Table 2.3.2. It does not touch stiffness or compression perpendicular to grain. */
export const loadDuration = (duration: LoadDuration, property: Property): number =>
    property === 'elasticity' || property === 'compression_perpendicular' ? 1 : durations[duration];

/** Where the published temperature factors end: 150 °F. NDS Table 2.3.3. */
export const hottestPublishedC = (150 - 32) * 5 / 9;
const warmC = (100 - 32) * 5 / 9;
const hotC = (125 - 32) * 5 / 9;

/**
 * Temperature factor Ct of dry wood. Up to 150 °F it is the published one (NDS Table 2.3.3). Beyond, where nothing is published for design, it follows the
 * trend of clear wood, a straight line from 20 °C: 20 % of strength and 7 % of stiffness less at 50 °C (Wood Handbook, Table 5-15, bending at 11 to 15 %
 * moisture and modulus of elasticity at 12 %, from memory). At 150 °F the line gives 0.70 and 0.89, which the published factors, 0.7 and 0.9, agree with; that it
 * holds for every strength of wood at 4 to 6 % moisture is ENGINEERING JUDGEMENT, to be said wherever the figure is shown.
 */
export function temperatureFactor(celsius: number, property: Property): number {
    const isStiffness = property === 'elasticity';
    if (celsius <= warmC) return 1;
    if (celsius <= hottestPublishedC) return isStiffness ? 0.9 : celsius <= hotC ? 0.8 : 0.7;
    return isStiffness ? Math.min(0.9, temperatureTrend(celsius, property)) : Math.min(0.7, temperatureTrend(celsius, property));
}

/** The trend of clear wood with temperature, as a share of what it is at 20 °C. Wood Handbook, Table 5-15, from memory. */
export const temperatureTrend = (celsius: number, property: Property): number => 1 - (property === 'elasticity' ? 0.07 : 0.2) * (celsius - 20) / 30;

/** Wet service factors CM of dimension lumber. NDS Supplement Table 4A, from memory; the exceptions that raise a factor to 1 are left out, which is on the safe side. */
const wet: Readonly<Record<Property, number>> = { bending: 0.85, shear: 0.97, compression_perpendicular: 0.67, compression_parallel: 0.8, elasticity: 0.9 };
export const wetService = (isWet: boolean, property: Property): number => isWet ? wet[property] : 1;

/** Steps of Table 4A by width: size factor in bending (No. 2 and better), in compression, and flat use factor of 2 in lumber. Supplement, from memory. */
const byWidth: readonly { readonly upTo: number; readonly bending: number; readonly compression: number; readonly flat: number }[] = [
    { upTo: 3, bending: 1.5, compression: 1.15, flat: 1 }, { upTo: 4, bending: 1.5, compression: 1.15, flat: 1.1 }, { upTo: 5, bending: 1.4, compression: 1.1, flat: 1.1 },
    { upTo: 6, bending: 1.3, compression: 1.1, flat: 1.15 }, { upTo: 8, bending: 1.2, compression: 1.05, flat: 1.15 }, { upTo: 10, bending: 1.1, compression: 1, flat: 1.2 },
    { upTo: Infinity, bending: 1, compression: 1, flat: 1.2 },
];

/** The piece as it stands under its load, inches. */
export interface PieceInBending { readonly breadth: number; readonly depth: number }

/**
 * What the size of a piece makes of its bending value: CF, and Cfu where it lies flat. Table 4A is for lumber 2 in thick and more; thinner boards are given
 * no raise. By ASTM D245 it is (2/d)^(1/9) of the depth, never above 1 here.
 */
export function sizeInBending(rule: SizeRule, { breadth, depth }: PieceInBending): number {
    switch (rule) {
        case 'none': return 1;
        case 'depth': return Math.min(1, (2 / depth) ** (1 / 9));
        case 'table_4a': {
            if (Math.min(breadth, depth) < 1.5) return 1;
            const step = stepOf(Math.max(breadth, depth));
            return step.bending * (breadth > depth ? step.flat : 1);
        }
    }
}
/** CF of compression parallel to grain. @param width the wide face, inches */
export const sizeInCompression = (rule: SizeRule, thickness: number, width: number): number => rule === 'table_4a' && thickness >= 1.5 ? stepOf(width).compression : 1;

/** A nominal size is at most half an inch (three quarters from 8 in on) more than what it is dressed to. */
const stepOf = (width: number): (typeof byWidth)[number] => byWidth.find(({ upTo }) => width <= upTo) ?? { upTo: Infinity, bending: 1, compression: 1, flat: 1.2 };

/** Repetitive member factor CR for bending: three or more at most 24 in apart under what spreads the load. NDS 4.3.9. */
export const repetitiveMember = (count: number, spacing: number): number => count >= 3 && spacing <= 24 + 1e-9 ? 1.15 : 1;

/** Bearing area factor Cb = (lb + 0.375)/lb, for bearings shorter than 6 in and 3 in or more from the end of the piece. NDS 3.10.4. */
export const bearingArea = (length: number, fromEnd: number): number => length < 6 && fromEnd >= 3 ? (length + 0.375) / length : 1;

/** Modulus for stability from the modulus of elasticity, Emin = E (1 − 1.645 COV) 1.03 / 1.66. NDS Appendix D, COV 0.25 of visually graded lumber. */
export const stabilityModulus = (elasticityPsi: number): number => elasticityPsi * (1 - 1.645 * 0.25) * 1.03 / 1.66;
