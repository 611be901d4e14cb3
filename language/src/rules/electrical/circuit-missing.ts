import type { Finding } from '../../core/finding.js';
import { correctionCitation } from '../../engines/electrical/us-tables.js';
import { defineRule } from '../rule.js';
import { circuitLacks } from './electrical-findings.js';

export const circuitMissing = defineRule({
    id: 'circuit-missing',
    family: 'electrical',
    title: 'The wiring of a heater is not described',
    severity: 'info',
    why: 'Conductor, ground and voltage drop depend on how the run is laid and how hot it is there. A temperature nobody stated is never taken as 30 °C in silence.',
    bad: '// without circuit stove_feed',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [correctionCitation],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }): Generator<Finding> {
        if (!job.isWhole || !job.circuits.every(circuit => circuit.isWhole)) return;
        for (const { heater, block, result } of results.circuits) {
            const lacks = circuitLacks(result.lacks);
            if (block || lacks.length === 0) continue;
            yield {
                at: heater.block.head,
                message: `Heater ${heater.name} has no circuit block; the schedule cannot be completed for want of: ${lacks.join('; ')}. Add circuit ${heater.name}_feed with feeds ${heater.name} and a segment for each stretch of the run.`,
                citation: correctionCitation, subject: `${heater.name}.circuit`,
            };
        }
    },
});
