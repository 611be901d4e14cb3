import { amount } from '../../core/finding.js';
import { showA } from '../../engines/electrical/steps.js';
import { necCitations } from '../../rule-sets/nec.js';
import { defineRule } from '../rule.js';
import { circuitFindings, circuitPlace, electrician, modelPlace } from './electrical-findings.js';

export const heaterNotSubdivided = defineRule({
    id: 'heater-not-subdivided',
    family: 'electrical',
    title: 'A large heater is not divided into small enough sets of elements',
    severity: 'error',
    why: 'Elements of more than 48 A together are divided into sets with a device each, so that a fault in one does not feed on the current of all.',
    bad: 'heater_model Broad15 { manual "Broad 15 manual, demo"; power 15 kW; supply 240 V single_phase; body 24" x 27"; depth 16"; circuits 1 }\nheater stove on right { model Broad15; from front 8"; guard yes }',
    good: 'heater_model Broad15 { manual "Broad 15 manual, demo"; power 15 kW; supply 240 V single_phase; body 24" x 27"; depth 16"; circuits 2 }\nheater stove on right { model Broad15; from front 8"; guard yes }',
    sources: [necCitations.elementSet],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'not-subdivided', ({ problem, circuit, source }) => {
        const sets = Math.ceil(problem.currentA / problem.limitA - 1e-9);
        return {
            at: circuit.block?.values.circuits ? circuitPlace(circuit, 'circuits') : modelPlace(circuit),
            message: `Heater ${circuit.heater.name} draws ${showA(problem.setA)} in ${problem.sets === 1 ? 'one set of elements' : `each of ${problem.sets} sets of elements`}; ${showA(problem.limitA)} is the most a set may draw (${source}). ${sets} sets would do: choose a heater whose manual divides it so. ${electrician}`,
            measured: amount(problem.setA, 'A'), required: amount(problem.limitA, 'A'), subject: `${circuit.heater.name}.current`,
        };
    }),
});
