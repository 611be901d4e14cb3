import { amount } from '../../core/finding.js';
import { showA } from '../../engines/electrical/steps.js';
import { ratingsCitation } from '../../engines/electrical/us-tables.js';
import { defineRule } from '../rule.js';
import { circuitFindings, electrician, modelPlace } from './electrical-findings.js';

export const deviceBeyondTable = defineRule({
    id: 'device-beyond-table',
    family: 'electrical',
    title: 'No standard overcurrent device is large enough',
    severity: 'error',
    why: 'A load above the largest standard rating is either written wrongly or is no single circuit.',
    bad: 'rules iec\nheater_model Hall60 { manual "Hall 60 manual, demo"; power 60 kW; supply 240 V single_phase; body 40" x 27"; depth 20" }\nheater stove on right { model Hall60; from front 8"; guard yes }',
    good: 'rules iec\nheater stove on right { model Tarn60; from front 8"; guard yes }',
    sources: [ratingsCitation],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'device-beyond-table', ({ problem, circuit, source }) => ({
        at: modelPlace(circuit),
        message: `Heater ${circuit.heater.name} needs a device of ${showA(problem.neededA)} or more; the standard ratings end at ${showA(problem.largestA)} (${source}). Look at the power and the supply, or have it fed by several circuits. ${electrician}`,
        measured: amount(problem.neededA, 'A'), required: amount(problem.largestA, 'A'), subject: `${circuit.heater.name}.device`,
    })),
});
