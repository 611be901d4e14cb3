import { inWords, type Finding } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { modelPlace } from './electrical-findings.js';

const asked = {
    max_device: 'the largest overcurrent device',
    min_conductor: 'the smallest conductor',
    connection_wire: 'the wire of the final connection',
} as const;

export const manualSilentOnCircuit = defineRule({
    id: 'manual-silent-on-circuit',
    family: 'electrical',
    title: 'The catalogue does not hold what the heater\'s manual says of its circuit',
    severity: 'info',
    why: 'The manual goes before the code: its largest device and its connection wire are part of what the heater was tested with. What is not written is not checked, and never guessed.',
    bad: 'heater stove on right { model Beck60; from front 8"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'manual', text: 'the heater\'s own manual' }],
    isWaivable: true,
    fixes: 'none',
    *check({ results }): Generator<Finding> {
        for (const circuit of results.circuits) {
            const { heater: { name, model }, manual } = circuit;
            const missing = (Object.keys(asked) as (keyof typeof asked)[]).filter(key => !model.written.has(key));
            if (!model.isWhole || missing.length === 0) continue;
            yield {
                at: modelPlace(circuit),
                message: `The entry of heater ${name} (${manual.manual}) does not state ${showList(missing.map(key => asked[key]))}, so that is not checked. Look it up in the manual and add ${showList(missing)}; the electrician follows the manual itself.`,
                citation: { kind: 'manual', text: manual.manual }, measured: inWords('not stated'), required: inWords(missing.join(', ')), subject: `${name}.circuit`,
                related: [{ at: model.head, message: 'The entry of the heater is here.' }],
            };
        }
    },
});
