import { amount } from '../../core/finding.js';
import { isMetric, showLength } from '../../core/show.js';
import { showPercent } from '../../engines/electrical/steps.js';
import { necCitations } from '../../rule-sets/nec.js';
import { defineRule } from '../rule.js';
import { capital, circuitFindings, circuitName, circuitPlace } from './electrical-findings.js';

export const voltageDropHigh = defineRule({
    id: 'voltage-drop-high',
    family: 'electrical',
    title: 'The voltage drop of the circuit is high',
    severity: 'info',
    why: 'What is lost on the way is missing at the stones: a heater at 95 % of its voltage gives 90 % of its power. The figure is advice, not a demand.',
    bad: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; segment yard { length 220\'; ambient 68 degF } }',
    good: 'circuit stove_feed { feeds stove; disconnect_in_sight yes; segment yard { length 60\'; ambient 68 degF } }',
    sources: [necCitations.branchDrop],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'voltage-drop-high', ({ problem, circuit, source }) => {
        const run = circuit.result.voltageDrop?.run;
        return {
            at: circuitPlace(circuit, 'feeds'),
            message: `${capital(circuitName(circuit))} loses ${showPercent(problem.share)} of its voltage${run === undefined ? '' : ` over ${showLength(run, isMetric(input.job.unit) ? 'm' : 'ft_in', 'drawing')}`}; ${showPercent(problem.limit)} or less is advised (${source}). A shorter run or a larger conductor cures it; ask the electrician.`,
            measured: amount(problem.share * 100, '%'), required: amount(problem.limit * 100, '%'), subject: `${circuit.heater.name}.voltage_drop`,
        };
    }),
});
