import { branchDropLimit, continuousFactor, elementSetLimitA, necCitations } from '../../rule-sets/nec.js';
import { nec } from '../../rule-sets/documents.js';
import { showLength, showNumber, spoken } from '../../core/show.js';
import { awg, compareConductors, showConductor, type Awg } from './conductor.js';
import { isAtMost, matchSupply } from './current.js';
import type { CircuitConductor, CircuitResult, ExistingCircuit, HeaterSupply, Phases, RunSegment, SiteSupply, VoltageDrop } from './circuit.js';
import { existingUsCircuit } from './us-existing.js';
import { capacityProblems, figureStep, heaterLoad, manualCitation, manualDeviceProblems, notes, showA, showPercent, showV, wordStep, type Notes } from './steps.js';
import { correctRun, thinnestByTerminals, thinnestFor, usableAmpacity, type UsConditions } from './us-conductor.js';
import {
    ampacityCitation, equipmentGround, groundCitation, grownGround, isSmallConductor, largestStandardDevice, nextSizeUpCitation, nextStandardDevice, ohmsPer1000Feet, olderAmpacity,
    ratingsCitation, resistanceCitation, smallConductorCitation, type Column, type Stranding,
} from './us-tables.js';
import { dropOverFeet, runLength } from './voltage-drop.js';

export interface UsCircuitInput {
    readonly heater: HeaterSupply;
    readonly supply: SiteSupply;
    /** From the panel to the heater. */
    readonly run: readonly RunSegment[];
    /** Marking of the terminals at both ends; unmarked terminals count as 60 °C. */
    readonly terminalsC?: 60 | 75;
    /** Rating of the conductor insulation; when it is not stated, that of the terminals. */
    readonly insulationC?: Column;
    /** Set when `insulationC` is what is usual rather than stated; the schedule then says so. */
    readonly isInsulationAssumed?: true;
    /** Which row of the resistance table; `stranded` when not stated. */
    readonly stranding?: Stranding;
    readonly existing?: ExistingCircuit;
    readonly disconnect?: 'within_sight' | 'lockable' | 'neither';
}

const notChecked = [
    'more than three current-carrying conductors together, parallel and aluminum conductors',
    'short-circuit rating, arc-fault and ground-fault protection the manual or local code may ask for',
    'service and feeder load calculation',
    'the control circuit',
] as const;
const grownGroundCitation = nec.fromMemory('250.122(B)', 'The equipment ground grows with circuit conductors larger than needed.');

/**
 * Branch circuit of an electric heater by the National Electrical Code: current, 125 %, device, conductor, equipment ground, voltage drop,
 * disconnect, subdivision. What cannot be worked out for want of an input is left out and named in `lacks`.
 * Source: NEC 2023, Articles 110, 210, 240, 250, 310 and 424, clause by clause in the steps. 6 kW at 240 V: 25 A, 31.25 A, 35 A device, 8 AWG.
 */
export function usCircuit(input: UsCircuitInput): CircuitResult {
    const { heater, supply, existing } = input;
    const load = heaterLoad(heater, supply, matchSupply(heater, supply));
    if (!load) return { family: 'us', steps: [], lacks: [`rated power, voltage and phases of the heater in the ${heater.manual}`], problems: [], notChecked };
    const out = notes(load);
    const { match, currentA } = load;

    const designCurrentA = currentA * continuousFactor;
    out.steps.push(figureStep({
        key: 'continuous-load', label: 'Continuous load', value: designCurrentA, unit: 'A', formula: '1.25 × I', inputs: { I: showA(currentA) },
        citation: necCitations.continuous,
    }));
    // A heater of the wrong phases cannot use this supply at all, so nothing more is held against it.
    const isUsable = match.fit !== 'wrong-phase';
    if (isUsable) out.problems.push(...capacityProblems(supply, designCurrentA, necCitations.continuous));

    const deviceA = chooseDevice(heater, designCurrentA, out);
    const terminalColumn = terminals(input, designCurrentA, out);
    const insulationColumn = input.insulationC ?? terminalColumn;
    const run = correctRun(input.run, insulationColumn);
    out.steps.push(...run.steps);
    out.problems.push(...run.problems);
    out.lacks.push(...run.lacks);

    const chosen = run.correction === undefined || deviceA === undefined ? undefined
        : chooseConductor({ heater, phases: match.rating.phases, currentA, designCurrentA, deviceA, terminalColumn, insulationColumn, correction: run.correction }, out);
    const ground = chosen && deviceA !== undefined ? chooseGround(deviceA, chosen.least, chosen.used, out) : undefined;
    if (existing && isUsable) {
        const needed = chosen?.conductor.size;
        const found = existingUsCircuit({ heater, existing, currentA, designCurrentA, terminalColumn, insulationColumn, correction: run.correction, needed });
        out.problems.push(...found.problems);
        out.lacks.push(...found.lacks);
    }
    const laid = existing?.conductor?.system === 'awg' ? existing.conductor.awg : chosen?.used;
    const voltageDrop = dropOf(input, { currentA, phases: match.rating.phases, volts: match.volts, conductorC: terminalColumn }, laid, out);
    checkDisconnect(input.disconnect, out);
    const conditions = run.correction === undefined ? undefined : { terminalColumn, insulationColumn, correction: run.correction };
    const elementSets = subdivide(heater, match.rating.phases, currentA, conditions, out);

    return {
        family: 'us', steps: out.steps, wattsAtSupply: match.watts, currentA, designCurrentA,
        ...(deviceA === undefined ? {} : { deviceA }),
        ...(chosen ? { conductor: chosen.conductor } : {}),
        ...(ground === undefined ? {} : { protectiveConductor: awg(ground) }),
        ...(voltageDrop ? { voltageDrop } : {}),
        ...(elementSets ? { elementSets } : {}),
        lacks: out.lacks, problems: out.problems, notChecked,
    };
}

function chooseDevice(heater: HeaterSupply, designCurrentA: number, out: Notes): number | undefined {
    const deviceA = nextStandardDevice(designCurrentA);
    if (deviceA === undefined) {
        out.problems.push({ kind: 'device-beyond-table', weight: 'problem', citation: ratingsCitation, neededA: designCurrentA, largestA: largestStandardDevice });
        return undefined;
    }
    out.steps.push(figureStep({
        key: 'device', label: 'Overcurrent device', value: deviceA, unit: 'A', formula: 'next standard rating ≥ continuous load',
        inputs: { 'continuous load': showA(designCurrentA) }, citation: ratingsCitation,
        ...(heater.maximumDeviceA === undefined ? {} : { note: `The ${heater.manual} allows ${showA(heater.maximumDeviceA)} at most.` }),
    }));
    manualDeviceProblems(heater, deviceA, out);
    return deviceA;
}

function terminals({ terminalsC, insulationC, isInsulationAssumed }: UsCircuitInput, designCurrentA: number, out: Notes): Column {
    const column = Math.min(terminalsC ?? 60, insulationC ?? 90) as Column;
    const thinnest = thinnestByTerminals(designCurrentA, column);
    out.steps.push(wordStep({
        key: 'terminal-column', label: 'Terminal column', text: `${column} °C`, formula: 'conductor ampacity before correction ≥ continuous load',
        inputs: {
            terminals: terminalsC === undefined ? 'not marked' : `marked ${terminalsC} °C`,
            'thinnest by terminals': thinnest ? showConductor(awg(thinnest)) : 'above 4/0 AWG',
        },
        citation: necCitations.terminals,
        ...(insulationC === undefined ? { note: 'The rating of the insulation is not stated; it is taken as that of the terminals.' }
            : isInsulationAssumed ? { note: `The rating of the insulation is not stated; wire of ${insulationC} °C, as it is usually bought, is taken.` } : {}),
    }));
    return column;
}

interface ConductorTask extends UsConditions {
    readonly heater: HeaterSupply;
    readonly phases: Phases;
    readonly currentA: number;
    readonly designCurrentA: number;
    readonly deviceA: number;
}

function chooseConductor(task: ConductorTask, out: Notes): { readonly least: Awg; readonly used: Awg; readonly conductor: CircuitConductor } | undefined {
    const { heater, deviceA, designCurrentA, currentA, terminalColumn, correction } = task;
    const least = thinnestFor(currentA, designCurrentA, deviceA, task);
    if (least === undefined) {
        out.problems.push({ kind: 'conductor-beyond-table', weight: 'problem', citation: ampacityCitation, neededA: designCurrentA });
        return undefined;
    }
    const used = byManual(heater, least, out.lacks);
    const isSetByManual = used !== least;
    const ampacityA = usableAmpacity(used, task);
    const loaded = task.phases === 'three' ? 3 : 2;
    const older = olderAmpacity(used, terminalColumn);
    out.steps.push(wordStep({
        key: 'conductor', label: 'Circuit conductors', text: `${loaded} × ${used} AWG copper`,
        formula: 'min(terminal column, insulation column × lowest factor); device within 240.4(B) and 240.4(D)',
        inputs: {
            'usable ampacity': showA(ampacityA), 'continuous load': showA(designCurrentA), device: showA(deviceA), factor: showNumber(correction),
            'thinnest that would do': showConductor(awg(least)),
        },
        citation: isSetByManual ? manualCitation(heater, 'minimum conductor')
            : isSmallConductor(used) ? smallConductorCitation : deviceA > ampacityA ? nextSizeUpCitation : ampacityCitation,
        ...(older === undefined ? {} : { note: `Printings before 2011, still copied, give ${showA(older)} for this size at 60 °C; the current figure is used.` }),
    }));
    return { least, used, conductor: { size: awg(used), loaded, ampacityA, isSetByManual } };
}

function byManual({ minimumConductor, manual }: HeaterSupply, least: Awg, lacks: string[]): Awg {
    if (!minimumConductor) return least;
    const order = compareConductors(minimumConductor, awg(least));
    if (order === undefined) lacks.push(`minimum conductor of the ${manual} as a gauge; it gives ${showConductor(minimumConductor)}`);
    return order !== undefined && order > 0 && minimumConductor.system === 'awg' ? minimumConductor.awg : least;
}

function chooseGround(deviceA: number, least: Awg, used: Awg, out: Notes): Awg | undefined {
    const tabled = equipmentGround(deviceA);
    if (tabled === undefined) {
        out.lacks.push('equipment ground above 400 A');
        return undefined;
    }
    const ground = grownGround(tabled, least, used);
    out.steps.push(wordStep({
        key: 'equipment-ground', label: 'Equipment ground', text: `${ground} AWG copper`, formula: 'by device; grown with conductors larger than needed; never above them',
        inputs: { device: showA(deviceA), 'by the table': showConductor(awg(tabled)) }, citation: ground === tabled ? groundCitation : grownGroundCitation,
    }));
    return ground;
}

function dropOf(
    { run, stranding = 'stranded' }: UsCircuitInput,
    { currentA, phases, volts, conductorC }: { readonly currentA: number; readonly phases: Phases; readonly volts: number; readonly conductorC: Column },
    laid: Awg | undefined, out: Notes,
): VoltageDrop | undefined {
    const length = runLength(run);
    if (length === undefined) out.lacks.push('length of the run, for the voltage drop');
    if (length === undefined || laid === undefined) return undefined;
    const ohms = ohmsPer1000Feet(laid, stranding, conductorC);
    const voltageDrop = dropOverFeet({ currentA, phases, run: length, ohmsPer1000Feet: ohms, volts });
    out.steps.push(figureStep({
        key: 'voltage-drop', label: 'Voltage drop', value: voltageDrop.share * 100, unit: '%', formula: phases === 'three' ? '√3 × I × R × L / V' : '2 × I × R × L / V',
        inputs: {
            I: showA(currentA), R: `${showNumber(ohms, 4)} Ω/1000 ft at ${conductorC} °C (${stranding})`, L: showLength(length, 'ft_in', 'drawing'), V: showV(volts),
            drop: showV(voltageDrop.volts), conductor: showConductor(awg(laid)),
        },
        citation: resistanceCitation(laid, stranding), note: `${showPercent(branchDropLimit)} on a branch circuit is advice, not a demand.`,
    }));
    if (!isAtMost(voltageDrop.share, branchDropLimit)) out.problems.push({
        kind: 'voltage-drop-high', weight: 'info', citation: necCitations.branchDrop, share: voltageDrop.share, limit: branchDropLimit,
    });
    return voltageDrop;
}

function checkDisconnect(disconnect: UsCircuitInput['disconnect'], out: Notes): void {
    if (disconnect === undefined) out.lacks.push('where the disconnecting means is');
    if (disconnect === 'neither') out.problems.push({ kind: 'disconnect-not-in-sight', weight: 'problem', citation: necCitations.disconnect });
    out.steps.push(wordStep({
        key: 'disconnect', label: 'Disconnecting means', text: disconnect === 'lockable' ? 'can be locked open' : disconnect === 'within_sight' ? 'within sight of the heater' : 'within sight of the heater, or lockable open',
        formula: 'within sight, or lockable in the open position', inputs: { stated: disconnect === undefined ? 'not stated' : spoken(disconnect) }, citation: necCitations.disconnect,
    }));
}

function subdivide(heater: HeaterSupply, phases: Phases, currentA: number, conditions: UsConditions | undefined, out: Notes): CircuitResult['elementSets'] {
    if (isAtMost(currentA, elementSetLimitA)) return undefined;
    const sets = heater.elementSets;
    if (sets === undefined || sets < 1) {
        out.lacks.push(`in how many sets the elements are divided in the ${heater.manual}; ${showA(currentA)} is above ${showA(elementSetLimitA)}`);
        return undefined;
    }
    const setA = currentA / sets;
    const deviceA = nextStandardDevice(setA * continuousFactor);
    out.steps.push(figureStep({
        key: 'element-sets', label: 'Load of each element set', value: setA, unit: 'A', formula: 'I / sets',
        inputs: { I: showA(currentA), sets: String(sets), 'device of each set': deviceA === undefined ? 'none' : showA(deviceA) }, citation: necCitations.elementSet,
    }));
    const size = conditions && deviceA !== undefined ? thinnestFor(setA, setA * continuousFactor, deviceA, conditions) : undefined;
    const used = size && byManual(heater, size, []);
    const ground = used && deviceA !== undefined ? equipmentGround(deviceA) : undefined;
    if (conditions && size && used && ground && deviceA !== undefined) out.steps.push(wordStep({
        key: 'element-set-conductor', label: 'Conductors of each element set', text: `${phases === 'three' ? 3 : 2} × ${used} AWG copper, ground ${grownGround(ground, size, used)} AWG`,
        formula: 'as for the circuit, with the load of one set',
        inputs: { 'load of a set': showA(setA), device: showA(deviceA), 'usable ampacity': showA(usableAmpacity(used, conditions)) }, citation: ampacityCitation,
    }));
    if (!isAtMost(setA, elementSetLimitA)) out.problems.push({
        kind: 'not-subdivided', weight: 'problem', citation: necCitations.elementSet, currentA, sets, setA, limitA: elementSetLimitA,
    });
    return { sets, setA, ...(deviceA === undefined ? {} : { deviceA }) };
}
