import { remembered } from './remember.js';
import { parseConductor, usCircuit, iecCircuit, scheduleLines, type CircuitResult, type ConductorSize, type ExistingCircuit, type HeaterSupply, type IecRunSegment, type ScheduleLine, type SiteSupply } from '../engines/electrical/index.js';
import { isMetric, type LengthUnit } from '../core/show.js';
import { isKind, type Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import { electricalFamily, type RuleSet } from '../rule-sets/index.js';
import type { ConductorWord } from '../vocabulary/blocks/job.js';
import { given } from './catalogue-values.js';
import { areRulesKnown } from './known.js';
import type { AssembledHeater } from './heaters.js';

const circuitOfUs = remembered('circuit', usCircuit);
const circuitOfIec = remembered('circuit', iecCircuit);

/** The circuit of one heater. */
export interface AssembledCircuit {
    readonly heater: Pick<AssembledHeater, 'name' | 'block' | 'model'>;
    /** Absent when the job has no circuit block for the heater. */
    readonly block?: Block<'circuit'>;
    readonly family: 'us' | 'iec';
    readonly supply: SiteSupply;
    readonly manual: HeaterSupply;
    /** The run, from the panel to the heater. */
    readonly run: readonly IecRunSegment[];
    /** What is there already. */
    readonly existing?: ExistingCircuit;
    readonly result: CircuitResult;
    readonly schedule: readonly ScheduleLine[];
}

/** @returns nothing for a heater without power or supply, or when the rule sets name two electrical families */
export function assembleCircuits(job: Job, ruleSets: readonly RuleSet[], heaters: readonly Pick<AssembledHeater, 'name' | 'block' | 'model'>[]): readonly AssembledCircuit[] {
    const family = electricalFamily(ruleSets) ?? 'us';
    if (family === 'both' || !areRulesKnown(job)) return [];
    return heaters.flatMap((heater): AssembledCircuit[] => {
        const { model, block: heaterBlock } = heater;
        const { power, supply: ratings } = model.values;
        const atSite = heaterBlock.values.supply?.value ?? job.site?.values.supply?.value;
        if (!power || !ratings || !atSite) return [];
        const block = job.circuits.find(circuit => circuit.values.feeds?.value.name === heater.name);
        const manual: HeaterSupply = {
            manual: model.values.manual?.value ?? 'manual',
            ratings: ratings.value.map(({ volts, phases }) => ({ volts, phases, watts: power.value })),
            ...given({
                maximumDeviceA: model.values.max_device?.value, minimumConductor: conductorOf(model.values.min_conductor?.value),
                finalConnection: model.values.connection_wire?.value, elementSets: block?.values.circuits?.value ?? model.values.circuits?.value,
            }),
        };
        const supply: SiteSupply = { ...atSite, ...given({ capacityA: job.site?.values.capacity?.value }) };
        const run = runOf(block);
        const existing: ExistingCircuit | undefined = block && given({ deviceA: block.values.existing_device?.value, conductor: conductorOf(block.values.existing_conductor?.value) });
        const hasExisting = existing !== undefined && Object.keys(existing).length > 0;
        const insulation = block?.values.insulation?.value;
        const disconnect = block?.values.disconnect_in_sight?.value;
        const result = family === 'us'
            ? circuitOfUs({
                heater: manual, supply, run,
                ...given({
                    terminalsC: block?.values.terminals && (block.values.terminals.value === 'degC_75' ? 75 as const : 60 as const), insulationC: insulation === 'degC_60' ? 60 as const : insulation === 'degC_75' ? 75 as const : 90 as const,
                    isInsulationAssumed: insulation === undefined ? true as const : undefined,
                    existing: hasExisting ? existing : undefined, disconnect: disconnect === undefined ? undefined : disconnect ? 'within_sight' as const : 'neither' as const,
                }),
            })
            : circuitOfIec({ heater: manual, supply, run, ...given({ insulation: insulation && (insulation === 'xlpe' ? 'xlpe' as const : 'pvc' as const), existing: hasExisting ? existing : undefined }) });
        const there = hasExisting ? existing : undefined;
        return [{ heater, family, supply, manual, run, result, schedule: scheduleLines({ heater: manual, supply, run, result, unit: runUnit(job.unit), ...given({ existing: there }) }), ...(there && { existing: there }), ...(block && { block }) }];
    });
}

/** A cable is bought by the foot or the metre, whatever the room is drawn in. */
const runUnit = (unit: LengthUnit): LengthUnit => isMetric(unit) ? 'm' : 'ft_in';

function runOf(block: Block<'circuit'> | undefined): readonly IecRunSegment[] {
    const method = block?.values.method?.value;
    return (block?.children ?? []).filter(child => isKind(child, 'segment')).map((child, i) => {
        const segment = child as unknown as Block<'segment'>;
        return { name: segment.name?.value ?? `segment ${i + 1}`, ...given({ length: segment.values.length?.value, ambientC: segment.values.ambient?.value, method }) };
    });
}

/** `awg_10` and `mm2_2_5` as sizes. */
export function conductorOf(word: ConductorWord | undefined): ConductorSize | undefined {
    if (word === undefined) return undefined;
    const [system, ...figures] = word.split('_');
    return parseConductor(system === 'awg' ? `${figures.join('.')} AWG` : `${figures.join('.')} mm2`);
}
