import { inMetres, sum, TICKS_PER_FOOT, type Length } from '../../core/length.js';
import type { Phases, RunSegment, VoltageDrop } from './circuit.js';

/** Length of the whole run one way; `undefined` when a segment has none or there is no run. */
export function runLength(run: readonly RunSegment[]): Length | undefined {
    if (run.length === 0) return undefined;
    const lengths: Length[] = [];
    for (const { length } of run) {
        if (length === undefined) return undefined;
        lengths.push(length);
    }
    return sum(...lengths);
}

/** A single-phase current goes out and back; in a balanced three-phase circuit the drop between lines is √3 that of one line. */
export const loopFactor = (phases: Phases): number => phases === 'three' ? Math.sqrt(3) : 2;

/**
 * Voltage drop between the lines over a run from its resistance per 1000 ft.
 * @param circuit current A, phases, run one way, Ω per 1000 ft of one conductor, supply voltage between the lines V
 * Source: V = 2·I·R·L and √3·I·R·L; resistance only, which at these sizes is all but the whole impedance.
 */
export const dropOverFeet = (circuit: {
    readonly currentA: number; readonly phases: Phases; readonly run: Length; readonly ohmsPer1000Feet: number; readonly volts: number;
}): VoltageDrop => drop(circuit, circuit.ohmsPer1000Feet * (circuit.run / TICKS_PER_FOOT) / 1000);

/**
 * Voltage drop between the lines over a run from resistivity and cross-section.
 * @param circuit current A, phases, run one way, Ω·mm²/m, cross-section mm², supply voltage between the lines V
 */
export const dropOverMetres = (circuit: {
    readonly currentA: number; readonly phases: Phases; readonly run: Length; readonly ohmMm2PerM: number; readonly sectionMm2: number; readonly volts: number;
}): VoltageDrop => drop(circuit, circuit.ohmMm2PerM * inMetres(circuit.run) / circuit.sectionMm2);

function drop({ currentA, phases, run, volts }: { readonly currentA: number; readonly phases: Phases; readonly run: Length; readonly volts: number }, ohms: number): VoltageDrop {
    const lost = loopFactor(phases) * currentA * ohms;
    return { volts: lost, share: lost / volts, run };
}
