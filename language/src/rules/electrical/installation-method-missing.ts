import { inWords, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { capacityCitation } from '../../engines/electrical/iec-tables.js';
import { isKind } from '../../model/block.js';
import { defineRule } from '../rule.js';
import { capital, circuitName, electrician } from './electrical-findings.js';

export const installationMethodMissing = defineRule({
    id: 'installation-method-missing',
    family: 'electrical',
    title: 'How the cable is installed is not stated',
    severity: 'info',
    why: 'The same cable carries a third less inside an insulated wall than clipped to a surface, so the IEC tables begin with the method of installation.',
    bad: 'rules iec\ncircuit stove_feed { feeds stove; segment wall { length 6 m; ambient 30 degC } }',
    good: 'rules iec\ncircuit stove_feed { feeds stove; method C; segment wall { length 6 m; ambient 30 degC } }',
    sources: [capacityCitation(2, 'pvc')],
    isWaivable: true,
    fixes: 'none',
    *check({ results }): Generator<Finding> {
        for (const circuit of results.circuits) {
            const { block, family, heater } = circuit;
            if (family !== 'iec' || !block?.isWhole || block.written.has('method') || !block.children.some(child => isKind(child, 'segment'))) continue;
            const citation = capacityCitation(2, 'pvc');
            yield {
                at: block.head,
                message: `${capital(circuitName(circuit))} does not say how its cable is installed; the method is needed to choose the conductor (${showCitation(citation)}). Add method A1, A2, B1, B2 or C; A1 and A2 are inside an insulated wall. ${electrician}`,
                citation, measured: inWords('not stated'), required: inWords('A1, A2, B1, B2 or C'), subject: `${heater.name}.conductor`,
            };
        }
    },
});
