import { inWords, type Finding } from '../../core/finding.js';
import { showBlock } from '../../model/block.js';
import { defineRule } from '../rule.js';
import { electrician } from './electrical-findings.js';

export const heaterFedTwice = defineRule({
    id: 'heater-fed-twice',
    family: 'electrical',
    title: 'Two circuits feed one heater',
    severity: 'error',
    why: 'Which of the two is wired is not known; only the first is calculated. A heater its manual divides is one circuit block with circuits.',
    bad: 'circuit spare_feed { feeds stove; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; segment wall { length 20\'; ambient 86 degF } }',
    sources: [{ kind: 'geometry', text: 'one circuit block describes the wiring of one heater' }],
    isWaivable: true,
    fixes: 'none',
    *check({ job }): Generator<Finding> {
        for (const [i, circuit] of job.circuits.entries()) {
            const feeds = circuit.values.feeds;
            const first = feeds && job.circuits.slice(0, i).find(other => other.values.feeds?.value.name === feeds.value.name);
            if (!feeds || !first) continue;
            yield {
                at: feeds.span,
                message: `Heater ${feeds.value.name} is fed by ${showBlock(first)} already; only that one is calculated. Remove one of the two, or write circuits in one block when the manual divides the heater. ${electrician}`,
                citation: { kind: 'geometry', text: 'one circuit block describes the wiring of one heater' }, measured: inWords('two circuits'), required: inWords('one circuit'), subject: `${feeds.value.name}.circuit`,
                related: [{ at: first.values.feeds?.span ?? first.head, message: 'The first circuit is here.' }],
            };
        }
    },
});
