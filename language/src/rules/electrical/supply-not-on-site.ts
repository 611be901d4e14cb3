import { inWords, type Finding } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { electrician, offers, showSupply } from './electrical-findings.js';

export const supplyNotOnSite = defineRule({
    id: 'supply-not-on-site',
    family: 'electrical',
    title: 'The heater is connected to a supply the site does not have',
    severity: 'error',
    why: 'A heater chosen for a supply that is not there cannot be connected on the day it arrives.',
    bad: 'heater stove on right { model Tarn60; from front 8"; guard yes; supply 208 V single_phase }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; supply 240 V single_phase }',
    sources: [{ kind: 'geometry', text: 'what the site states as its supply' }],
    isWaivable: true,
    fixes: 'review',
    *check({ job }): Generator<Finding> {
        const atSite = job.site?.values.supply;
        if (!atSite) return;
        for (const heater of job.heaters) {
            const own = heater.values.supply;
            if (!own || offers(atSite.value, own.value)) continue;
            yield {
                at: own.span,
                message: `Heater ${heater.name?.value ?? 'of the job'} is connected to ${showSupply(own.value)}; the supply of the site is ${showSupply(atSite.value)}. Write what the panel really offers in one of the two places. ${electrician}`,
                citation: { kind: 'geometry', text: 'what the site states as its supply' },
                measured: inWords(showSupply(own.value)), required: inWords(showSupply(atSite.value)),
                related: [{ at: atSite.span, message: 'The supply of the site stands here.' }],
                fixes: [{ title: 'Use the supply of the site', safety: 'review', edits: [{ span: own.fact, newText: '' }] }],
            };
        }
    },
});
