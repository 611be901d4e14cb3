import { amount } from '../../core/finding.js';
import { showA } from '../../engines/electrical/steps.js';
import { defineRule } from '../rule.js';
import { circuitFindings, electrician, modelPlace } from './electrical-findings.js';

export const deviceAboveManual = defineRule({
    id: 'device-above-manual',
    family: 'electrical',
    title: 'The load needs a larger device than the heater\'s manual allows',
    severity: 'error',
    why: 'The manual\'s largest device is part of what the heater was tested with. When the load alone asks for more, the heater has to be fed otherwise or the catalogue entry is wrong.',
    bad: 'heater_model Narrow60 { manual "Narrow 60 sheet, demo"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; max_device 30 A }\nheater stove on right { model Narrow60; from front 8"; guard yes }',
    good: 'heater_model Narrow60 { manual "Narrow 60 sheet, demo"; power 6 kW; supply 240 V single_phase; body 16" x 22"; depth 11"; max_device 35 A }\nheater stove on right { model Narrow60; from front 8"; guard yes }',
    sources: [{ kind: 'manual', text: 'the largest device the heater\'s manual allows' }],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'manual-device-exceeded', ({ problem, circuit, source }) => {
        const limit = circuit.heater.model.values.max_device;
        return {
            at: modelPlace(circuit),
            message: `Heater ${circuit.heater.name} needs a ${showA(problem.neededA)} device; ${showA(problem.allowedA)} is the most its manual allows (${source}). Compare the entry with the manual, ask its maker how it is fed, or choose another heater. ${electrician}`,
            measured: amount(problem.neededA, 'A'), required: amount(problem.allowedA, 'A'), subject: `${circuit.heater.name}.device`,
            ...(limit && { related: [{ at: limit.span, message: 'The largest device stands here.' }] }),
        };
    }),
});
