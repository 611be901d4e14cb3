import type { Citation } from '../../core/citation.js';
import { nec } from '../../rule-sets/documents.js';
import { awgSizes, type Awg } from './conductor.js';

/** Temperature rating of terminals and of conductor insulation, °C. */
export type Column = 60 | 75 | 90;

type Row = readonly [c60: number, c75: number, c90: number];
/** Copper, not more than three current-carrying conductors, 30 °C ambient, A. */
const table310_16: Readonly<Record<Awg, Row>> = {
    '14': [15, 20, 25], '12': [20, 25, 30], '10': [30, 35, 40], '8': [40, 50, 55], '6': [55, 65, 75], '4': [70, 85, 95], '3': [85, 100, 115],
    '2': [95, 115, 130], '1': [110, 130, 145], '1/0': [125, 150, 170], '2/0': [145, 175, 195], '3/0': [165, 200, 225], '4/0': [195, 230, 260],
};
/** Where printings before 2011, still copied, differ; shown beside the current figure, never used. */
const olderFigures: Readonly<Record<Column, Partial<Record<Awg, number>>>> = { 60: { '14': 20, '12': 25 }, 75: {}, 90: { '3': 110, '1': 150 } };
export const ampacityCitation = nec('Table 310.16', 'Copper, not more than three current-carrying conductors, 30 °C.');

/** Ampacity of a copper conductor at 30 °C, A. Source: NEC 2023, Table 310.16. */
export function ampacityAt30C(size: Awg, column: Column): number {
    const [c60, c75, c90] = table310_16[size];
    return column === 60 ? c60 : column === 75 ? c75 : c90;
}
/** The figure older printings give where it differs from the current one. */
export const olderAmpacity = (size: Awg, column: Column): number | undefined => olderFigures[column][size];

/** Upper end of each ambient band in °C and the factor of each column; a column ends where no factor is printed. */
const table310_15B1: readonly (readonly [upToC: number, c60: number | undefined, c75: number | undefined, c90: number])[] = [
    [10, 1.29, 1.20, 1.15], [15, 1.22, 1.15, 1.12], [20, 1.15, 1.11, 1.08], [25, 1.08, 1.05, 1.04], [30, 1.00, 1.00, 1.00],
    [35, 0.91, 0.94, 0.96], [40, 0.82, 0.88, 0.91], [45, 0.71, 0.82, 0.87], [50, 0.58, 0.75, 0.82], [55, 0.41, 0.67, 0.76],
    [60, undefined, 0.58, 0.71], [65, undefined, 0.47, 0.65], [70, undefined, 0.33, 0.58], [75, undefined, undefined, 0.50],
    [80, undefined, undefined, 0.41], [85, undefined, undefined, 0.29],
];
export const correctionCitation = nec('Table 310.15(B)(1)', 'Ambient temperature correction on a base of 30 °C.');

/**
 * Ambient temperature correction of an ampacity.
 * @param ambientC highest ambient temperature of the stretch, °C; a temperature between two bands belongs to the hotter one
 * @returns the factor; `undefined` where the table prints none: that insulation may not be used there
 * Source: NEC 2023, Table 310.15(B)(1).
 */
export function ambientCorrection(ambientC: number, column: Column): number | undefined {
    const band = table310_15B1.find(([upToC]) => ambientC <= upToC);
    return band && (column === 60 ? band[1] : column === 75 ? band[2] : band[3]);
}

/** Standard ampere ratings of fuses and inverse-time breakers; the extra fuse ratings are left out. */
const standardRatings = [
    15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1600, 2000,
    2500, 3000, 4000, 5000, 6000,
] as const;
export const ratingsCitation = nec('240.6(A)', 'Standard ampere ratings of fuses and inverse-time circuit breakers.');

/** The largest of them, A. */
export const largestStandardDevice: number = Math.max(...standardRatings);
/** Smallest standard rating of at least `amperes`; `undefined` above 6000 A. Source: NEC 2023, 240.6(A). */
export const nextStandardDevice = (amperes: number): number | undefined => standardRatings.find(rating => amperes <= rating + rating * 1e-9);

const smallConductorLimits: Partial<Record<Awg, number>> = { '14': 15, '12': 20, '10': 30 };
export const smallConductorCitation = nec('240.4(D)', 'Copper of 14, 12 and 10 AWG is protected at 15, 20 and 30 A at most.');
export const nextSizeUpCitation = nec('240.4(B)', 'The next standard rating above the ampacity is allowed up to 800 A.');

/**
 * Largest overcurrent device that protects a conductor of that size and ampacity: the next standard rating up, up to 800 A, and not above the
 * limit of a small conductor.
 * Source: NEC 2023, 240.4(B) and 240.4(D).
 */
export function largestDeviceFor(size: Awg, ampacityA: number): number {
    const next = nextStandardDevice(ampacityA);
    const bySize = next !== undefined && next <= 800 ? next : ampacityA;
    return Math.min(bySize, smallConductorLimits[size] ?? Infinity);
}
export const isSmallConductor = (size: Awg): boolean => smallConductorLimits[size] !== undefined;

const table250_122: readonly (readonly [upToA: number, ground: Awg])[] = [
    [15, '14'], [20, '12'], [30, '10'], [40, '10'], [60, '10'], [100, '8'], [200, '6'], [300, '4'], [400, '3'],
];
export const groundCitation = nec('Table 250.122', 'Copper equipment grounding conductor by the rating of the overcurrent device.');
/** Copper equipment grounding conductor for a device; `undefined` above 400 A. Source: NEC 2023, Table 250.122. */
export const equipmentGround = (deviceA: number): Awg | undefined => table250_122.find(([upToA]) => deviceA <= upToA)?.[1];

const circularMils: Readonly<Record<Awg, number>> = {
    '14': 4110, '12': 6530, '10': 10380, '8': 16510, '6': 26240, '4': 41740, '3': 52620, '2': 66360, '1': 83690, '1/0': 105600, '2/0': 133100, '3/0': 167800, '4/0': 211600,
};
/**
 * Equipment ground when the circuit conductors are larger than they need be: grown with their area, never above their size.
 * @param least the smallest circuit conductor that would do
 * @param used the one that is laid
 * Source: NEC 2023, 250.122(A) and (B), from memory.
 */
export function grownGround(ground: Awg, least: Awg, used: Awg): Awg {
    const needed = circularMils[ground] * circularMils[used] / circularMils[least];
    const grown = awgSizes.find(size => circularMils[size] >= needed * (1 - 1e-9)) ?? used;
    return awgSizes.indexOf(grown) > awgSizes.indexOf(used) ? used : grown;
}
export const circularMilsOf = (size: Awg): number => circularMils[size];

export type Stranding = 'stranded' | 'solid';
const solidOhms: Partial<Record<Awg, number>> = { '14': 3.07, '12': 1.93, '10': 1.21, '8': 0.764 };
const strandedOhms: Readonly<Record<Awg, number>> = {
    '14': 3.14, '12': 1.98, '10': 1.24, '8': 0.778, '6': 0.491, '4': 0.308, '3': 0.245, '2': 0.194, '1': 0.154, '1/0': 0.122, '2/0': 0.0967, '3/0': 0.0766, '4/0': 0.0608,
};
/**
 * Direct-current resistance of uncoated copper in Ω per 1000 ft. Solid conductors are listed up to 8 AWG; above that the stranded row is used.
 * @param conductorC temperature of the conductor, °C
 * Source: NEC 2023, chapter 9, Table 8 at 75 °C and its note R2 = R1·[1 + 0.00323·(T2 − 75)]; the stranded row of 14 to 8 AWG is from memory.
 */
export function ohmsPer1000Feet(size: Awg, stranding: Stranding, conductorC: number): number {
    const at75 = stranding === 'solid' ? solidOhms[size] ?? strandedOhms[size] : strandedOhms[size];
    return at75 * (1 + 0.00323 * (conductorC - 75));
}
/** The two rows differ by about 2 % and copies mix them up, so the citation says which one was read. */
export const resistanceCitation = (size: Awg, stranding: Stranding): Citation => {
    const isSolidRow = stranding === 'solid' && solidOhms[size] !== undefined;
    const text = `Uncoated copper, ${isSolidRow ? 'solid' : 'stranded'}, direct current at 75 °C.`;
    return !isSolidRow && solidOhms[size] !== undefined ? nec.fromMemory('chapter 9, Table 8', text) : nec('chapter 9, Table 8', text);
};
