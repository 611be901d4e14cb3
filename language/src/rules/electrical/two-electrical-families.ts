import { inWords, type Finding } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { electricalFamily } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { electrician } from './electrical-findings.js';

export const twoElectricalFamilies = defineRule({
    id: 'two-electrical-families',
    family: 'electrical',
    title: 'The job names two kinds of electrical rules at once',
    severity: 'error',
    why: 'The NEC and IEC 60364 size devices and conductors by different tables; one circuit cannot be built to both, so none is calculated.',
    bad: 'rules us_dwelling, iec',
    good: 'rules us_dwelling, us_accessible',
    sources: [{ kind: 'practice', text: 'one installation follows one set of wiring rules' }],
    isWaivable: true,
    fixes: 'none',
    *check({ job, ruleSets }): Generator<Finding> {
        const rules = job.block.values.rules;
        if (!rules || electricalFamily(ruleSets) !== 'both') return;
        const named = (family: 'us' | 'iec'): string => showList(ruleSets.filter(set => set.family === family).map(set => set.id));
        yield {
            at: rules.span,
            message: `The job names ${named('us')}, whose circuits follow the NEC, and ${named('iec')}, whose circuits follow IEC 60364; one circuit cannot follow both, so none is calculated. Keep those that hold at the place. ${electrician}`,
            citation: { kind: 'practice', text: 'one installation follows one set of wiring rules' }, measured: inWords('two families of electrical rules'), required: inWords('one'),
        };
    },
});
