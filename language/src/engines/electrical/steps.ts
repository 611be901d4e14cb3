import type { Citation } from '../../core/citation.js';
import { showNumber } from '../../core/show.js';
import { heaterCurrent, isAtMost, type SupplyMatch } from './current.js';
import type { CircuitProblem, HeaterSupply, Phases, SiteSupply, Step, Unit } from './circuit.js';

export const showA = (amperes: number): string => `${showNumber(amperes)} A`;
export const showV = (volts: number): string => `${showNumber(volts)} V`;
export const showW = (watts: number): string => `${showNumber(watts, 1)} W`;
export const showPercent = (share: number): string => `${showNumber(share * 100)} %`;
export const showPhases = (phases: Phases): string => phases === 'three' ? 'three-phase' : 'single-phase';

export const ohmsLaw: Citation = { kind: 'geometry', text: 'Ohm\'s law and the definition of electrical power' };
export const manualCitation = ({ manual }: HeaterSupply, what: string): Citation => ({ kind: 'manual', text: `${manual}, ${what}` });

/** A step whose figure is a number with a unit. */
export function figureStep(step: Omit<Step, 'text' | 'inputs'> & { readonly value: number; readonly inputs: Readonly<Record<string, string>> }): Step {
    return { ...step, text: `${showNumber(step.value, step.unit === 'A' || step.unit === '%' || step.unit === 'V' ? 2 : 4)}${step.unit ? ` ${step.unit}` : ''}`, inputs: named(step.inputs) };
}
/** A step whose result is a word: a conductor, a place. */
export function wordStep(step: Omit<Step, 'unit' | 'value' | 'inputs'> & { readonly inputs: Readonly<Record<string, string>> }): Step {
    return { ...step, unit: '', inputs: named(step.inputs) };
}
const named = (inputs: Readonly<Record<string, string>>): Step['inputs'] => Object.entries(inputs).map(([name, text]) => ({ name, text }));

/** What both families begin with: the power at the site's supply, the current, and whether the supply is the right one. */
export interface Load {
    readonly match: SupplyMatch;
    readonly currentA: number;
    readonly steps: readonly Step[];
    readonly problems: readonly CircuitProblem[];
}

/** @returns `undefined` when the heater states no rating */
export function heaterLoad(heater: HeaterSupply, supply: SiteSupply, match: SupplyMatch | undefined): Load | undefined {
    if (!match) return undefined;
    const { rating, volts, watts, fit } = match;
    const nameplate = manualCitation(heater, 'rating');
    const steps: Step[] = [figureStep({
        key: 'power', label: 'Power at the supply', value: watts, unit: 'W' satisfies Unit,
        formula: fit === 'wrong-voltage' ? 'P = Pn × (V / Vn)²' : 'P = Pn',
        inputs: { Pn: showW(rating.watts), Vn: showV(rating.volts), V: showV(volts) },
        citation: fit === 'wrong-voltage' ? ohmsLaw : nameplate,
        ...(match.connection === 'line_to_neutral' ? { note: 'Connected from one line to neutral.' }
            : supply.phases === 'three' && match.connection === 'line_to_line' ? { note: 'Connected between two lines of the three.' } : {}),
    })];
    const currentA = heaterCurrent({ watts, volts, phases: rating.phases });
    steps.push(figureStep({
        key: 'current', label: 'Current', value: currentA, unit: 'A', formula: rating.phases === 'three' ? 'I = P / (√3 × V)' : 'I = P / V',
        inputs: { P: showW(watts), V: showV(volts) }, citation: ohmsLaw,
    }));
    const problems: CircuitProblem[] = [];
    if (fit === 'wrong-voltage') problems.push({
        kind: 'wrong-voltage', weight: 'problem', citation: nameplate, suppliedVolts: supply.volts, ratedVolts: heater.ratings.map(each => each.volts),
        wattsAtSupply: watts, ratedWatts: rating.watts,
    });
    if (fit === 'wrong-phase') problems.push({ kind: 'wrong-phase', weight: 'problem', citation: nameplate, supplied: supply.phases, needed: rating.phases });
    return { match, currentA, steps, problems };
}

/** What a calculation gathers on its way. */
export interface Notes {
    readonly steps: Step[];
    readonly problems: CircuitProblem[];
    readonly lacks: string[];
}
export const notes = ({ steps, problems }: Load): Notes => ({ steps: [...steps], problems: [...problems], lacks: [] });

/** The `capacity` of the site against what the circuit has to carry. */
export function capacityProblems({ capacityA }: SiteSupply, neededA: number, citation: Citation): readonly CircuitProblem[] {
    if (capacityA === undefined || isAtMost(neededA, capacityA)) return [];
    return [{ kind: 'capacity-too-small', weight: 'problem', citation, neededA, availableA: capacityA }];
}

/** The device the load needs against the largest one the manual allows. */
export function manualDeviceProblems(heater: HeaterSupply, deviceA: number, out: Notes): void {
    if (heater.maximumDeviceA === undefined) out.lacks.push(`largest overcurrent device the ${heater.manual} allows`);
    else if (deviceA > heater.maximumDeviceA) out.problems.push({
        kind: 'manual-device-exceeded', weight: 'problem', citation: manualCitation(heater, 'maximum overcurrent device'), neededA: deviceA, allowedA: heater.maximumDeviceA,
    });
}
