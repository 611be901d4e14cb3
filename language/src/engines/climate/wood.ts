import type { Citation } from '../../core/citation.js';
import { kelvin } from './psychrometrics.js';
import { woodHandbook } from './sources.js';

/** What the Wood Handbook tells of a species: specific gravity for heat, and change of size for each per cent of moisture, as shares. */
export interface Species {
    readonly name: string;
    /** Words in a stock's `species` that mean it; the longest that fits wins. */
    readonly words: readonly string[];
    /** Specific gravity as table 4-7 uses it. */
    readonly gravity: number;
    /** Change of size for each per cent of moisture from 6 to 14 %, across the growth rings and along them. */
    readonly radial: number;
    readonly tangential: number;
}

/** Tables 4-7 and 13-5 of the Wood Handbook; red alder is not in table 4-7 and has the gravity of table 5-3. */
export const woodSpecies: readonly Species[] = [
    { name: 'western redcedar', words: ['western redcedar', 'western red cedar', 'red cedar', 'redcedar', 'cedar'], gravity: 0.33, radial: 0.00111, tangential: 0.00234 },
    { name: 'northern white-cedar', words: ['northern white-cedar', 'northern white cedar', 'white cedar'], gravity: 0.31, radial: 0.00101, tangential: 0.00229 },
    { name: 'quaking aspen', words: ['quaking aspen', 'aspen'], gravity: 0.40, radial: 0.00119, tangential: 0.00234 },
    { name: 'basswood', words: ['basswood', 'linden'], gravity: 0.38, radial: 0.00230, tangential: 0.00330 },
    { name: 'red alder', words: ['red alder', 'alder'], gravity: 0.41, radial: 0.00151, tangential: 0.00256 },
    { name: 'western hemlock', words: ['western hemlock', 'hemlock'], gravity: 0.48, radial: 0.00144, tangential: 0.00274 },
    { name: 'Engelmann spruce', words: ['engelmann spruce', 'spruce'], gravity: 0.37, radial: 0.00130, tangential: 0.00248 },
    { name: 'Sitka spruce', words: ['sitka spruce'], gravity: 0.42, radial: 0.00148, tangential: 0.00263 },
    { name: 'eastern white pine', words: ['eastern white pine', 'white pine'], gravity: 0.37, radial: 0.00071, tangential: 0.00212 },
    { name: 'ponderosa pine', words: ['ponderosa pine', 'pine'], gravity: 0.42, radial: 0.00133, tangential: 0.00216 },
];

/** The species a stock's own words mean: the one with the longest words among them. @returns nothing for a wood the tables do not have */
export function speciesOf(words: string | undefined): Species | undefined {
    const text = words?.toLowerCase().replaceAll(/[_-]/g, ' ') ?? '';
    const fits = woodSpecies.flatMap(species => species.words.filter(word => text.includes(word.replaceAll('-', ' '))).map(word => ({ species, length: word.length })));
    return fits.sort((a, b) => b.length - a.length)[0]?.species;
}

export const woodHeat: Citation = woodHandbook('eq. 4-15 and 4-16', 'Thermal conductivity and heat capacity of wood by specific gravity, moisture and temperature.');
export const woodMoisture: Citation = woodHandbook('eq. 4-5', 'Equilibrium moisture content of wood by temperature and relative humidity.');
export const woodShrinkage: Citation = woodHandbook('table 13-5', 'Change of size for each per cent of moisture.');

/**
 * Thermal conductivity across the grain in W/(m K), at about 24 degC. Source: Wood Handbook, eq. 4-15; a real board may differ by 20 %.
 * @param moisture in per cent of dry mass, under 25
 */
export const woodConductivity = (gravity: number, moisture: number): number => gravity * (0.1941 + 0.004064 * moisture) + 0.01864;

/**
 * Specific heat in J/(kg K) of wood with its water. Source: Wood Handbook, eq. 4-16 and 4-17, for 7 to 97 degC and moisture below fibre saturation; outside that stretch of
 * temperatures the nearer end is used.
 * @param moisture in per cent of dry mass
 */
export function woodSpecificHeat(celsius: number, moisture: number): number {
    const t = kelvin(Math.min(97, Math.max(7, celsius)));
    const dry = 0.1031 + 0.003867 * t;
    const bound = moisture * (-0.06191 + 2.36e-4 * t - 1.33e-4 * moisture);
    return 1000 * ((dry + 4.18 * moisture / 100) / (1 + moisture / 100) + bound);
}

/**
 * Equilibrium moisture content of wood, per cent of its dry mass, by the equation of two hydrates in the form for degF.
 * Source: Simpson 1973, FPL-RN-0268; Wood Handbook eq. 4-5 is the same in degC. Its authors name a half per cent of moisture as its agreement with older tables.
 * @param humidity relative, 0 to 1; above 1 counts as 1
 */
export function equilibriumMoisture(celsius: number, humidity: number): number {
    const t = celsius * 1.8 + 32;
    const h = Math.min(1, Math.max(0, humidity));
    const w = 330 + 0.452 * t + 0.00415 * t * t;
    const k = 0.791 + 4.63e-4 * t - 8.44e-7 * t * t;
    const k1 = 6.34 + 7.75e-4 * t - 9.35e-5 * t * t;
    const k2 = 1.09 + 2.84e-2 * t - 9.04e-5 * t * t;
    const kh = k * h;
    const square = k1 * k2 * kh * kh;
    return 1800 / w * (kh / (1 - kh) + (k1 * kh + 2 * square) / (1 + k1 * kh + square));
}

/** Change of a board's size, negative for shrinking, in the unit of `size`. Source: Wood Handbook, eq. 13-2; the coefficients stand for 6 to 14 % and are used a little below. */
export const dimensionalChange = (size: number, coefficient: number, fromMoisture: number, toMoisture: number): number => size * coefficient * (toMoisture - fromMoisture);
