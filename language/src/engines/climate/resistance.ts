import type { Citation } from '../../core/citation.js';
import { kelvin } from './psychrometrics.js';
import { iso6946 } from './sources.js';

/** Which way heat runs through a surface or a layer of air. */
export type HeatFlow = 'up' | 'horizontal' | 'down';

const stefanBoltzmann = 5.670374419e-8;
/** Heat passed on by still air at a surface inside, W/(m2 K). ISO 6946, annex on surface resistances. */
const convection: Readonly<Record<HeatFlow, number>> = { up: 5, horizontal: 2.5, down: 0.7 };
/** Of wood, tile and paint. ISO 6946 takes 0.9 where nothing else is known. */
const usualEmissivity = 0.9;

/** Surface resistances of the tables, m2 K/W: inside, and outside in the open at 4 m/s of wind. */
export const insideSurface: Readonly<Record<HeatFlow, number>> = { up: 0.10, horizontal: 0.13, down: 0.17 };
export const outsideSurface = 0.04;
export const surfaceCitation: Citation = iso6946('table 7', 'Conventional surface resistances.');

/**
 * Surface resistance in m2 K/W of still air at a mean temperature of surface and surroundings: a hot room radiates more than the table's 10 to 20 degC. Source: ISO 6946, annex C;
 * at 20 degC it gives the table's 0.10, 0.13 and 0.17.
 */
export const surfaceResistance = (flow: HeatFlow, meanC: number, emissivity = usualEmissivity): number =>
    1 / (convection[flow] + emissivity * 4 * stefanBoltzmann * kelvin(meanC) ** 3);

/** Air layers with ordinary surfaces: thickness in mm, resistance in m2 K/W for heat going up, sideways and down. ISO 6946, table 8. */
const airLayers: readonly (readonly [mm: number, up: number, horizontal: number, down: number])[] = [
    [0, 0, 0, 0], [5, 0.11, 0.11, 0.11], [7, 0.13, 0.13, 0.13], [10, 0.15, 0.15, 0.15], [15, 0.16, 0.17, 0.17], [25, 0.16, 0.18, 0.19], [50, 0.16, 0.18, 0.21], [100, 0.16, 0.18, 0.22], [300, 0.16, 0.18, 0.23],
];

/** Resistance in m2 K/W of an unventilated layer of air, straight between the rows of the table; the last row holds beyond it. */
export function airLayerResistance(thicknessM: number, flow: HeatFlow): number {
    const column = { up: 1, horizontal: 2, down: 3 } as const;
    const mm = Math.max(0, thicknessM * 1000);
    for (let i = 1; i < airLayers.length; i++) {
        const [low, high] = [airLayers[i - 1], airLayers[i]];
        if (!low || !high || mm > high[0]) continue;
        const share = (mm - low[0]) / (high[0] - low[0]);
        return low[column[flow]] + share * (high[column[flow]] - low[column[flow]]);
    }
    return airLayers.at(-1)?.[column[flow]] ?? 0;
}

/** A layer of one material from edge to edge, or of several side by side whose shares sum to 1. */
export interface ResistanceLayer {
    readonly name: string;
    /** Resistance in m2 K/W of each part with its share of the area. */
    readonly parts: readonly { readonly share: number; readonly resistance: number }[];
}
export const plainLayer = (name: string, resistance: number): ResistanceLayer => ({ name, parts: [{ share: 1, resistance }] });

export interface CombinedResistance {
    /** Heat goes straight through: each path alone, all side by side. */
    readonly upper: number;
    /** Heat spreads freely between layers: each layer mixed first, then all in a row. */
    readonly lower: number;
    readonly total: number;
    /** Half the distance between the limits, as a share of the total. */
    readonly greatestError: number;
    /** W/(m2 K) */
    readonly u: number;
}
export const combinedCitation: Citation = iso6946('6.7.2', 'Combined method for bridged layers: mean of the upper and the lower limit.');

/**
 * Resistance of a build-up by the combined method, m2 K/W. Layers with parts cross each other at random, so every combination of parts is a path of its own.
 * @param inside, outside surface resistances
 * Source: ISO 6946, 6.7.2. Agrees with the timber-frame wall of the Scottish technical handbook: limits 3.530 and 3.418, U 0.288.
 */
export function combinedResistance(layers: readonly ResistanceLayer[], inside: number, outside: number): CombinedResistance {
    let paths: readonly { readonly share: number; readonly resistance: number }[] = [{ share: 1, resistance: inside + outside }];
    let lower = inside + outside;
    for (const { parts } of layers) {
        paths = paths.flatMap(path => parts.map(part => ({ share: path.share * part.share, resistance: path.resistance + part.resistance })));
        lower += parallel(parts);
    }
    const upper = parallel(paths);
    const total = (upper + lower) / 2;
    return { upper, lower, total, greatestError: (upper - lower) / (2 * total), u: 1 / total };
}

/** Resistance of parts side by side. A part without resistance carries all the heat. */
export function parallel(parts: readonly { readonly share: number; readonly resistance: number }[]): number {
    if (parts.some(({ share, resistance }) => share > 0 && resistance <= 0)) return 0;
    return 1 / parts.reduce((total, { share, resistance }) => total + share / resistance, 0);
}
