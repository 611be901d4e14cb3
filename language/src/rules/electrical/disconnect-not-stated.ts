import { inWords, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { necCitations } from '../../rule-sets/nec.js';
import { defineRule } from '../rule.js';
import { capital, circuitName } from './electrical-findings.js';

export const disconnectNotStated = defineRule({
    id: 'disconnect-not-stated',
    family: 'electrical',
    title: 'Where the disconnect stands is not stated',
    severity: 'info',
    why: 'Its place decides which wall the feed comes through and whether somebody working on the heater sees that it is dead.',
    bad: 'circuit stove_feed { feeds stove; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [necCitations.disconnect],
    isWaivable: true,
    fixes: 'none',
    *check({ results }): Generator<Finding> {
        for (const circuit of results.circuits) {
            const { block, family, heater } = circuit;
            if (family !== 'us' || !block?.isWhole || block.written.has('disconnect_in_sight')) continue;
            yield {
                at: block.head,
                message: `${capital(circuitName(circuit))} does not say whether a disconnect stands within sight of heater ${heater.name}; one within sight is needed, or one that can be locked open (${showCitation(necCitations.disconnect)}). Agree its place with the electrician and add disconnect_in_sight.`,
                citation: necCitations.disconnect, measured: inWords('not stated'), required: inWords('within sight, or locked open'), subject: `${heater.name}.circuit`,
            };
        }
    },
});
