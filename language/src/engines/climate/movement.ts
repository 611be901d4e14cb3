import type { Citation } from '../../core/citation.js';
import { kelvin } from './psychrometrics.js';
import { dimensionalChange, equilibriumMoisture } from './wood.js';

/** Air that wood stands in: degC, relative humidity as a share, and hours a week of it. */
export interface AirAroundWood { readonly celsius: number; readonly humidity: number }

export const diffusionCitation: Citation = { kind: 'standard', document: 'Siau, Transport Processes in Wood', edition: '1984', clause: 'bound-water diffusion', text: 'Bound water moves by exp(-(9200 - 70 M) cal/mol / RT).', fromMemory: true };

/** How fast bound water moves across the grain, relative to any other state; from Siau 1984. @param moisture per cent */
export const diffusionRate = (celsius: number, moisture: number): number => Math.exp(-(9200 - 70 * moisture) / (1.98720425 * kelvin(celsius)));

/**
 * Moisture content, per cent, that a lining keeps when it is hot for some hours of every week and rests for the others: wood takes up and gives off water as fast as the water moves
 * in it, so an hot hour counts for about ten cold ones. Between the equilibria of the two.
 */
export function weeklyMoisture(hot: AirAroundWood, rest: AirAroundWood, hotHours: number): number {
    const [mHot, mRest] = [equilibriumMoisture(hot.celsius, hot.humidity), equilibriumMoisture(rest.celsius, rest.humidity)];
    const hours = Math.min(168, Math.max(0, hotHours));
    const middle = (mHot + mRest) / 2;
    const [wHot, wRest] = [hours * diffusionRate(hot.celsius, middle), (168 - hours) * diffusionRate(rest.celsius, middle)];
    return (wHot * mHot + wRest * mRest) / (wHot + wRest);
}

/** A board in a fixed frame: metres, and the share of its width it changes for each per cent of moisture. */
export interface FixedBoard {
    readonly widthM: number;
    /** Length of its tongue; zero for a slat. */
    readonly tongueM: number;
    readonly coefficient: number;
}

export interface BoardMovement {
    /** Change of the width from the shop on, negative for shrinking, m. */
    readonly changeM: number;
    /** What stays of the tongue in the groove, m; below zero the joint stands open. */
    readonly tongueLeftM: number;
}

/** Every board keeps its middle where the frame holds it, so the whole change of one board shows at one joint. */
export function boardMovement({ widthM, tongueM, coefficient }: FixedBoard, shopMoisture: number, moisture: number): BoardMovement {
    const changeM = dimensionalChange(widthM, coefficient, shopMoisture, moisture);
    return { changeM, tongueLeftM: tongueM + changeM };
}

/** Gap between two slats fixed in their middles, m; zero when they meet. */
export const slatGapAt = (gapM: number, slat: FixedBoard, shopMoisture: number, moisture: number): number => gapM - boardMovement(slat, shopMoisture, moisture).changeM;
