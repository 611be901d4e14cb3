import { amount } from '../../core/finding.js';
import { showV } from '../../engines/electrical/steps.js';
import { iecCitations } from '../../rule-sets/iec-figures.js';
import { defineRule } from '../rule.js';
import { circuitFindings, modelPlace, showKilowatts } from './electrical-findings.js';

export const outsideHeaterStandard = defineRule({
    id: 'outside-heater-standard',
    family: 'electrical',
    title: 'The heater is outside what its product standard covers',
    severity: 'info',
    why: 'Beyond the limits of the standard its tests say nothing about this heater; its maker has to say what it was tested to.',
    bad: 'rules iec\nheater_model Hall24 { manual "Hall 24 manual, demo"; power 24 kW; supply 400 V three_phase; body 40" x 27"; depth 20" }\nheater stove on right { model Hall24; from front 8"; guard yes; supply 400 V three_phase }',
    good: 'rules iec\nheater_model Hall20 { manual "Hall 20 manual, demo"; power 20 kW; supply 400 V three_phase; body 40" x 27"; depth 20" }\nheater stove on right { model Hall20; from front 8"; guard yes; supply 400 V three_phase }',
    sources: [iecCitations.heaterStandard],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'outside-heater-standard', ({ problem, circuit, source }) => {
        const show = problem.what === 'power' ? showKilowatts : showV;
        const [unit, factor] = problem.what === 'power' ? ['kW', 1000] as const : ['V', 1] as const;
        return {
            at: modelPlace(circuit),
            message: `The ${problem.what === 'power' ? 'power' : 'supply'} of heater ${circuit.heater.name} is ${show(problem.value)}; ${show(problem.limit)} is the most its product standard covers (${source}). Ask its maker which standard it was tested to.`,
            measured: amount(problem.value / factor, unit), required: amount(problem.limit / factor, unit), subject: `${circuit.heater.name}.current`,
        };
    }),
});
