import { showCitation, type Citation } from '../../core/citation.js';
import { showLength, showNumber, type LengthUnit } from '../../core/show.js';
import { zoneScopeLine } from '../../rule-sets/iec.js';
import type { CircuitResult, ExistingCircuit, HeaterSupply, SiteSupply, Step, Unit } from './circuit.js';
import { showConductor } from './conductor.js';
import type { IecRunSegment } from './iec-circuit.js';
import { showA, showPercent, showPhases, showV, showW } from './steps.js';

/** What a line of the schedule is: what the site gives, what the manual says, the run, what was there, a figure worked out, what is missing, what nobody looked at. */
export type ScheduleSection = 'supply' | 'manual' | 'run' | 'existing' | 'figure' | 'lacks' | 'unchecked' | 'caution';

export interface ScheduleLine {
    readonly section: ScheduleSection;
    readonly label: string;
    readonly value: string;
    /** Document and clause, or the manual; empty where the line is the designer's own. */
    readonly source: string;
    /** How a figure was worked out. */
    readonly formula?: string;
    readonly inputs?: Step['inputs'];
    readonly note?: string;
    /** The figure itself, where it is one. */
    readonly figure?: { readonly value: number; readonly unit: Unit };
    /** Name of the step the figure comes from: equal in every schedule, whatever the words. */
    readonly key?: string;
}

/** What stands on every page and in every record of a schedule. */
export const toConfirm = 'For a licensed electrician to confirm. Nothing here is an approval.';
/** What closes every schedule. */
export const electricalCaution =
    'For a licensed electrician to check and confirm before any work. The heater\'s own manual and the local code govern; nothing here is an approval.';

/** The source of a line, saying so when the figure was written down from memory. */
export const showSource = (citation: Citation): string =>
    `${showCitation(citation)}${citation.kind === 'standard' && citation.fromMemory ? ' (from memory; compare with a copy)' : ''}`;

export interface ScheduleInput {
    readonly heater: HeaterSupply;
    readonly supply: SiteSupply;
    readonly result: CircuitResult;
    readonly run?: readonly IecRunSegment[];
    readonly existing?: ExistingCircuit;
    /** Unit of the lengths of the run. */
    readonly unit?: LengthUnit;
}

/** The electrical schedule of one heater: supply, manual, run, each figure of the circuit with its formula, inputs and source, what is lacking and not checked, and the caution. */
export function scheduleLines({ heater, supply, result, run = [], existing, unit = 'ft_in' }: ScheduleInput): readonly ScheduleLine[] {
    const manual = (label: string, value: string): ScheduleLine => ({ section: 'manual', label, value, source: heater.manual });
    const own = (section: ScheduleSection, label: string, value: string): ScheduleLine => ({ section, label, value, source: '' });
    const notGiven = `not in the ${heater.manual}`;
    return [
        own('supply', 'Supply on site', `${showV(supply.volts)} ${showPhases(supply.phases)}`),
        ...(supply.capacityA === undefined ? [] : [own('supply', 'Capacity available', showA(supply.capacityA))]),
        ...heater.ratings.map(({ watts, volts, phases }) => manual('Heater rating', `${showW(watts)} at ${showV(volts)} ${showPhases(phases)}`)),
        manual('Maximum overcurrent device', heater.maximumDeviceA === undefined ? notGiven : showA(heater.maximumDeviceA)),
        manual('Minimum conductor', heater.minimumConductor === undefined ? notGiven : showConductor(heater.minimumConductor)),
        manual('Final connection', heater.finalConnection ?? notGiven),
        ...run.map(({ name, length, ambientC, method }) => own('run', `Run, ${name}`, [
            length === undefined ? 'length not given' : showLength(length, unit, 'drawing'),
            ambientC === undefined ? 'temperature not given' : `air of ${showNumber(ambientC, 1)} °C (${showNumber(ambientC * 9 / 5 + 32, 0)} °F)`,
            ...(method === undefined ? [] : [`method ${method}`]),
        ].join(', '))),
        ...(result.voltageDrop ? [own('run', 'Length of the run', showLength(result.voltageDrop.run, unit, 'drawing'))] : []),
        ...(existing?.deviceA === undefined ? [] : [own('existing', 'Device that is there', showA(existing.deviceA))]),
        ...(existing?.conductor === undefined ? [] : [own('existing', 'Conductor that is there', showConductor(existing.conductor))]),
        ...result.steps.map(({ key, label, text, note, citation, formula, inputs, value, unit: of }): ScheduleLine => ({
            section: 'figure', key, label, value: text, source: showSource(citation), formula, inputs, ...(note !== undefined && { note }), ...(value !== undefined && { figure: { value, unit: of } }),
        })),
        ...(result.family === 'iec' ? [own('unchecked', 'Scope of the zones', zoneScopeLine)] : []),
        ...result.lacks.map(lack => own('lacks', 'Not given', lack)),
        ...result.notChecked.map(item => own('unchecked', 'Not checked', item)),
        own('caution', 'Caution', electricalCaution),
    ];
}

/** The circuit in one line, for hints and lists: `25 A, 35 A device, 2 × 8 AWG + 10 AWG ground`. */
export function showCircuit({ currentA, deviceA, conductor, protectiveConductor, voltageDrop, family }: CircuitResult): string {
    return [
        currentA === undefined ? undefined : showA(currentA),
        deviceA === undefined ? undefined : `${showA(deviceA)} device`,
        conductor && `${conductor.loaded} × ${showConductor(conductor.size)}${protectiveConductor ? ` + ${showConductor(protectiveConductor)} ${family === 'us' ? 'ground' : 'earth'}` : ''}`,
        voltageDrop && `${showPercent(voltageDrop.share)} voltage drop`,
    ].filter(part => part !== undefined).join(', ');
}
