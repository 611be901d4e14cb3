import { elementSetDeviceA, elementSetLimitA, necCitations } from '../../rule-sets/nec.js';
import type { CircuitProblem, ExistingCircuit, HeaterSupply } from './circuit.js';
import { compareConductors, showConductor, type ConductorSize } from './conductor.js';
import { isAtMost } from './current.js';
import { manualCitation } from './steps.js';
import { carries, usableAmpacity } from './us-conductor.js';
import { ampacityAt30C, ampacityCitation, isSmallConductor, largestDeviceFor, nextSizeUpCitation, smallConductorCitation, type Column } from './us-tables.js';

/** An existing circuit against the heater: its device, its conductor, and the one against the other. */
export function existingUsCircuit({ heater, existing, currentA, designCurrentA, terminalColumn, insulationColumn, correction, needed }: {
    readonly heater: HeaterSupply;
    readonly existing: ExistingCircuit;
    readonly currentA: number;
    readonly designCurrentA: number;
    readonly terminalColumn: Column;
    readonly insulationColumn: Column;
    /** Lowest ambient factor of the run; without it only the terminals are looked at. */
    readonly correction: number | undefined;
    readonly needed: ConductorSize | undefined;
}): { readonly problems: readonly CircuitProblem[]; readonly lacks: readonly string[] } {
    const problems: CircuitProblem[] = [];
    const lacks: string[] = [];
    const { deviceA, conductor } = existing;

    if (deviceA === undefined) lacks.push('overcurrent device of the existing circuit');
    else {
        if (!isAtMost(designCurrentA, deviceA)) problems.push({ kind: 'existing-device-too-small', weight: 'problem', citation: necCitations.continuousDevice, deviceA, neededA: designCurrentA });
        const limits: { readonly allowedA: number; readonly because: 'manual' | 'conductor' | 'elements'; readonly citation: CircuitProblem['citation'] }[] = [];
        if (heater.maximumDeviceA !== undefined) limits.push({ allowedA: heater.maximumDeviceA, because: 'manual', citation: manualCitation(heater, 'maximum overcurrent device') });
        if (isAtMost(currentA, elementSetLimitA) && (heater.elementSets ?? 1) === 1) limits.push({ allowedA: elementSetDeviceA, because: 'elements', citation: necCitations.elementSetDevice });
        if (conductor?.system === 'awg') {
            const ampacityA = correction === undefined ? ampacityAt30C(conductor.awg, terminalColumn)
                : usableAmpacity(conductor.awg, { terminalColumn, insulationColumn, correction });
            limits.push({ allowedA: largestDeviceFor(conductor.awg, ampacityA), because: 'conductor', citation: isSmallConductor(conductor.awg) ? smallConductorCitation : nextSizeUpCitation });
        }
        // The lowest limit is the one to cure; naming every higher one as well would be a cascade from one cause.
        const lowest = limits.sort((a, b) => a.allowedA - b.allowedA)[0];
        if (lowest && deviceA > lowest.allowedA) problems.push({ kind: 'existing-device-too-large', weight: 'problem', deviceA, ...lowest });
    }

    if (!conductor) lacks.push('conductor of the existing circuit');
    else if (conductor.system !== 'awg') lacks.push(`conductor of the existing circuit as a gauge; it is given as ${showConductor(conductor)}`);
    else {
        const isCarrying = correction === undefined
            ? isAtMost(designCurrentA, ampacityAt30C(conductor.awg, terminalColumn))
            : carries(conductor.awg, currentA, designCurrentA, { terminalColumn, insulationColumn, correction });
        const order = heater.minimumConductor && compareConductors(conductor, heater.minimumConductor);
        const isUnderManual = order !== undefined && order < 0;
        if (!isCarrying || isUnderManual) problems.push({
            kind: 'existing-conductor-too-small', weight: 'problem', conductor, ...(needed ? { needed } : {}),
            citation: isCarrying ? manualCitation(heater, 'minimum conductor') : ampacityCitation,
        });
    }
    return { problems, lacks };
}
