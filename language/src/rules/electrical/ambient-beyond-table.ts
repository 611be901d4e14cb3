import { inWords } from '../../core/finding.js';
import { correctionCitation } from '../../engines/electrical/us-tables.js';
import { defineRule } from '../rule.js';
import { capital, circuitFindings, circuitName, electrician, segmentPlace, showTemperature } from './electrical-findings.js';

export const ambientBeyondTable = defineRule({
    id: 'ambient-beyond-table',
    family: 'electrical',
    title: 'A stretch of the run is hotter than its conductor may stand in',
    severity: 'error',
    why: 'Where the table prints no factor for an insulation, no size of that conductor may be used: a thicker one would not cure it.',
    bad: 'circuit stove_feed { feeds stove; insulation degC_60; disconnect_in_sight yes; segment attic { length 20\'; ambient 140 degF } }',
    good: 'circuit stove_feed { feeds stove; insulation degC_90; disconnect_in_sight yes; segment attic { length 20\'; ambient 140 degF } }',
    sources: [correctionCitation],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'ambient-beyond-table', ({ problem, circuit, source }) => ({
        at: segmentPlace(circuit, problem.segment),
        message: `${/^segment /.test(problem.segment) ? capital(problem.segment) : `Segment ${problem.segment}`} of ${circuitName(circuit)} is at ${showTemperature(problem.ambientC)}; conductors of ${problem.conductorC} °C may not be used there (${source}). Lead the run through cooler air, or choose an insulation of a higher class. ${electrician}`,
        measured: inWords(showTemperature(problem.ambientC)), required: inWords(`an ambient the table has a factor for at ${problem.conductorC} °C`), subject: `${circuit.heater.name}.conductor`,
    })),
});
