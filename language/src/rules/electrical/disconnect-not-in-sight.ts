import { inWords } from '../../core/finding.js';
import { necCitations } from '../../rule-sets/nec.js';
import { defineRule } from '../rule.js';
import { circuitFindings, circuitName, circuitPlace, electrician } from './electrical-findings.js';

export const disconnectNotInSight = defineRule({
    id: 'disconnect-not-in-sight',
    family: 'electrical',
    title: 'No disconnect stands within sight of the heater',
    severity: 'error',
    why: 'Whoever works on the heater has to see that it is dead, and that nobody switches it on meanwhile.',
    bad: 'circuit stove_feed { feeds stove; disconnect_in_sight no; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [necCitations.disconnect],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'disconnect-not-in-sight', ({ circuit, source }) => ({
        at: circuitPlace(circuit, 'disconnect_in_sight'),
        message: `No disconnect of ${circuitName(circuit)} stands within sight of heater ${circuit.heater.name}; one within sight is needed, or one that can be locked open (${source}). Plan its place and write disconnect_in_sight yes. ${electrician}`,
        measured: inWords('no disconnect within sight'), required: inWords('a disconnect within sight, or one that can be locked open'), subject: `${circuit.heater.name}.circuit`,
    })),
});
