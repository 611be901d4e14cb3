import { heaterStandardLimits, iecCitations, iecDropLimit, residualCurrentA } from '../../rule-sets/iec-figures.js';
import { iec552 } from '../../rule-sets/documents.js';
import { showLength, showNumber, spoken } from '../../core/show.js';
import { compareConductors, mm2, mm2Sizes, showConductor, type Mm2 } from './conductor.js';
import { isAtMost, matchSupply, type SupplyMatch } from './current.js';
import type { CircuitConductor, CircuitProblem, CircuitResult, ExistingCircuit, HeaterSupply, RunSegment, SiteSupply, VoltageDrop } from './circuit.js';
import {
    ambientFactor, ambientFactorCitation, capacityAt30C, capacityCitation, hotCopperOhmMm2PerM, insulationC, largestPreferredDevice, nextPreferredDevice, preferredCitation, protectiveEarth,
    protectiveEarthCitation, resistivityCitation, type InstallationMethod, type Insulation,
} from './iec-tables.js';
import { capacityProblems, figureStep, heaterLoad, manualCitation, manualDeviceProblems, notes, showA, showPercent, showV, wordStep, type Notes } from './steps.js';
import { dropOverMetres, runLength } from './voltage-drop.js';

export interface IecRunSegment extends RunSegment {
    /** Reference method of installation; a segment without one leaves the conductor open. */
    readonly method?: InstallationMethod;
}
export interface IecCircuitInput {
    readonly heater: HeaterSupply;
    readonly supply: SiteSupply;
    /** From the distribution board to the heater. */
    readonly run: readonly IecRunSegment[];
    /** PVC, the weaker of the two, when it is not stated. */
    readonly insulation?: Insulation;
    readonly existing?: ExistingCircuit;
}

const notChecked = [
    'grouping with other circuits, harmonics, aluminium conductors',
    'fault-loop impedance, breaking capacity, discrimination',
    'supply and board load calculation',
    'the control circuit',
] as const;
const coordinationCitation = iec552.fromMemory('523 with IEC 60364-4-43, 433.1', 'Design current ≤ rating of the device ≤ capacity of the conductor.');

/**
 * Final circuit of an electric heater by IEC 60364: design current, device, conductor by installation method and ambient, protective earth,
 * residual current device, voltage drop. What cannot be worked out for want of an input is left out and named in `lacks`.
 * Source: IEC 60364-5-52, 60364-5-54 and 60364-7-703, table by table in the steps. 9 kW at 400 V three-phase: 12.99 A, 13 A device.
 */
export function iecCircuit(input: IecCircuitInput): CircuitResult {
    const { heater, supply, existing, insulation = 'pvc' } = input;
    const load = heaterLoad(heater, supply, matchSupply(heater, supply));
    if (!load) return { family: 'iec', steps: [], lacks: [`rated power, voltage and phases of the heater in the ${heater.manual}`], problems: [], notChecked };
    const out = notes(load);
    const { match, currentA } = load;
    // A heater of the wrong phases cannot use this supply at all, so nothing more is held against it.
    const isUsable = match.fit !== 'wrong-phase';
    out.problems.push(...standardProblems(match), ...(isUsable ? capacityProblems(supply, currentA, coordinationCitation) : []));

    const deviceA = nextPreferredDevice(currentA);
    if (deviceA === undefined) out.problems.push({ kind: 'device-beyond-table', weight: 'problem', citation: preferredCitation, neededA: currentA, largestA: largestPreferredDevice });
    else {
        out.steps.push(figureStep({
            key: 'device', label: 'Overcurrent device', value: deviceA, unit: 'A', formula: 'next preferred rating ≥ I', inputs: { I: showA(currentA) }, citation: preferredCitation,
            ...(heater.maximumDeviceA === undefined ? {} : { note: `The ${heater.manual} allows ${showA(heater.maximumDeviceA)} at most.` }),
        }));
        manualDeviceProblems(heater, deviceA, out);
    }

    const loaded = match.rating.phases === 'three' ? 3 : 2;
    const capacity = capacityAlong(input.run, loaded, insulation, input.insulation === undefined, out);
    const conductor = capacity && deviceA !== undefined ? chooseConductor(heater, deviceA, loaded, insulation, capacity, out) : undefined;
    if (existing && isUsable) checkExisting(heater, existing, currentA, capacity, conductor, out);

    const laid = existing?.conductor?.system === 'mm2' ? existing.conductor.mm2 : conductor?.size.system === 'mm2' ? conductor.size.mm2 : undefined;
    const earth = conductor?.size.system === 'mm2' ? protectiveEarth(conductor.size.mm2) : undefined;
    if (earth !== undefined && conductor) out.steps.push(wordStep({
        key: 'protective-earth', label: 'Protective earth', text: `${earth} mm2 copper`, formula: 'S ≤ 16: S; S ≤ 35: 16; above: S / 2',
        inputs: { S: showConductor(conductor.size) }, citation: protectiveEarthCitation,
    }));
    out.steps.push(wordStep({
        key: 'residual-current', label: 'Residual current device',
        text: heater.residualCurrentDevice === 'recommended' ? `${residualCurrentA * 1000} mA, as the ${heater.manual} recommends` : `${residualCurrentA * 1000} mA on every other circuit of the room`,
        formula: 'every circuit of the room except the heater, and the heater where its manual recommends it',
        inputs: { 'in the manual': heater.residualCurrentDevice === undefined ? 'not stated' : spoken(heater.residualCurrentDevice) }, citation: iecCitations.residualCurrent,
    }));
    const voltageDrop = dropOf(input.run, match, currentA, laid, out);

    return {
        family: 'iec', steps: out.steps, wattsAtSupply: match.watts, currentA, designCurrentA: currentA,
        ...(deviceA === undefined ? {} : { deviceA }),
        ...(conductor ? { conductor } : {}),
        ...(earth === undefined ? {} : { protectiveConductor: mm2(earth) }),
        ...(voltageDrop ? { voltageDrop } : {}),
        lacks: out.lacks, problems: out.problems, notChecked,
    };
}

function standardProblems({ rating }: SupplyMatch): readonly CircuitProblem[] {
    const limitV = rating.phases === 'single' ? heaterStandardLimits.singlePhaseVolts : heaterStandardLimits.otherVolts;
    const common = { kind: 'outside-heater-standard', weight: 'info', citation: iecCitations.heaterStandard } as const;
    return [
        ...(rating.watts > heaterStandardLimits.watts ? [{ ...common, what: 'power', value: rating.watts, limit: heaterStandardLimits.watts } as const] : []),
        ...(rating.volts > limitV ? [{ ...common, what: 'voltage', value: rating.volts, limit: limitV } as const] : []),
    ];
}

/** Lowest capacity of a size along the run. */
type CapacityOf = (size: Mm2) => number;

function capacityAlong(run: readonly IecRunSegment[], loaded: 2 | 3, insulation: Insulation, isAssumed: boolean, out: Notes): CapacityOf | undefined {
    if (run.length === 0) out.lacks.push('the run from the board to the heater, with installation method and ambient temperature of each segment');
    const stretches: { readonly method: InstallationMethod; readonly factor: number }[] = [];
    for (const { name, method, ambientC } of run) {
        if (method === undefined) out.lacks.push(`installation method of ${name}`);
        if (ambientC === undefined) out.lacks.push(`ambient temperature of ${name}`);
        if (method === undefined || ambientC === undefined) continue;
        const factor = ambientFactor(ambientC, insulation);
        if (factor === undefined) {
            out.problems.push({ kind: 'ambient-beyond-table', weight: 'problem', citation: ambientFactorCitation, segment: name, ambientC, conductorC: insulationC(insulation) });
            continue;
        }
        stretches.push({ method, factor });
        out.steps.push(figureStep({
            key: 'ambient-correction', label: `Ambient factor, ${name}`, value: factor, unit: '', formula: 'factor of the ambient temperature, by insulation',
            inputs: { ambient: `${showNumber(ambientC, 1)} °C`, insulation: `${insulation.toUpperCase()} ${insulationC(insulation)} °C`, method }, citation: ambientFactorCitation,
            ...(isAssumed ? { note: 'The insulation is not stated; PVC, the weaker one, is taken.' } : {}),
        }));
    }
    if (run.length === 0 || stretches.length < run.length) return undefined;
    return size => Math.min(...stretches.map(({ method, factor }) => capacityAt30C(size, method, loaded, insulation) * factor));
}

function chooseConductor(
    heater: HeaterSupply, deviceA: number, loaded: 2 | 3, insulation: Insulation, capacity: CapacityOf, out: Notes,
): CircuitConductor | undefined {
    const least = mm2Sizes.find(size => isAtMost(deviceA, capacity(size)));
    if (least === undefined) {
        out.problems.push({ kind: 'conductor-beyond-table', weight: 'problem', citation: capacityCitation(loaded, insulation), neededA: deviceA });
        return undefined;
    }
    const { minimumConductor } = heater;
    const order = minimumConductor && compareConductors(minimumConductor, mm2(least));
    if (minimumConductor && order === undefined) out.lacks.push(`minimum conductor of the ${heater.manual} in mm2; it gives ${showConductor(minimumConductor)}`);
    const isSetByManual = order !== undefined && order > 0;
    const used = isSetByManual && minimumConductor?.system === 'mm2' ? minimumConductor.mm2 : least;
    out.steps.push(wordStep({
        key: 'conductor', label: 'Circuit conductors', text: `${loaded} × ${used} mm2 copper`, formula: 'device ≤ lowest of (capacity by method × factor)',
        inputs: { device: showA(deviceA), 'capacity on the run': showA(capacity(used)), 'thinnest that would do': `${least} mm2` },
        citation: isSetByManual ? manualCitation(heater, 'minimum conductor') : capacityCitation(loaded, insulation),
    }));
    return { size: mm2(used), loaded, ampacityA: capacity(used), isSetByManual };
}

function checkExisting(
    heater: HeaterSupply, { deviceA, conductor }: ExistingCircuit, currentA: number, capacity: CapacityOf | undefined, needed: CircuitConductor | undefined, out: Notes,
): void {
    const ampacityA = conductor?.system === 'mm2' && capacity ? capacity(conductor.mm2) : undefined;
    if (deviceA === undefined) out.lacks.push('overcurrent device of the existing circuit');
    else {
        if (!isAtMost(currentA, deviceA)) out.problems.push({ kind: 'existing-device-too-small', weight: 'problem', citation: coordinationCitation, deviceA, neededA: currentA });
        const byManual = heater.maximumDeviceA ?? Infinity;
        const byConductor = ampacityA ?? Infinity;
        if (!isAtMost(deviceA, Math.min(byManual, byConductor))) out.problems.push({
            kind: 'existing-device-too-large', weight: 'problem', deviceA, allowedA: Math.min(byManual, byConductor),
            ...(byManual <= byConductor ? { because: 'manual', citation: manualCitation(heater, 'maximum overcurrent device') } as const
                : { because: 'conductor', citation: coordinationCitation } as const),
        });
    }
    if (!conductor) out.lacks.push('conductor of the existing circuit');
    else if (conductor.system !== 'mm2') out.lacks.push(`conductor of the existing circuit in mm2; it is given as ${showConductor(conductor)}`);
    else {
        const order = heater.minimumConductor && compareConductors(conductor, heater.minimumConductor);
        const isUnderManual = order !== undefined && order < 0;
        const isCarrying = ampacityA === undefined || isAtMost(currentA, ampacityA);
        if (!isCarrying || isUnderManual) out.problems.push({
            kind: 'existing-conductor-too-small', weight: 'problem', conductor, ...(needed ? { needed: needed.size } : {}),
            citation: isCarrying ? manualCitation(heater, 'minimum conductor') : coordinationCitation,
        });
    }
}

function dropOf(run: readonly RunSegment[], { rating: { phases }, volts }: SupplyMatch, currentA: number, laid: Mm2 | undefined, out: Notes): VoltageDrop | undefined {
    const length = runLength(run);
    if (length === undefined) out.lacks.push('length of the run, for the voltage drop');
    if (length === undefined || laid === undefined) return undefined;
    const voltageDrop = dropOverMetres({ currentA, phases, run: length, ohmMm2PerM: hotCopperOhmMm2PerM, sectionMm2: laid, volts });
    out.steps.push(figureStep({
        key: 'voltage-drop', label: 'Voltage drop', value: voltageDrop.share * 100, unit: '%', formula: phases === 'three' ? '√3 × I × ρ × L / (S × V)' : '2 × I × ρ × L / (S × V)',
        inputs: { I: showA(currentA), ρ: `${hotCopperOhmMm2PerM} Ω·mm²/m`, L: showLength(length, 'm', 'drawing'), S: `${laid} mm2`, V: showV(volts), drop: showV(voltageDrop.volts) },
        citation: resistivityCitation, note: `${showPercent(iecDropLimit)} for uses other than lighting.`,
    }));
    if (!isAtMost(voltageDrop.share, iecDropLimit)) out.problems.push({ kind: 'voltage-drop-high', weight: 'info', citation: iecCitations.drop, share: voltageDrop.share, limit: iecDropLimit });
    return voltageDrop;
}
