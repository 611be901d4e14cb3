import { inWords } from '../../core/finding.js';
import { showConductor } from '../../engines/electrical/index.js';
import { ampacityCitation } from '../../engines/electrical/us-tables.js';
import { defineRule } from '../rule.js';
import { circuitFindings, circuitName, circuitPlace, electrician } from './electrical-findings.js';

export const existingConductorTooSmall = defineRule({
    id: 'existing-conductor-too-small',
    family: 'electrical',
    title: 'The existing conductor is too small for the heater',
    severity: 'error',
    why: 'A conductor that is too thin overheats inside the wall, where nobody sees it; the device does not notice as long as the current stays below its rating.',
    bad: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; existing_device 35 A; existing_conductor awg_10; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; existing_device 35 A; existing_conductor awg_8; segment wall { length 20\'; ambient 86 degF } }',
    sources: [ampacityCitation, { kind: 'manual', text: 'the smallest conductor the heater\'s manual allows' }],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'existing-conductor-too-small', ({ problem, circuit, source }) => {
        const needed = problem.needed && showConductor(problem.needed);
        return {
            at: circuitPlace(circuit, 'existing_conductor'),
            message: `The existing conductor of ${circuitName(circuit)} is ${showConductor(problem.conductor)}; ${needed ?? 'a larger one'} is needed for heater ${circuit.heater.name} (${source}). Have the circuit rewired. ${electrician}`,
            measured: inWords(showConductor(problem.conductor)), required: inWords(needed ?? 'a larger conductor'), subject: `${circuit.heater.name}.conductor`,
        };
    }),
});
