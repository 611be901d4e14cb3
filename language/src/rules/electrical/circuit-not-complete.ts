import { inWords, type Finding } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { capital, circuitName, electrician, remainingLacks } from './electrical-findings.js';

export const circuitNotComplete = defineRule({
    id: 'circuit-not-complete',
    family: 'electrical',
    title: 'Something of a circuit cannot be checked for want of a figure',
    severity: 'info',
    why: 'What is not known is not judged: half a circuit that looks finished is worse than one that says what it lacks.',
    bad: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; existing_conductor awg_8; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; existing_conductor awg_8; existing_device 35 A; segment wall { length 20\'; ambient 86 degF } }',
    sources: [{ kind: 'practice', text: 'an existing circuit is judged by its device and its conductor together' }],
    isWaivable: true,
    fixes: 'none',
    *check({ results }): Generator<Finding> {
        for (const circuit of results.circuits) {
            const { block, heater, result } = circuit;
            const lacks = remainingLacks(result.lacks);
            if (!block?.isWhole || lacks.length === 0) continue;
            yield {
                at: block.head,
                message: `${capital(circuitName(circuit))} is not complete; still needed: ${lacks.join('; ')}. What hangs on it is left out of the schedule. ${electrician}`,
                citation: { kind: 'practice', text: 'an existing circuit is judged by its device and its conductor together' }, measured: inWords('not stated'), required: inWords(lacks.join('; ')), subject: `${heater.name}.circuit`,
            };
        }
    },
});
