import type { CircuitProblem, RunSegment, Step } from './circuit.js';
import { awgSizes, type Awg } from './conductor.js';
import { isAtMost } from './current.js';
import { figureStep } from './steps.js';
import { ambientCorrection, ampacityAt30C, correctionCitation, largestDeviceFor, type Column } from './us-tables.js';
import { showNumber } from '../../core/show.js';

/** What bears on every conductor of the circuit. */
export interface UsConditions {
    /** Rating of the terminals and, if lower, of the insulation, °C. */
    readonly terminalColumn: Column;
    readonly insulationColumn: Column;
    /** The lowest correction along the run. */
    readonly correction: number;
}

/**
 * Ampacity a conductor may be used at: the insulation's column with the correction, held down by the terminals' column, which is not corrected.
 * Source: NEC 2023, 110.14(C) and 310.15(B).
 */
export const usableAmpacity = (size: Awg, { terminalColumn, insulationColumn, correction }: UsConditions): number =>
    Math.min(ampacityAt30C(size, terminalColumn), ampacityAt30C(size, insulationColumn) * correction);

/** Whether the conductor carries the load: 125 % of it before correction, the load itself after it. Source: NEC 2023, 210.19(A)(1). */
export const carries = (size: Awg, currentA: number, designCurrentA: number, conditions: UsConditions): boolean =>
    isAtMost(designCurrentA, ampacityAt30C(size, conditions.terminalColumn)) && isAtMost(currentA, usableAmpacity(size, conditions));

/** Thinnest conductor that carries the load and is protected by the device; `undefined` above 4/0. */
export const thinnestFor = (currentA: number, designCurrentA: number, deviceA: number, conditions: UsConditions): Awg | undefined =>
    awgSizes.find(size => carries(size, currentA, designCurrentA, conditions) && deviceA <= largestDeviceFor(size, usableAmpacity(size, conditions)));

/** Thinnest conductor by its terminals alone, before the run is looked at. */
export const thinnestByTerminals = (designCurrentA: number, column: Column): Awg | undefined =>
    awgSizes.find(size => isAtMost(designCurrentA, ampacityAt30C(size, column)));

export interface RunCorrection {
    /** Lowest factor of the run; `undefined` when a temperature is missing or beyond the table. */
    readonly correction: number | undefined;
    readonly steps: readonly Step[];
    readonly lacks: readonly string[];
    readonly problems: readonly CircuitProblem[];
}

/**
 * Ambient correction of each segment. The lowest counts for the whole run; the exception for short hot stretches is not used, because it
 * needs lengths the site rarely gives.
 * @param run from the panel to the heater; none at all is reported as lacking
 */
export function correctRun(run: readonly RunSegment[], column: Column): RunCorrection {
    const steps: Step[] = [];
    const lacks: string[] = [];
    const problems: CircuitProblem[] = [];
    if (run.length === 0) lacks.push('the run from the panel to the heater, with the ambient temperature of each segment');
    let correction: number | undefined = 1;
    let lowest = Infinity;
    for (const { name, ambientC } of run) {
        if (ambientC === undefined) {
            lacks.push(`ambient temperature of ${name}`);
            correction = undefined;
            continue;
        }
        const factor = ambientCorrection(ambientC, column);
        if (factor === undefined) {
            problems.push({ kind: 'ambient-beyond-table', weight: 'problem', citation: correctionCitation, segment: name, ambientC, conductorC: column });
            correction = undefined;
            continue;
        }
        lowest = Math.min(lowest, factor);
        steps.push(figureStep({
            key: 'ambient-correction', label: `Ambient correction, ${name}`, value: factor, unit: '', formula: 'factor of the ambient band, by insulation column',
            inputs: { ambient: `${showNumber(ambientC, 1)} °C`, insulation: `${column} °C` }, citation: correctionCitation,
        }));
    }
    return { correction: run.length === 0 || correction === undefined ? undefined : lowest, steps, lacks, problems };
}
