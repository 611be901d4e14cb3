import type { Citation } from '../../core/citation.js';
import { iec552, iec554, iec60898 } from '../../rule-sets/documents.js';
import { mm2Sizes, type Mm2 } from './conductor.js';

/**
 * Reference methods of installation: insulated conductors (A1) or a cable (A2) in conduit in a thermally insulating wall, the same on a wall (B1, B2),
 * a cable clipped to a surface (C).
 */
export const installationMethods = ['A1', 'A2', 'B1', 'B2', 'C'] as const;
export type InstallationMethod = typeof installationMethods[number];
/** PVC is limited to 70 °C at the conductor, cross-linked polyethylene to 90 °C. */
export type Insulation = 'pvc' | 'xlpe';
export const insulationC = (insulation: Insulation): 70 | 90 => insulation === 'pvc' ? 70 : 90;

type Row = Readonly<Record<InstallationMethod, readonly number[]>>;
/** A by insulation and loaded conductors, in the order of `mm2Sizes`; copper, 30 °C ambient. */
const tables: Readonly<Record<Insulation, { readonly 2: Row; readonly 3: Row }>> = {
    pvc: {
        2: {
            A1: [14.5, 19.5, 26, 34, 46, 61, 80, 99, 119, 151, 182],
            A2: [14, 18.5, 25, 32, 43, 57, 75, 92, 110, 139, 167],
            B1: [17.5, 24, 32, 41, 57, 76, 101, 125, 151, 192, 232],
            B2: [16.5, 23, 30, 38, 52, 69, 90, 111, 133, 168, 201],
            C: [19.5, 27, 36, 46, 63, 85, 112, 138, 168, 213, 258],
        },
        3: {
            A1: [13.5, 18, 24, 31, 42, 56, 73, 89, 108, 136, 164],
            A2: [13, 17.5, 23, 29, 39, 52, 68, 83, 99, 125, 150],
            B1: [15.5, 21, 28, 36, 50, 68, 89, 110, 134, 171, 207],
            B2: [15, 20, 27, 34, 46, 62, 80, 99, 118, 149, 179],
            C: [17.5, 24, 32, 41, 57, 76, 96, 119, 144, 184, 223],
        },
    },
    xlpe: {
        2: {
            A1: [19, 26, 35, 45, 61, 81, 106, 131, 158, 200, 241],
            A2: [18.5, 25, 33, 42, 57, 76, 99, 121, 145, 183, 220],
            B1: [23, 31, 42, 54, 75, 100, 133, 164, 198, 253, 306],
            B2: [22, 30, 40, 51, 69, 91, 119, 146, 175, 221, 265],
            C: [24, 33, 45, 58, 80, 107, 138, 171, 209, 269, 328],
        },
        3: {
            A1: [17, 23, 31, 40, 54, 73, 95, 117, 141, 179, 216],
            A2: [16.5, 22, 30, 38, 51, 68, 89, 109, 130, 164, 197],
            B1: [20, 28, 37, 48, 66, 88, 117, 144, 175, 222, 269],
            B2: [19.5, 26, 35, 44, 60, 80, 105, 128, 154, 194, 233],
            C: [22, 30, 40, 52, 71, 96, 119, 147, 179, 229, 278],
        },
    },
};
const tableName: Readonly<Record<Insulation, { readonly 2: string; readonly 3: string }>> = {
    pvc: { 2: 'Table B.52.2', 3: 'Table B.52.4' },
    xlpe: { 2: 'Table B.52.3', 3: 'Table B.52.5' },
};

/**
 * Current-carrying capacity of a copper conductor at 30 °C ambient, A.
 * Source: IEC 60364-5-52 ed. 3.0 (2009), Tables B.52.2 to B.52.5, from memory.
 */
export const capacityAt30C = (size: Mm2, method: InstallationMethod, loaded: 2 | 3, insulation: Insulation): number => {
    const value = tables[insulation][loaded][method][mm2Sizes.indexOf(size)];
    if (value === undefined) throw new Error(`No capacity for ${size} mm2, ${method}, ${loaded} loaded, ${insulation}`);
    return value;
};
export const capacityCitation = (loaded: 2 | 3, insulation: Insulation): Citation =>
    iec552.fromMemory(tableName[insulation][loaded], `Copper, ${loaded === 2 ? 'two' : 'three'} loaded conductors, 30 °C.`);

const ambientFactors: Readonly<Record<Insulation, readonly (readonly [upToC: number, factor: number])[]>> = {
    pvc: [[10, 1.22], [15, 1.17], [20, 1.12], [25, 1.06], [30, 1.00], [35, 0.94], [40, 0.87], [45, 0.79], [50, 0.71], [55, 0.61], [60, 0.50]],
    xlpe: [
        [10, 1.15], [15, 1.12], [20, 1.08], [25, 1.04], [30, 1.00], [35, 0.96], [40, 0.91], [45, 0.87], [50, 0.82], [55, 0.76], [60, 0.71],
        [65, 0.65], [70, 0.58], [75, 0.50], [80, 0.41],
    ],
};
export const ambientFactorCitation = iec552.fromMemory('Table B.52.14', 'Factors for ambient air temperatures other than 30 °C.');
/**
 * Factor on a current-carrying capacity for the ambient air; between two printed temperatures the hotter one counts.
 * @returns `undefined` above the last printed temperature: that insulation may not be used there
 * Source: IEC 60364-5-52 ed. 3.0 (2009), Table B.52.14, from memory.
 */
export const ambientFactor = (ambientC: number, insulation: Insulation): number | undefined =>
    ambientFactors[insulation].find(([upToC]) => ambientC <= upToC)?.[1];

const preferredRatings = [6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100] as const;
export const preferredCitation = iec60898.fromMemory('5.3.2', 'Preferred rated currents of circuit-breakers.');
/** The largest of them, A. */
export const largestPreferredDevice: number = Math.max(...preferredRatings);
/** Smallest preferred rating of at least `amperes`; `undefined` above 100 A. Source: IEC 60898-1, from memory. */
export const nextPreferredDevice = (amperes: number): number | undefined => preferredRatings.find(rating => amperes <= rating + rating * 1e-9);

export const protectiveEarthCitation = iec554.fromMemory('Table 54.2', 'Least cross-section of a protective conductor of the same material as the line conductor.');
/**
 * Least protective conductor for a line conductor of the same material: as large up to 16 mm2, 16 mm2 up to 35 mm2, then half, raised to a listed size.
 * Source: IEC 60364-5-54 ed. 3.0 (2011), Table 54.2, from memory.
 */
export function protectiveEarth(line: Mm2): Mm2 {
    if (line <= 16) return line;
    if (line <= 35) return 16;
    return mm2Sizes.find(size => size >= line / 2) ?? line;
}

/** Resistivity of copper at working temperature, Ω·mm²/m: 1.25 times that at 20 °C. */
export const hotCopperOhmMm2PerM = 0.0225;
export const resistivityCitation = iec552.fromMemory('Annex G', 'Copper at working temperature: 0.0225 Ω·mm²/m; reactance left out at these sections.');
