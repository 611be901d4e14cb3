import { inWords, type Finding } from '../../core/finding.js';
import { electricalFamily } from '../../rule-sets/index.js';
import { defineRule } from '../rule.js';
import { electrician } from './electrical-findings.js';

export const noElectricalRules = defineRule({
    id: 'no-electrical-rules',
    family: 'electrical',
    title: 'None of the rule sets named speaks of electricity',
    severity: 'info',
    why: 'The heater is wired by somebody\'s rules. When the job names none, the schedule is calculated by the NEC, which may not hold at the place.',
    bad: 'rules good_practice',
    good: 'rules good_practice, us_dwelling',
    sources: [{ kind: 'practice', text: 'one installation follows one set of wiring rules' }],
    isWaivable: true,
    fixes: 'none',
    *check({ job, ruleSets, results }): Generator<Finding> {
        const rules = job.block.values.rules;
        if (!rules || ruleSets.length === 0 || electricalFamily(ruleSets) !== undefined || results.circuits.length === 0) return;
        yield {
            at: rules.span,
            message: `None of the rule sets named speaks of circuits; the schedule is calculated by the NEC, for want of another. Name the set that holds at the place, such as us_dwelling, us_commercial or iec. ${electrician}`,
            citation: { kind: 'practice', text: 'one installation follows one set of wiring rules' }, measured: inWords('none'), required: inWords('a rule set that speaks of circuits'),
        };
    },
});
