import { showCitation, type Citation } from '../../core/citation.js';
import { showLength, type LengthUnit } from '../../core/show.js';
import { zoneScopeLine } from '../../rule-sets/iec.js';
import type { CircuitResult, HeaterSupply, SiteSupply } from './circuit.js';
import { showConductor } from './conductor.js';
import { showA, showPercent, showPhases, showV, showW } from './steps.js';

export interface ScheduleLine {
    readonly label: string;
    readonly value: string;
    /** Document and clause, or the manual; empty where the line is the designer's own. */
    readonly source: string;
}

/** What closes every schedule. */
export const electricalCaution =
    'For a licensed electrician to check and confirm before any work. The heater\'s own manual and the local code govern; nothing here is an approval.';

/** The source of a line, saying so when the figure was written down from memory. */
export const showSource = (citation: Citation): string =>
    `${showCitation(citation)}${citation.kind === 'standard' && citation.fromMemory ? ' (from memory; compare with a copy)' : ''}`;

/**
 * The electrical schedule of one heater: supply, load, circuit, what the manual says, what is lacking and not checked, and the caution.
 * @param unit unit of the run length
 */
export function scheduleLines(
    { heater, supply, result, unit = 'ft_in' }: { readonly heater: HeaterSupply; readonly supply: SiteSupply; readonly result: CircuitResult; readonly unit?: LengthUnit },
): readonly ScheduleLine[] {
    const manual = (label: string, value: string): ScheduleLine => ({ label, value, source: heater.manual });
    const notGiven = `not in the ${heater.manual}`;
    const lines: ScheduleLine[] = [
        { label: 'Supply on site', value: `${showV(supply.volts)} ${showPhases(supply.phases)}`, source: '' },
        ...(supply.capacityA === undefined ? [] : [{ label: 'Capacity available', value: showA(supply.capacityA), source: '' }]),
        ...heater.ratings.map(({ watts, volts, phases }) => manual('Heater rating', `${showW(watts)} at ${showV(volts)} ${showPhases(phases)}`)),
        ...result.steps.map(({ label, text, note, citation }) => ({ label, value: note ? `${text}. ${note}` : text, source: showSource(citation) })),
        ...(result.voltageDrop ? [{ label: 'Length of the run', value: showLength(result.voltageDrop.run, unit, 'drawing'), source: '' }] : []),
        manual('Maximum overcurrent device', heater.maximumDeviceA === undefined ? notGiven : showA(heater.maximumDeviceA)),
        manual('Minimum conductor', heater.minimumConductor === undefined ? notGiven : showConductor(heater.minimumConductor)),
        manual('Final connection', heater.finalConnection ?? notGiven),
    ];
    if (result.family === 'iec') lines.push({ label: 'Scope of the zones', value: zoneScopeLine, source: '' });
    lines.push(...result.lacks.map(lack => ({ label: 'Not given', value: lack, source: '' })));
    lines.push(...result.notChecked.map(item => ({ label: 'Not checked', value: item, source: '' })));
    lines.push({ label: 'Caution', value: electricalCaution, source: '' });
    return lines;
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
