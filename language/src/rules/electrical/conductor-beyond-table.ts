import { amount, inWords } from '../../core/finding.js';
import { showA } from '../../engines/electrical/steps.js';
import { ampacityCitation } from '../../engines/electrical/us-tables.js';
import { defineRule } from '../rule.js';
import { circuitFindings, electrician, modelPlace } from './electrical-findings.js';

export const conductorBeyondTable = defineRule({
    id: 'conductor-beyond-table',
    family: 'electrical',
    title: 'No conductor of the tables carries the load',
    severity: 'error',
    why: 'The tables end at the largest single conductor that is reckoned with; parallel conductors are a calculation of their own.',
    bad: 'heater_model Hall60 { manual "Hall 60 manual, demo"; power 60 kW; supply 240 V single_phase; body 40" x 27"; depth 20"; circuits 6 }\nheater stove on right { model Hall60; from front 8"; guard yes }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes }',
    sources: [ampacityCitation],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'conductor-beyond-table', ({ problem, circuit, source }) => ({
        at: modelPlace(circuit),
        message: `Heater ${circuit.heater.name} needs a conductor for ${showA(problem.neededA)}; no single conductor of the tables carries that on this run (${source}). Have it fed by several circuits, each with a conductor of its own. ${electrician}`,
        measured: amount(problem.neededA, 'A'), required: inWords('what one conductor of the tables carries'), subject: `${circuit.heater.name}.conductor`,
    })),
});
