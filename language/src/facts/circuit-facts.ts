import type { Results } from '../assembly/results.js';
import { showCircuit, showConductor, showSource } from '../engines/electrical/index.js';
import type { Job } from '../model/job.js';
import { amountFact, lengthFact, wordsFact, type Making } from './fact.js';
import type { FactProvider } from './facts-tree.js';

/** `⟨heater⟩.current` and the rest of its circuit, each with the step of the calculation it comes from. */
export function circuitFacts(job: Job, results: Results): readonly FactProvider[] {
    return results.circuits.flatMap(({ heater, block, result }): FactProvider[] => {
        const path = (name: string): string => `${heater.name}.${name}`;
        const step = (...keys: readonly string[]) => (): Making => {
            const found = keys.flatMap(key => result.steps.find(one => one.key === key) ?? [])[0];
            return {
                because: [heater.block.values.supply ?? job.site?.values.supply, heater.model.values.power, block?.head], source: found?.citation,
                how: found && `${found.formula}${found.inputs.length > 0 ? `, ${found.inputs.map(({ name, text }) => `${name} = ${text}`).join(', ')}` : ''}`,
            };
        };
        return [
            amountFact(path('current'), 'current', 'A', () => result.currentA, step('current')),
            amountFact(path('design_current'), 'load the circuit is sized for', 'A', () => result.designCurrentA, step('continuous-load', 'current')),
            amountFact(path('device'), 'overcurrent device', 'A', () => result.deviceA, step('device')),
            wordsFact(path('conductor'), 'circuit conductors', () => result.conductor && `${result.conductor.loaded} x ${showConductor(result.conductor.size)} copper`, step('conductor')),
            wordsFact(path('protective_conductor'), result.family === 'us' ? 'equipment ground' : 'protective earth', () => result.protectiveConductor && showConductor(result.protectiveConductor), step('equipment-ground', 'protective-earth')),
            amountFact(path('voltage_drop'), 'voltage drop', '%', () => result.voltageDrop && result.voltageDrop.share * 100, step('voltage-drop')),
            lengthFact(path('run'), 'length of the run', () => result.voltageDrop?.run, () => ({ because: [block?.head] })),
            wordsFact(path('circuit'), 'circuit', () => showCircuit(result) || undefined, () => ({ because: [heater.block.values.model, block?.head], how: 'for a licensed electrician to confirm', source: result.steps[0] && { kind: 'manual', text: showSource(result.steps[0].citation) } })),
        ];
    });
}
