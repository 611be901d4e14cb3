import { inWords, type Finding } from '../../core/finding.js';
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
    fixes: 'review',
    *check({ job, results }): Generator<Finding> {
        // A circuit that feeds a heater nobody knows may well be the one that is missed; its name has a finding.
        if (!job.isWhole || !job.circuits.every(({ isWhole, values: { feeds } }) => isWhole && (!feeds || feeds.value.block))) return;
        for (const { heater, block, result } of results.circuits) {
            const lacks = circuitLacks(result.lacks);
            if (block || lacks.length === 0) continue;
            yield {
                at: heater.block.head,
                message: `Heater ${heater.name} has no circuit block; the schedule cannot be completed for want of: ${lacks.join('; ')}. Write circuit ${heater.name}_feed { feeds ${heater.name}; disconnect_in_sight …; segment wall { length …; ambient … } }, a segment for each stretch of the run.`,
                citation: correctionCitation, measured: inWords('none'), required: inWords(lacks.join('; ')), subject: `${heater.name}.circuit`,
                fixes: [{ title: `Add a circuit that feeds ${heater.name}`, safety: 'review', edits: [{ span: { ...heater.block.span, start: heater.block.span.end }, newText: `\n    circuit ${heater.name}_feed { feeds ${heater.name} }` }] }],
            };
        }
    },
});
