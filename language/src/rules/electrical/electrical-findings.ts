import type { Citation } from '../../core/citation.js';
import { showCitation } from '../../core/citation.js';
import type { Finding, Fix } from '../../core/finding.js';
import { showNumber } from '../../core/show.js';
import type { Span } from '../../core/span.js';
import type { AssembledCircuit } from '../../assembly/circuits.js';
import type { CircuitProblem, CircuitProblemKind, Step } from '../../engines/electrical/index.js';
import { matchSupply } from '../../engines/electrical/index.js';
import { showA, showPhases, showV } from '../../engines/electrical/steps.js';
import { isKind, showBlock, type Block, type Given } from '../../model/block.js';
import { showFigure } from '../../rule-sets/index.js';
import type { Supply } from '../../vocabulary/values.js';
import { isSupplyWrong } from '../astray.js';
import type { RuleInput } from '../rule.js';

/** Closes every message somebody could act on with a screwdriver. */
export const electrician = 'A licensed electrician confirms it and does the work.';

export interface CircuitCase<K extends CircuitProblemKind> {
    readonly problem: Extract<CircuitProblem, { readonly kind: K }>;
    readonly circuit: AssembledCircuit;
    /** `NEC 2023, 424.4(B)`. */
    readonly source: string;
}

/** Turns the problems of one kind that the circuits have into findings. */
export function* circuitFindings<K extends CircuitProblemKind>({ results }: RuleInput, kind: K, make: (found: CircuitCase<K>) => Omit<Finding, 'citation'> | undefined): Generator<Finding> {
    for (const circuit of results.circuits) {
        for (const problem of circuit.result.problems) {
            // On a supply of the wrong voltage or phases the load is not the one the circuit will carry.
            if (problem.kind !== kind || (followsFromSupply(kind) && isSupplyWrong(circuit))) continue;
            const finding = make({ problem: problem as CircuitCase<K>['problem'], circuit, source: showCitation(problem.citation) });
            if (finding) yield { citation: problem.citation, ...finding };
        }
    }
}

const followsFromSupply = (kind: CircuitProblemKind): boolean => kind !== 'wrong-voltage' && kind !== 'wrong-phase' && kind !== 'disconnect-not-in-sight' && kind !== 'outside-heater-standard' && kind !== 'ambient-beyond-table';

/** The supply of a heater where it is written: on the heater, else on the site. */
export const supplyPlace = ({ heater }: AssembledCircuit, { job }: RuleInput): Span =>
    (heater.block.values.supply ?? job.site?.values.supply)?.span ?? heater.block.head;
/** Whether a supply serves a load of that voltage and phases, as the engine reads it: a three-phase one also serves between two lines and from a line to neutral. */
export const offers = (supply: Supply, load: Supply): boolean => matchSupply({ manual: '', ratings: [{ ...load, watts: 1 }] }, supply)?.fit === 'right';
/** False when the heater names a supply of its own that the site does not have, which has a finding of its own. */
export function isSupplyOnSite({ heater }: AssembledCircuit, { job }: RuleInput): boolean {
    const [own, atSite] = [heater.block.values.supply?.value, job.site?.values.supply?.value];
    return !own || !atSite || offers(atSite, own);
}
export const modelPlace = ({ heater }: AssembledCircuit): Span => heater.block.values.model?.span ?? heater.block.head;
/** A fact of the circuit block, else its head, else the heater. */
export const circuitPlace = ({ block, heater }: AssembledCircuit, key: 'device' | 'existing_device' | 'existing_conductor' | 'disconnect_in_sight' | 'circuits' | 'feeds'): Span =>
    block?.values[key]?.span ?? block?.head ?? heater.block.head;

/** `circuit stove_feed`; the circuit of a heater that has no block is `the circuit of stove`. */
export const circuitName = ({ block, heater }: AssembledCircuit): string => block?.name ? showBlock(block) : `the circuit of ${heater.name}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const showSupply = ({ volts, phases }: Supply): string => `${showV(volts)} ${showPhases(phases)}`;
/** `86 °F (30 °C)`. */
export const showTemperature = (celsius: number): string => showFigure({ kind: 'temperature', celsius });
export const showKilowatts = (watts: number): string => `${showNumber(watts / 1000)} kW`;
export const manualOf = ({ manual }: AssembledCircuit): Citation => ({ kind: 'manual', text: manual.manual });

/** The temperature of a segment, by the name the engine gives it: nameless ones are numbered. */
export function segmentPlace({ block, heater }: AssembledCircuit, name: string): Span {
    const segments = (block?.children ?? []).filter(child => isKind(child, 'segment'));
    const found = segments.find((segment, i) => (segment.name?.value ?? `segment ${i + 1}`) === name);
    const ambient = found?.values as Block<'segment'>['values'] | undefined;
    return ambient?.ambient?.span ?? found?.head ?? block?.head ?? heater.block.head;
}

/** A device that a circuit block asks for, with the next standard size over its load and the step that found it. */
export interface StatedDevice { readonly circuit: AssembledCircuit; readonly device: Given<number>; readonly nextA: number; readonly step: Step }

export function* statedDevices({ results }: RuleInput): Generator<StatedDevice> {
    for (const circuit of results.circuits) {
        const device = circuit.block?.values.device;
        const { deviceA: nextA, steps } = circuit.result;
        const step = steps.find(({ key }) => key === 'device');
        // On a supply of the wrong voltage or phases the load is not the one the circuit will carry.
        if (device && nextA !== undefined && step && !isSupplyWrong(circuit)) yield { circuit, device, nextA, step };
    }
}

export const deviceFix = (span: Span, amperes: number): readonly Fix[] => [{ title: `Fit a ${showA(amperes)} device`, safety: 'review', edits: [{ span, newText: showA(amperes) }] }];

/** Lacks that are the manual's and have findings of their own. */
const ofTheManual = [/^largest overcurrent device /, /^in how many sets /, /^rated power, voltage and phases /];
/** Lacks of a circuit block that have findings of their own. */
const ofTheRun = [/^the run from /, /^length of the run/, /^installation method of /, /^ambient temperature of /, /^where the disconnecting /];
const without = (lacks: readonly string[], told: readonly RegExp[]): readonly string[] => lacks.filter(lack => !told.some(pattern => pattern.test(lack)));

/** What a heater without a circuit block lacks because of that. */
export const circuitLacks = (lacks: readonly string[]): readonly string[] => without(lacks, ofTheManual);
/** What a circuit block lacks beyond what other rules tell one by one. */
export const remainingLacks = (lacks: readonly string[]): readonly string[] => without(lacks, [...ofTheManual, ...ofTheRun]);
