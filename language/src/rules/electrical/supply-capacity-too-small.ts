import { amount } from '../../core/finding.js';
import { showA } from '../../engines/electrical/steps.js';
import { necCitations } from '../../rule-sets/nec.js';
import { defineRule } from '../rule.js';
import { circuitFindings, electrician, modelPlace } from './electrical-findings.js';

export const supplyCapacityTooSmall = defineRule({
    id: 'supply-capacity-too-small',
    family: 'electrical',
    title: 'The supply cannot spare the current the heater needs',
    severity: 'error',
    why: 'A heater runs for an hour and more at full power; a supply that is already used up trips, or runs its service conductors hot.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; supply 240 V single_phase; capacity 30 A }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; supply 240 V single_phase; capacity 32 A }',
    sources: [necCitations.continuous],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'capacity-too-small', ({ problem, circuit, source }) => {
        const capacity = input.job.site?.values.capacity;
        const { currentA } = circuit.result;
        return capacity && {
            at: capacity.span,
            message: `The supply can spare ${showA(problem.availableA)}; ${showA(problem.neededA)} is needed for heater ${circuit.heater.name}${currentA !== undefined && problem.neededA > currentA ? `, 125 % of its ${showA(currentA)}` : ''} (${source}). Choose a smaller heater, or have the supply enlarged. ${electrician}`,
            measured: amount(problem.availableA, 'A'), required: amount(problem.neededA, 'A'), subject: `${circuit.heater.name}.design_current`,
            related: [{ at: modelPlace(circuit), message: 'The heater is chosen here.' }],
        };
    }),
});
