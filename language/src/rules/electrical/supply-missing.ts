import { inWords, type Finding } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';

export const supplyMissing = defineRule({
    id: 'supply-missing',
    family: 'electrical',
    title: 'The supply at the place is not stated',
    severity: 'warning',
    why: 'Whether the heater runs at all on the place\'s supply, and everything about its circuit, hangs on the voltage and the phases.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; supply 240 V single_phase; capacity 60 A }',
    sources: [{ kind: 'geometry', text: 'current is power over voltage' }],
    isWaivable: true,
    fixes: 'none',
    *check({ job }): Generator<Finding> {
        const { site, heaters, isWhole } = job;
        if (!isWhole || !site?.isWhole || site.written.has('supply')) return;
        const waiting = heaters.filter(heater => heater.isWhole && !heater.written.has('supply')).flatMap(heater => heater.name?.value ?? []);
        if (waiting.length === 0) return;
        yield {
            at: site.head,
            message: `The site does not state its supply; without voltage and phases nothing about the circuit of heater ${showList(waiting)} can be worked out. Have it read at the panel and add a line such as supply 240 V single_phase.`,
            citation: { kind: 'geometry', text: 'current is power over voltage' }, measured: inWords('not stated'), required: inWords('a voltage and its phases'), subject: 'site',
        };
    },
});
