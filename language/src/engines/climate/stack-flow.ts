import type { Citation } from '../../core/citation.js';
import { kelvin } from './psychrometrics.js';
import { fluidFlow } from './sources.js';

/** m/s2 */
const gravity = 9.80665;
/** Of an opening that air passes one way. */
export const dischargeCoefficient = 0.65;
export const stackCitation: Citation = fluidFlow('25.13, eq. 37', 'Flow by the stack: discharge coefficient 0.65, heights from the neutral level.');

/** An opening between the room and the air around it. */
export interface AirOpening {
    readonly name: string;
    readonly areaM2: number;
    /** Lower and upper edge over the floor, m. */
    readonly bottomM: number;
    readonly topM: number;
}

/**
 * Flow in m3/s through an opening whose middle is `heightM` from the neutral level. Source: ASHRAE Fundamentals 1997, 25.13, eq. 37: the warmer air's temperature is below the
 * fraction. Zero where both sides are equally warm.
 */
export function stackFlow(areaM2: number, heightM: number, insideC: number, outsideC: number, coefficient = dischargeCoefficient): number {
    const warmer = kelvin(Math.max(insideC, outsideC));
    return coefficient * areaM2 * Math.sqrt(2 * gravity * Math.max(0, heightM) * Math.abs(insideC - outsideC) / warmer);
}

export interface StackAir {
    /** Flow into the room, m3/s. */
    readonly flowM3PerS: number;
    /** Over the floor; air comes in below it and leaves above it while the room is warmer. */
    readonly neutralM: number;
    /** What passes each opening, m3/s, outward positive. */
    readonly through: readonly { readonly name: string; readonly flowM3PerS: number }[];
}

/**
 * Air that the warmth of the room drives through its openings: the neutral level is where what comes in equals what leaves, each opening counted over its own height.
 * @returns nothing without openings
 */
export function stackAir(openings: readonly AirOpening[], insideC: number, outsideC: number): StackAir | undefined {
    const open = openings.filter(({ areaM2 }) => areaM2 > 0);
    if (open.length === 0) return undefined;
    const sense = Math.sign(insideC - outsideC);
    const through = (neutral: number): readonly number[] => open.map(opening => sense * signedFlow(opening, neutral, insideC, outsideC));
    const total = (neutral: number): number => sense * through(neutral).reduce((sum, flow) => sum + flow, 0);
    let low = Math.min(...open.map(({ bottomM }) => bottomM));
    let high = Math.max(...open.map(({ topM }) => topM));
    if (sense !== 0) {
        for (let i = 0; i < 60; i++) {
            const middle = (low + high) / 2;
            if (total(middle) > 0) low = middle; else high = middle;
        }
    }
    const neutralM = (low + high) / 2;
    const inward = open.reduce((sum, opening) => sum + flowBelow(opening, neutralM, insideC, outsideC), 0);
    return { flowM3PerS: inward, neutralM, through: through(neutralM).map((flowM3PerS, i) => ({ name: open[i]?.name ?? '', flowM3PerS })) };
}

/** Flow through the part of an opening above a level: eq. 37 summed up over its height. */
function flowAbove({ areaM2, bottomM, topM }: AirOpening, level: number, insideC: number, outsideC: number): number {
    const height = topM - bottomM;
    if (height <= 0) return bottomM > level ? stackFlow(areaM2, bottomM - level, insideC, outsideC) : 0;
    const [from, to] = [Math.max(0, bottomM - level), Math.max(0, topM - level)];
    return stackFlow(areaM2 / height, 1, insideC, outsideC) * 2 / 3 * (to ** 1.5 - from ** 1.5);
}
const flowBelow = (opening: AirOpening, level: number, insideC: number, outsideC: number): number =>
    flowAbove({ ...opening, bottomM: -opening.topM, topM: -opening.bottomM }, -level, insideC, outsideC);
const signedFlow = (opening: AirOpening, level: number, insideC: number, outsideC: number): number =>
    flowAbove(opening, level, insideC, outsideC) - flowBelow(opening, level, insideC, outsideC);

/** Air changes each hour. */
export const airChanges = (flowM3PerS: number, volumeM3: number): number => flowM3PerS * 3600 / volumeM3;
